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
 * What came of the last draft that could be read, and what is wrong with the one as it stands. While an entry is being
 * typed and cannot be read, the review before its step stands; once the person goes on, it is left out of the review, as
 * an entry that is not known, so that all the rest is answered. Where working it out fails altogether, by a fault of the
 * program, there is no review at all: nothing that was known before is taken as known of what stands there now.
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
     * @param reviewing works a plan out
     */
    LastReview(Function<Plan, Review> reviewing) {
        this.reviewing = reviewing;
    }

    /** A new step begins: what cannot be read so far is no half-typed number, and is left out. */
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

    /** Goes back from what was made of a half-typed entry to the review before the step; not where the rest is answered. */
    void fallBack() {
        if (!answered && settled != null) {
            review = settled;
            reviewed = settledDraft;
            leavesOut = settledLeavesOut;
        }
    }

    /**
     * Reads a draft; where it cannot be read, what was wrong before the step is left out, and the review before the step
     * stands for what is wrong in it.
     *
     * @param halfTyped whether the entry is often unreadable between two keys: then the last that could be read stays for
     *     now, so that figures do not jump to and fro
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

    /** Whatever fails in working it out leaves the house open, and nothing known of it. */
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

    /** Its findings point at the entries as the draft has them. */
    private Review review(Reading reading) {
        return reviewing.apply(reading.plan().orElseThrow()).withFields(reading.written()::pointer);
    }

    /** Reviews a draft without the entries at some pointers; false where it cannot be read all the same. */
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

    /** Whether the review is of the draft as it stands without the entries that are not understood. */
    boolean leavesOut() {
        return leavesOut;
    }

    /** What is wrong, by pointer: what to write instead. */
    Map<String, PlanError> errors() {
        return errors;
    }

    Optional<Review> review() {
        return Optional.ofNullable(review);
    }

    /** Ids of the lines of a route that stand as they did when the review was made. */
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

    /** Whether working the draft out failed, by a fault of the program: there is no review then. */
    boolean isFailed() {
        return failed;
    }
}
