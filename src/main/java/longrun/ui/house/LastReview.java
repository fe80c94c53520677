package longrun.ui.house;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
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
    private @Nullable Review settled;
    private ObjectNode reviewed = JsonNodeFactory.instance.objectNode();
    private ObjectNode settledOn = reviewed;
    private boolean current;

    LastReview(Reviewer reviewer) {
        this.reviewer = reviewer;
    }

    /** A new step begins: what has come of the draft so far is no half-typed number. */
    void settle() {
        if (current) {
            settled = review;
            settledOn = reviewed;
        } else {
            fallBack();
        }
    }

    /** Goes back from what was made of a half-typed entry to the review before the step. */
    void fallBack() {
        if (!current && settled != null) {
            review = settled;
            reviewed = settledOn;
        }
    }

    /**
     * Reads a draft; where it cannot be read, the review before the step stands.
     *
     * @param onItsWay whether the entry is often unreadable between two keys: then the last that could be read stays for
     *     now, so that figures do not jump to and fro
     */
    void read(ObjectNode draft, boolean onItsWay) {
        Reading reading = PlanDoor.read(draft);
        errors.clear();
        for (PlanError e : reading.errors()) {
            errors.putIfAbsent(e.pointer(), e.message());
        }
        current = reading.plan().isPresent();
        if (current) {
            review = reviewer.review(reading.plan().orElseThrow(), Parts.ALL);
            reviewed = draft;
        } else if (!onItsWay) {
            fallBack();
        }
    }

    /** What is wrong, by pointer: what to write instead. */
    Map<String, String> errors() {
        return errors;
    }

    Optional<Review> review() {
        return Optional.ofNullable(review);
    }

    /** The draft the review is of. */
    ObjectNode reviewed() {
        return reviewed;
    }

    boolean isCurrent() {
        return current;
    }
}
