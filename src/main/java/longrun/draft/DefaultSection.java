package longrun.draft;

import java.util.List;
import java.util.OptionalInt;
import longrun.piping.Stage;
import longrun.review.Review;

/** The section that is selected while a person has selected none, the same beside the page and in the route. */
public final class DefaultSection {

    private DefaultSection() {}

    /** The section that leaves the last regulator, where the house piping begins; empty while there is no section. */
    public static OptionalInt usual(Review review) {
        List<Stage> stages = review.piping().stages();
        for (int i = stages.size() - 1; i >= 0; i--) {
            if (!stages.get(i).sections().isEmpty()) {
                return OptionalInt.of(stages.get(i).sections().get(0));
            }
        }
        return review.piping().sectionCount() == 0 ? OptionalInt.empty() : OptionalInt.of(0);
    }
}
