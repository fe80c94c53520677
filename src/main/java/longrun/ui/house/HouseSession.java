package longrun.ui.house;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.BooleanNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Consumer;
import longrun.finding.Finding;
import longrun.plan.json.PlanError;
import longrun.plan.json.PlanReader;
import longrun.plan.json.Reading;
import longrun.review.Parts;
import longrun.review.PlanDoor;
import longrun.review.Review;
import longrun.review.Reviewer;
import longrun.store.Draft;
import longrun.store.DraftStore;
import longrun.store.Outcome;
import org.jspecify.annotations.Nullable;
import org.springframework.dao.DataAccessException;
import org.springframework.transaction.TransactionException;

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
        STANDING
    }

    /** Hears of every change, after the store and the review have answered. */
    public interface Listener {
        void changed(Change change);
    }

    private final DraftStore store;
    private final Reviewer reviewer;
    private final List<Listener> listeners = new ArrayList<>();
    private final Map<String, String> errors = new LinkedHashMap<>();
    private ObjectNode draft;
    private Draft stored;
    private Standing standing;
    private String lastPlace = "";
    private @Nullable Review review;
    private boolean current;

    private HouseSession(DraftStore store, Reviewer reviewer, Draft stored) {
        this.store = store;
        this.reviewer = reviewer;
        this.stored = stored;
        this.draft = parsed(stored.json());
        this.standing = new Standing.Kept(stored.changed());
        read();
    }

    /** Opens a house; empty where there is none. */
    public static Optional<HouseSession> open(DraftStore store, Reviewer reviewer, long id) {
        return store.find(id).map(d -> new HouseSession(store, reviewer, d));
    }

    private static ObjectNode parsed(String json) {
        try {
            if (PlanReader.tree(json) instanceof ObjectNode object) {
                return object;
            }
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a stored draft is JSON", e);
        }
        throw new IllegalStateException("a stored draft is one object");
    }

    // What stands here.

    public long id() {
        return stored.id();
    }

    /** The version stored last; another tab with a greater one has changed the house since. */
    public long version() {
        return stored.version();
    }

    public Standing standing() {
        return standing;
    }

    /** The draft as it stands; to be read only. */
    public ObjectNode draft() {
        return draft;
    }

    /** An entry as it stands; a missing node where there is none. */
    public JsonNode at(String pointer) {
        return draft.at(pointer);
    }

    /** An entry's text; empty where there is none. */
    public String text(String pointer) {
        JsonNode node = draft.at(pointer);
        return node.isValueNode() && !node.isNull() ? node.asText() : "";
    }

    /** Whether an entry has a place in the draft: the list items it stands in are there. */
    public boolean holds(String pointer) {
        int slash = pointer.indexOf('/', 1);
        while (slash >= 0) {
            String above = pointer.substring(0, slash);
            if (above.substring(above.lastIndexOf('/') + 1).matches("[0-9]+")
                    && draft.at(above).isMissingNode()) {
                return false;
            }
            slash = pointer.indexOf('/', slash + 1);
        }
        return true;
    }

    /** What is wrong with entries, by pointer: what to write instead. */
    public Map<String, String> errors() {
        return Map.copyOf(errors);
    }

    public Optional<String> error(String pointer) {
        return Optional.ofNullable(errors.get(pointer));
    }

    /** The last review that could be made; empty before the first. */
    public Optional<Review> review() {
        return Optional.ofNullable(review);
    }

    /** Whether the review is of the draft as it stands, rather than of the one before a wrong entry. */
    public boolean isCurrent() {
        return current;
    }

    /** The open findings of the last review; what has been answered is left out. */
    public List<Finding> findings() {
        return review == null
                ? List.of()
                : review.findings().stream().filter(Finding::isOpen).toList();
    }

    public boolean canUndo() {
        return stored.undos() > 0 && standing instanceof Standing.Kept;
    }

    public boolean canRedo() {
        return stored.redos() > 0 && standing instanceof Standing.Kept;
    }

    // What a person does.

    /** A key in an entry: its text as it stands now, blank takes it away. Further keys in it join its step. */
    public void set(String pointer, String text) {
        type(pointer, d -> {
            if (text.isBlank()) {
                DraftTree.remove(d, pointer);
            } else {
                DraftTree.put(d, pointer, TextNode.valueOf(text));
            }
        });
    }

    /** A key in a field that stands for several entries, or for a list; keys that follow in the same place join it. */
    public void type(String place, Consumer<ObjectNode> change) {
        take(place, change, Change.TYPED);
    }

    /** A choice: one step. */
    public void choose(String pointer, String value) {
        change(d -> DraftTree.put(d, pointer, TextNode.valueOf(value)));
    }

    /** A yes or no: one step. */
    public void choose(String pointer, boolean value) {
        change(d -> DraftTree.put(d, pointer, BooleanNode.valueOf(value)));
    }

    /** Takes an entry or a list's item away. */
    public void remove(String pointer) {
        change(d -> DraftTree.remove(d, pointer));
    }

    /** Adds to a list, and gives the index. */
    public int add(String list, ObjectNode item) {
        int index = draft.at(list).size();
        change(d -> DraftTree.put(d, list + "/" + index, item));
        return index;
    }

    /** Changes several entries as one step. */
    public void change(Consumer<ObjectNode> change) {
        take("", change, Change.CHANGED);
    }

    /** The next key makes a step of its own, even in the same entry. */
    public void endStep() {
        lastPlace = "";
    }

    private void take(String place, Consumer<ObjectNode> change, Change what) {
        boolean sameStep = !place.isEmpty() && place.equals(lastPlace);
        ObjectNode next = draft.deepCopy();
        change.accept(next);
        lastPlace = place;
        if (next.equals(draft) && standing instanceof Standing.Kept) {
            return;
        }
        draft = next;
        keep(sameStep);
        read();
        tell(what);
    }

    public void undo() {
        walk(() -> store.undo(id(), stored.version()));
    }

    public void redo() {
        walk(() -> store.redo(id(), stored.version()));
    }

    private void walk(java.util.function.Supplier<Outcome> step) {
        endStep();
        if (standing instanceof Standing.NotKept) {
            keep(false);
        }
        if (!(standing instanceof Standing.Kept)) {
            tell(Change.STANDING);
            return;
        }
        if (ask(step)) {
            take(stored);
        }
        tell(Change.CHANGED);
    }

    // Two tabs.

    /** Looks whether another tab has changed or deleted the house. */
    public void lookAgain() {
        if (!(standing instanceof Standing.Kept)) {
            return;
        }
        Optional<Draft> now = store.find(id());
        if (now.isEmpty()) {
            standing = new Standing.Deleted();
        } else if (parsed(now.get().json()).equals(draft)) {
            stored = now.get();
        } else if (now.get().version() != stored.version()) {
            standing =
                    new Standing.ChangedElsewhere(now.get().version(), now.get().changed());
        } else {
            return;
        }
        tell(Change.STANDING);
    }

    /** Takes what the other tab has stored; what was typed here since is let go. */
    public void takeTheirs() {
        Optional<Draft> theirs = store.find(id());
        if (theirs.isPresent()) {
            take(theirs.get());
        } else {
            standing = new Standing.Deleted();
        }
        tell(Change.CHANGED);
    }

    /** Stores what is here as the newer; what the other tab stored is one undo away. */
    public void keepMine() {
        if (standing instanceof Standing.ChangedElsewhere other) {
            ask(() -> store.save(id(), draft.toString(), other.version()));
            tell(Change.CHANGED);
        }
    }

    /** Stores what is here as a house of its own and gives its id; empty where it could not be stored. */
    public OptionalLong keepCopy() {
        try {
            ObjectNode copy = draft.deepCopy();
            String name = text("/name").isBlank() ? "Copy" : text("/name") + " (copy)";
            copy.put("name", name);
            return OptionalLong.of(store.create(name, copy.toString()).id());
        } catch (DataAccessException | TransactionException | IllegalArgumentException e) {
            notKept(e);
            tell(Change.STANDING);
            return OptionalLong.empty();
        }
    }

    /** Brings a deleted house back as it stands here. */
    public void bringBack() {
        if (standing instanceof Standing.Deleted && store.undelete(id())) {
            store.find(id()).ifPresent(d -> ask(() -> store.save(id(), draft.toString(), d.version())));
            tell(Change.CHANGED);
        }
    }

    /** Tries again to store what could not be stored. */
    public void tryAgain() {
        keep(false);
        tell(Change.STANDING);
    }

    // The store and the review.

    private void keep(boolean sameStep) {
        if (standing instanceof Standing.ChangedElsewhere || standing instanceof Standing.Deleted) {
            return; // the person has yet to choose; what is typed meanwhile waits here
        }
        String text = draft.toString();
        ask(() -> sameStep ? store.saveOn(id(), text, stored.version()) : store.save(id(), text, stored.version()));
    }

    /** Whether the store has stored it. */
    private boolean ask(java.util.function.Supplier<Outcome> call) {
        try {
            Outcome outcome = call.get();
            if (outcome instanceof Outcome.Saved saved) {
                stored = saved.draft();
                standing = new Standing.Kept(stored.changed());
                nameAsInDraft();
                return true;
            }
            standing = outcome instanceof Outcome.Conflict c
                    ? new Standing.ChangedElsewhere(c.version(), c.when())
                    : new Standing.Deleted();
        } catch (DataAccessException | TransactionException | IllegalArgumentException e) {
            notKept(e);
        }
        return false;
    }

    private void notKept(RuntimeException e) {
        standing = new Standing.NotKept(
                e instanceof IllegalArgumentException ? String.valueOf(e.getMessage()) : "the store did not take it");
    }

    private void nameAsInDraft() {
        String name = parsed(stored.json()).path("name").asText("");
        if (!name.equals(stored.name())) {
            store.rename(id(), name);
        }
    }

    private void take(Draft now) {
        stored = now;
        draft = parsed(now.json());
        standing = new Standing.Kept(now.changed());
        endStep();
        read();
    }

    private void read() {
        Reading reading = PlanDoor.read(draft);
        errors.clear();
        for (PlanError e : reading.errors()) {
            errors.putIfAbsent(e.pointer(), e.message());
        }
        current = reading.plan().isPresent();
        reading.plan().ifPresent(plan -> review = reviewer.review(plan, Parts.ALL));
    }

    // Who hears of it.

    /** Listens until the runnable it gives is run. */
    public Runnable listen(Listener listener) {
        listeners.add(listener);
        return () -> listeners.remove(listener);
    }

    private void tell(Change change) {
        List.copyOf(listeners).forEach(l -> l.changed(change));
    }
}
