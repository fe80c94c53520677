package longrun.ui.house;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import longrun.plan.json.PlanError;
import longrun.plan.json.Reading;
import longrun.review.Parts;
import longrun.review.PlanDoor;
import longrun.review.Review;
import longrun.review.Reviewer;
import org.jspecify.annotations.Nullable;

/** What came of the last draft that could be read, and what is wrong with the one as it stands. */
final class LastReview {

    private final Reviewer reviewer;
    private final Map<String, String> errors = new LinkedHashMap<>();
    private @Nullable Review review;
    private boolean current;

    LastReview(Reviewer reviewer) {
        this.reviewer = reviewer;
    }

    /** Reads a draft; where it cannot be read, the review before it stays. */
    void read(ObjectNode draft) {
        Reading reading = PlanDoor.read(draft);
        errors.clear();
        for (PlanError e : reading.errors()) {
            errors.putIfAbsent(e.pointer(), e.message());
        }
        current = reading.plan().isPresent();
        reading.plan().ifPresent(plan -> review = reviewer.review(plan, Parts.ALL));
    }

    /** What is wrong, by pointer: what to write instead. */
    Map<String, String> errors() {
        return errors;
    }

    Optional<Review> review() {
        return Optional.ofNullable(review);
    }

    boolean isCurrent() {
        return current;
    }
}
