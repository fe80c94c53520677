package longrun.draft;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Function;
import longrun.draft.entry.DraftEdit;
import longrun.draft.entry.DraftTree;
import longrun.draft.entry.DraftValue;
import longrun.draft.entry.NewItem;
import longrun.finding.Finding;
import longrun.plan.Plan;
import longrun.plan.json.PlanError;
import longrun.review.Review;
import longrun.review.ReviewParts;
import longrun.review.Reviewer;
import longrun.store.Draft;
import longrun.store.DraftStore;

/**
 * One saved house, open in one page. It holds the draft as typed, stores each change at once and reviews it. While an entry
 * cannot be read, the review before it stays. It must be used by one thread at a time.
 */
public final class HouseSession {

    /** What kind of change happened, so that a page knows what to draw again. */
    public enum Change {
        /** A key was typed in a field: fields are not written, since a person is typing in one. */
        TYPED,
        /** Anything else that changes the draft: fields may be written. */
        CHANGED,
        /** Only {@link #saveState} changed. */
        SAVE_STATE
    }

    /** Is told of every change, after it is reviewed. */
    public interface Listener {
        void changed(Change change);
    }

    private final StoredHouse house;
    private final SaveChoices choices;
    private final LastReview last;
    private final List<Listener> listeners = new ArrayList<>();
    private ObjectNode draft;
    private String lastPlace = "";

    private HouseSession(DraftStore store, Function<Plan, Review> reviewing, Draft stored) {
        house = new StoredHouse(store, stored);
        choices = new SaveChoices(this, house);
        last = new LastReview(reviewing);
        draft = house.draft();
        last.read(draft, false);
    }

    /** Opens a house; empty where there is none. */
    public static Optional<HouseSession> open(DraftStore store, Reviewer reviewer, long id) {
        return store.find(id).map(d -> of(store, reviewer, d));
    }

    /** Opens a house as it is stored. */
    public static HouseSession of(DraftStore store, Reviewer reviewer, Draft stored) {
        return of(store, plan -> reviewer.review(plan, ReviewParts.ALL), stored);
    }

    /** Opens a house as it is stored, with another way of reviewing plans. */
    public static HouseSession of(DraftStore store, Function<Plan, Review> reviewing, Draft stored) {
        return new HouseSession(store, reviewing, stored);
    }

    // The house as it is.

    public long id() {
        return house.id();
    }

    /** The version stored last; a higher one in the store means that another tab has changed the house since. */
    public long version() {
        return house.version();
    }

    /** Whether the draft is saved; waits for a save under way. */
    public SaveState saveState() {
        return house.saveState();
    }

    /** The draft as it stands; what is returned does not change with later keys. */
    public DraftValue draft() {
        return DraftValue.of(draft);
    }

    /** The value at a JSON pointer. */
    public DraftValue at(String pointer) {
        return DraftValue.of(draft.at(pointer));
    }

    ObjectNode tree() {
        return draft;
    }

    /** An entry's text; empty where there is none. */
    public String text(String pointer) {
        return at(pointer).text();
    }

    /** Whether an entry can be written: the list items it belongs to exist. */
    public boolean holds(String pointer) {
        return DraftTree.holds(draft, pointer);
    }

    /** The entries that cannot be read, by JSON pointer, each with what to write instead. */
    public Map<String, PlanError> errors() {
        return Map.copyOf(last.errors());
    }

    public Optional<PlanError> error(String pointer) {
        return Optional.ofNullable(last.errors().get(pointer));
    }

    /** The last review that could be made; empty before the first. */
    public Optional<Review> review() {
        return last.review();
    }

    /** Whether the review is of the draft as it stands; false while an entry cannot be read. */
    public boolean isCurrent() {
        return last.isCurrent();
    }

    /** Whether the review failed by a fault of the program; there is no review then. */
    public boolean isFailed() {
        return last.isFailed();
    }

    /** Whether the review is of the draft without the entries that cannot be read. */
    public boolean leavesOut() {
        return !last.isCurrent() && last.leavesOut();
    }

