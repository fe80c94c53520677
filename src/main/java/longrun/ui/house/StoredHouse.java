package longrun.ui.house;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Supplier;
import longrun.plan.json.PlanReader;
import longrun.store.Draft;
import longrun.store.DraftStore;
import longrun.store.Outcome;
import org.springframework.dao.DataAccessException;
import org.springframework.transaction.TransactionException;

/** A house in the store as one page knows it: the version stored last, and how the page stands with it. */
final class StoredHouse {

    private final DraftStore store;
    private Draft stored;
    private Standing standing;

    StoredHouse(DraftStore store, Draft stored) {
        this.store = store;
        this.stored = stored;
        this.standing = new Standing.Kept(stored.changed());
    }

    private static ObjectNode parsed(Draft draft) {
        try {
            if (PlanReader.tree(draft.json()) instanceof ObjectNode object) {
                return object;
            }
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a stored draft is JSON", e);
        }
        throw new IllegalStateException("a stored draft is one object");
    }

    long id() {
        return stored.id();
    }

    long version() {
        return stored.version();
    }

    Standing standing() {
        return standing;
    }

    boolean isKept() {
        return standing instanceof Standing.Kept;
    }

    /** What is stored, to be changed by whoever asked. */
    ObjectNode draft() {
        return parsed(stored);
    }

    boolean canUndo() {
        return stored.undos() > 0 && isKept();
    }

    boolean canRedo() {
        return stored.redos() > 0 && isKept();
    }

    /** Stores a draft, unless the person has yet to choose between two: what is typed meanwhile waits. */
    void save(ObjectNode draft, boolean sameStep) {
        if (standing instanceof Standing.ChangedElsewhere || standing instanceof Standing.Deleted) {
            return;
        }
        String text = draft.toString();
        ask(() -> sameStep ? store.saveOn(id(), text, version()) : store.save(id(), text, version()));
    }

    /** Whether a step back was stored. */
    boolean undo() {
        return isKept() && ask(() -> store.undo(id(), version()));
    }

    /** Whether a step forward was stored. */
    boolean redo() {
        return isKept() && ask(() -> store.redo(id(), version()));
    }

    /** Tries again to store what could not be stored. */
    void saveIfNotKept(ObjectNode draft) {
        if (standing instanceof Standing.NotKept) {
            save(draft, false);
        }
    }

    /** Looks whether another tab has changed or deleted the house; whether there is something to tell. */
    boolean lookAgain(ObjectNode draft) {
        if (!isKept()) {
            return false;
        }
        Optional<Draft> now = store.find(id());
        if (now.isEmpty()) {
            standing = new Standing.Deleted();
        } else if (parsed(now.get()).equals(draft)) {
            stored = now.get();
        } else if (now.get().version() != version()) {
            standing =
                    new Standing.ChangedElsewhere(now.get().version(), now.get().changed());
        } else {
            return false;
        }
        return true;
    }

    /** Takes what another tab has stored; false where the house is gone. */
    boolean takeTheirs() {
        Optional<Draft> theirs = store.find(id());
        theirs.ifPresent(d -> stored = d);
        standing = theirs.isPresent() ? new Standing.Kept(stored.changed()) : new Standing.Deleted();
        return theirs.isPresent();
    }

    /** Stores a draft over what another tab stored; false where none did. */
    boolean saveOverTheirs(ObjectNode draft) {
        if (!(standing instanceof Standing.ChangedElsewhere other)) {
            return false;
        }
        ask(() -> store.save(id(), draft.toString(), other.version()));
        return true;
    }

    /** Stores a draft as a house of its own; empty where it could not be stored. */
    OptionalLong saveCopy(ObjectNode draft, String name) {
        try {
            return OptionalLong.of(store.create(name, draft.toString()).id());
        } catch (DataAccessException | TransactionException | IllegalArgumentException e) {
            notKept(e);
            return OptionalLong.empty();
        }
    }

    /** Brings a deleted house back as a draft has it; false where it was not deleted. */
    boolean bringBack(ObjectNode draft) {
        if (!(standing instanceof Standing.Deleted) || !store.undelete(id())) {
            return false;
        }
        store.find(id()).ifPresent(d -> ask(() -> store.save(id(), draft.toString(), d.version())));
        return true;
    }

    /** Whether the store has stored it. */
    private boolean ask(Supplier<Outcome> call) {
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
        String name = draft().path("name").asText("");
        if (!name.equals(stored.name())) {
            store.rename(id(), name);
        }
    }
}
