package longrun.draft;

import java.util.List;
import java.util.OptionalInt;
import longrun.piping.Stage;
import longrun.review.Review;

/** Which line is in hand while none is chosen, the same in the answer and on the route. */
public final class DefaultSection {

    private DefaultSection() {}

    /** The line that leaves the last regulator, where the house begins; empty while there is no line. */
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
