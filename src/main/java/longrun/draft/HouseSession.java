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
import longrun.draft.entry.Entered;
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
 * One stored house, open in one page. It holds the draft as typed, stores each change at once, and reviews it; while an
 * entry is wrong the review before it stays. One thread at a time.
 */
public final class HouseSession {

    /** What happened, as a page must know it. */
    public enum Change {
        /** A key in a field: fields are left as they are, since a person is typing in one. */
        TYPED,
        /** Anything else that changes the draft: fields may be written. */
        CHANGED,
        /** Only how the house stands with the store. */
        SAVE_STATE
    }

    /** Hears of every change, after the store and the review have answered. */
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

    /** Opens a house as it is stored, worked out in a way of its own. */
    public static HouseSession of(DraftStore store, Function<Plan, Review> reviewing, Draft stored) {
        return new HouseSession(store, reviewing, stored);
    }

    // What stands here.

    public long id() {
        return house.id();
    }

    /** The version stored last; another tab with a greater one has changed the house since. */
    public long version() {
        return house.version();
    }

    public SaveState saveState() {
        return house.saveState();
    }

    /** The draft as it stands; what is read of it stays as it is, whatever is typed after. */
    public Entered draft() {
        return Entered.of(draft);
    }

    /** What stands at a pointer. */
    public Entered at(String pointer) {
        return Entered.of(draft.at(pointer));
    }

    ObjectNode tree() {
        return draft;
    }

    /** An entry's text; empty where there is none. */
    public String text(String pointer) {
        return at(pointer).text();
    }

    /** Whether an entry has a place in the draft: the list items it stands in are there. */
    public boolean holds(String pointer) {
        return DraftTree.holds(draft, pointer);
    }

    /** What is wrong with entries, by pointer. */
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

    /** Whether the review is of the draft as it stands, rather than of the one before a wrong entry. */
    public boolean isCurrent() {
        return last.isCurrent();
    }

    /** Whether the house cannot be worked out, by a fault of the program: there is no review of it then. */
    public boolean isFailed() {
        return last.isFailed();
    }

    /** Whether what is not understood is left out of the review, so that all the rest is answered. */
    public boolean leavesOut() {
        return !last.isCurrent() && last.leavesOut();
    }

    /** The lines of the route that stand as they did when the review was made: their figures still are their own. */
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

    /** A key in an entry: its text as it stands now, blank takes it away. Further keys in it join its step. */
    public void set(String pointer, String text) {
        type(pointer, d -> {
            if (text.isBlank()) {
                d.remove(pointer);
            } else {
                d.put(pointer, text);
            }
        });
    }

    /** A key in a field that stands for several entries, or for a list; keys that follow in the same place join it. */
    public void type(String place, Consumer<DraftEdit> change) {
        take(place, change, Change.TYPED);
    }

    /** A choice: one step. */
    public void choose(String pointer, String value) {
        change(d -> d.put(pointer, value));
    }

    /** A yes or no: one step. */
    public void choose(String pointer, boolean value) {
        change(d -> d.put(pointer, value));
    }

    /** Takes an entry or a list's item away. */
    public void remove(String pointer) {
        change(d -> d.remove(pointer));
    }

    /** Adds to a list, and gives the index. */
    public int add(String list, NewItem item) {
        int index = draft.at(list).size();
        change(d -> d.add(list, item));
        return index;
    }

    /** Changes several entries as one step. */
    public void change(Consumer<DraftEdit> change) {
        take("", change, Change.CHANGED);
    }

    /** The next key makes a step of its own, even in the same entry. */
    public void endStep() {
        lastPlace = "";
    }

    /** The keys rest: what cannot be read now is no entry on its way. */
    public void rest() {
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

    /** Takes the last step back, and tells what of the draft it changed. */
    public Optional<StepChanges> undo() {
        return walk(house::undo);
    }

    /** Makes the step taken back last once more, and tells what of the draft it changed. */
    public Optional<StepChanges> redo() {
        return walk(house::redo);
    }

    private Optional<StepChanges> walk(BooleanSupplier step) {
        Entered before = draft();
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

    /** What may be done where another tab changed the house, or it could not be stored. */
    public SaveChoices saveChoices() {
        return choices;
    }

    /** What the store has stands here now. */
    void takeStored() {
        replaceDraft(house.draft());
    }

    /** A draft that came by no change of its own. */
    void replaceDraft(ObjectNode other) {
        draft = other;
        endStep();
        last.read(draft, false);
    }

    // Who hears of it.

    /** Listens until the runnable it gives is run. */
    public Runnable listen(Listener listener) {
        listeners.add(listener);
        return () -> listeners.remove(listener);
    }

    void tell(Change change) {
        List.copyOf(listeners).forEach(l -> l.changed(change));
    }
}