    /** Ids of the sections that have not changed since the review was made, so that their figures still hold. */
    public Set<String> linesAsReviewed() {
        return last.unchangedLines(draft);
    }

    /** The open findings of the last review; what has been answered is left out. */
    public List<Finding> findings() {
        return review().stream()
                .flatMap(r -> r.findings().stream())
                .filter(Finding::isOpen)
                .toList();
    }

    public boolean canUndo() {
        return house.canUndo();
    }

    public boolean canRedo() {
        return house.canRedo();
    }

    // What a person does.

    /** Stores an entry's text after a key; blank removes the entry. Further keys in the same entry join its undo step. */
    public void set(String pointer, String text) {
        type(pointer, d -> {
            if (text.isBlank()) {
                d.remove(pointer);
            } else {
                d.put(pointer, text);
            }
        });
    }

    /** Makes the change of a key in a field of several entries or a list; further keys in the same place join its step. */
    public void type(String place, Consumer<DraftEdit> change) {
        take(place, change, Change.TYPED);
    }

    /** Stores a choice, as one undo step. */
    public void choose(String pointer, String value) {
        change(d -> d.put(pointer, value));
    }

    /** Stores a yes or no, as one undo step. */
    public void choose(String pointer, boolean value) {
        change(d -> d.put(pointer, value));
    }

    /** Removes an entry or an item of a list, as one undo step. */
    public void remove(String pointer) {
        change(d -> d.remove(pointer));
    }

    /** Adds an item to a list, as one undo step, and gives its index. */
    public int add(String list, NewItem item) {
        int index = draft.at(list).size();
        change(d -> d.add(list, item));
        return index;
    }

    /** Changes several entries, as one undo step. */
    public void change(Consumer<DraftEdit> change) {
        take("", change, Change.CHANGED);
    }

    /** Ends the undo step: the next key begins a new one, even in the same entry. */
    public void endStep() {
        lastPlace = "";
    }

    /** Typing has paused: an entry that cannot be read is no longer taken for one that is half typed. */
    public void typingPaused() {
        last.fallBack();
    }

    private void take(String place, Consumer<DraftEdit> change, Change what) {
        boolean sameStep = !place.isEmpty() && place.equals(lastPlace);
        ObjectNode next = draft.deepCopy();
        change.accept(new DraftEdit(next));
        lastPlace = place;
        if (!sameStep) {
            last.settle();
        }
        if (next.equals(draft) && house.isSaved()) {
            return;
        }
        draft = next;
        house.save(draft, sameStep);
        last.read(draft, place.endsWith("/legs"));
        tell(what);
        house.finish();
    }

    /** Undoes the last step and tells what it changed; empty where it changed nothing or could not be stored. */
    public Optional<StepChanges> undo() {
        return walk(house::undo);
    }

    /** Does the step undone last again and tells what it changed; empty as for {@link #undo}. */
    public Optional<StepChanges> redo() {
        return walk(house::redo);
    }

    private Optional<StepChanges> walk(BooleanSupplier step) {
        DraftValue before = draft();
        endStep();
        house.saveIfNotSaved(draft);
        if (!house.isSaved()) {
            tell(Change.SAVE_STATE);
            return Optional.empty();
        }
        if (step.getAsBoolean()) {
            takeStored();
        }
        tell(Change.CHANGED);
        return StepChanges.between(before, draft());
    }

    /** What a person can do where another tab changed the house, or it could not be saved. */
    public SaveChoices saveChoices() {
        return choices;
    }

    /** Replaces the draft by the stored one. */
    void takeStored() {
        replaceDraft(house.draft());
    }

    /** Replaces the draft by another, without storing it. */
    void replaceDraft(ObjectNode other) {
        draft = other;
        endStep();
        last.read(draft, false);
    }

    // Who is told.

    /** Adds a listener; running what is returned removes it. */
    public Runnable listen(Listener listener) {
        listeners.add(listener);
        return () -> listeners.remove(listener);
    }

    void tell(Change change) {
        List.copyOf(listeners).forEach(l -> l.changed(change));
    }
}
