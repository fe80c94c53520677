package longrun.draft;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import longrun.draft.entry.DraftTree;
import longrun.plan.Plan;
import longrun.plan.json.PlanError;
import longrun.plan.json.Reading;
import longrun.review.FullPlanReader;
import longrun.review.Review;
import org.jspecify.annotations.Nullable;

/**
 * The review of the last draft that could be read, and what is wrong with the draft as it stands. While an entry is being
 * typed and cannot be read, the review from before its step stays. Once the person goes on, the entry is left out as
 * unknown, so that all the rest is answered. Where the review fails by a fault of the program there is none at all: results
 * of an earlier draft are not shown for this one.
 */
final class LastReview {

    private static final System.Logger LOG = System.getLogger(LastReview.class.getName());

    private final Function<Plan, Review> reviewing;
    private final Map<String, PlanError> errors = new LinkedHashMap<>();
    private @Nullable Review review;
    private @Nullable Review settled;
    private ObjectNode reviewed = JsonNodeFactory.instance.objectNode();
    private ObjectNode settledDraft = reviewed;
    private ObjectNode asked = reviewed;
    private Set<String> wrongBefore = Set.of();
    private boolean current;
    private boolean answered;
    private boolean leavesOut;
    private boolean settledLeavesOut;
    private boolean failed;

    /**
     * Reviews drafts.
     *
     * @param reviewing makes the review of a plan
     */
    LastReview(Function<Plan, Review> reviewing) {
        this.reviewing = reviewing;
    }

    /** A new step begins: an entry that cannot be read is no longer half typed, and is left out. */
    void settle() {
        if (!answered && !failed) {
            fallBack();
            answered = guarded(() -> leaveOut(asked, errors.keySet()));
        }
        settled = review;
        settledDraft = reviewed;
        settledLeavesOut = leavesOut;
        wrongBefore = Set.copyOf(errors.keySet());
    }

    /** Goes back to the review from before a half-typed entry, unless the rest of the draft is already answered. */
    void fallBack() {
        if (!answered && settled != null) {
            review = settled;
            reviewed = settledDraft;
            leavesOut = settledLeavesOut;
        }
    }

    /**
     * Reads and reviews a draft. Entries that were wrong before this step are left out; where this step made one wrong, the
     * review from before it stays.
     *
     * @param halfTyped whether the entry is often unreadable between two keys, as legs are: then the last readable state
     *     stays for now, so that figures do not jump to and fro
     */
    void read(ObjectNode draft, boolean halfTyped) {
        failed = false;
        errors.clear();
        answered = guarded(() -> answer(draft, halfTyped));
    }

    /** Whether the draft, or all of it that can be read, has an answer. */
    private boolean answer(ObjectNode draft, boolean halfTyped) {
        Reading reading = FullPlanReader.read(draft);
        asked = draft;
        for (PlanError e : reading.errors()) {
            errors.putIfAbsent(e.pointer(), e);
        }
        current = reading.plan().isPresent();
        if (current) {
            review = review(reading);
            reviewed = draft;
            leavesOut = false;
            return true;
        }
        boolean rest = leaveOut(draft, review == null ? errors.keySet() : wrongBefore);
        if (!rest && !halfTyped) {
            answered = false;
            fallBack();
        }
        return rest;
    }

    /** Runs a review; whatever fails in it leaves the entries in place and no review. */
    private boolean guarded(BooleanSupplier working) {
        try {
            return working.getAsBoolean();
        } catch (RuntimeException | StackOverflowError e) {
            LOG.log(System.Logger.Level.ERROR, "A house could not be worked out; its entries are kept.", e);
            failed = true;
            current = false;
            leavesOut = false;
            review = null;
            settled = null;
            reviewed = JsonNodeFactory.instance.objectNode();
            return false;
        }
    }

    /** The review of a plan, its findings pointing at the entries as the draft has them. */
    private Review review(Reading reading) {
        return reviewing.apply(reading.plan().orElseThrow()).withFields(reading.written()::pointer);
    }

    /** Reviews a draft without the entries at some pointers; false where it still cannot be read. */
    private boolean leaveOut(ObjectNode draft, Set<String> wrong) {
        if (wrong.isEmpty()) {
            return false;
        }
        ObjectNode without = draft.deepCopy();
        for (String pointer : wrong) {
            Optional<String> entry = DraftTree.entry(without, pointer);
            if (entry.isEmpty()) {
                return false;
            }
            DraftTree.remove(without, entry.get());
        }
        Reading reading = FullPlanReader.read(without);
        if (reading.plan().isPresent()) {
            review = review(reading);
            reviewed = without;
            leavesOut = true;
        }
        return reading.plan().isPresent();
    }

    /** Whether the review is of the draft without the entries that cannot be read. */
    boolean leavesOut() {
        return leavesOut;
    }

    /** The entries that cannot be read, by JSON pointer, each with what to write instead. */
    Map<String, PlanError> errors() {
        return errors;
    }

    Optional<Review> review() {
        return Optional.ofNullable(review);
    }

    /** Ids of the sections that have not changed since the review was made. */
    Set<String> unchangedLines(ObjectNode draft) {
        Map<String, JsonNode> before = new HashMap<>();
        reviewed.path("sections").forEach(s -> before.putIfAbsent(s.path("id").asText(), s));
        Set<String> same = new HashSet<>();
        for (JsonNode s : draft.path("sections")) {
            String id = s.path("id").asText();
            if (s.equals(before.get(id))) {
                same.add(id);
            }
        }
        return same;
    }

    boolean isCurrent() {
        return current;
    }

    /** Whether the review failed by a fault of the program; there is no review then. */
    boolean isFailed() {
        return failed;
    }
}
