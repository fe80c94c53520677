package longrun.draft;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Supplier;
import longrun.plan.json.PlanReader;
import longrun.store.Draft;
import longrun.store.DraftStore;
import longrun.store.NotStored;
import longrun.store.Outcome;
import org.springframework.dao.DataAccessException;
import org.springframework.transaction.TransactionException;

/**
 * The saved side of a house open in one page: the version stored last and whether the page's draft is saved. A draft is
 * stored in the background while the page works out its review; every method that tells the save state waits for that.
 */
final class StoredHouse {

    private static final List<String> LISTS = List.of(
            "regulators", "sections", "rooms", "appliances", "readings", "answers", "deliveries", "tubingTables");

    private final DraftStore store;
    private Draft stored;
    private SaveState saveState;
    private final PendingSave underWay;

    StoredHouse(DraftStore store, Draft stored) {
        this.store = store;
        this.stored = stored;
        this.underWay = new PendingSave(store, stored.id());
        this.saveState = new SaveState.Saved(stored.changed());
    }

    /** Puts a single item into a list, as the places expect, since a plan may write one item without a list. */
    private static void asList(ObjectNode draft, String list) {
        if (draft.path(list) instanceof ObjectNode alone) {
            draft.putArray(list).add(alone);
        }
    }

    private static ObjectNode parsed(Draft draft) {
        try {
            if (PlanReader.tree(draft.json()) instanceof ObjectNode object) {
                LISTS.forEach(list -> asList(object, list));
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
        finish();
        return stored.version();
    }

    SaveState saveState() {
        finish();
        return saveState;
    }

    boolean isSaved() {
        return saveState() instanceof SaveState.Saved;
    }

    /** A copy of the stored draft. */
    ObjectNode draft() {
        finish();
        return parsed(stored);
    }

    boolean canUndo() {
        return isSaved() && stored.undos() > 0;
    }

    boolean canRedo() {
        return isSaved() && stored.redos() > 0;
    }

    /** Begins to store a draft, unless the person must first choose between two versions. */
    void save(ObjectNode draft, boolean sameStep) {
        SaveState now = saveState();
        if (now instanceof SaveState.ChangedElsewhere || now instanceof SaveState.Deleted) {
            return;
        }
        underWay.begin(draft.toString(), stored.version(), sameStep);
    }

    /** Waits for a save under way and takes its outcome. */
    void finish() {
        underWay.end().ifPresent(this::ask);
    }

    /** Whether a step back was stored. */
    boolean undo() {
        return isSaved() && ask(() -> store.undo(id(), version()));
    }

    /** Whether a step forward was stored. */
    boolean redo() {
        return isSaved() && ask(() -> store.redo(id(), version()));
    }

    /** Tries again to save, where the last save failed. */
    void saveIfNotSaved(ObjectNode draft) {
        if (saveState() instanceof SaveState.NotSaved) {
            save(draft, false);
        }
    }

    /** Checks whether another tab has changed or deleted the house; true where the save state may have changed. */
    boolean checkForOtherChanges(ObjectNode draft) {
        if (!isSaved()) {
            return false;
        }
        Optional<Draft> now;
        try {
            now = store.find(id());
        } catch (DataAccessException | TransactionException e) {
            return false;
        }
        if (now.isEmpty()) {
            saveState = new SaveState.Deleted();
        } else if (parsed(now.get()).equals(draft)) {
            stored = now.get();
        } else if (now.get().version() != version()) {
            saveState = new SaveState.ChangedElsewhere(
                    now.get().version(), now.get().changed());
        } else {
            return false;
        }
        return true;
    }

    /**
     * Takes what another tab stored. What was here becomes the step before it, so that undo brings it back. False where the
     * house was deleted, changed once more in the meantime, or could not be saved.
     */
    boolean takeTheirs(ObjectNode mine) {
        finish();
        Optional<Draft> found;
        try {
            found = store.find(id());
        } catch (DataAccessException | TransactionException e) {
            notSaved(e);
            return false;
        }
        if (found.isEmpty()) {
            saveState = new SaveState.Deleted();
            return false;
        }
        Draft theirs = found.get();
        if (!parsed(theirs).equals(mine)
                && ask(() -> store.save(id(), mine.toString(), theirs.version()))
                && ask(() -> store.save(id(), theirs.json(), stored.version()))) {
            return true;
        }
        if (saveState instanceof SaveState.NotSaved) {
            return false; // what is here is stored nowhere else
        }
        if (saveState instanceof SaveState.ChangedElsewhere now && now.version() != theirs.version()) {
            return false;
        }
        stored = theirs;
        saveState = new SaveState.Saved(stored.changed());
        return true;
    }

    /** The page shows a draft typed before it was loaded again, and another tab has stored something else since. */
    void setChangedElsewhere() {
        finish();
        saveState = new SaveState.ChangedElsewhere(stored.version(), stored.changed());
    }

    /** Stores a draft over what another tab stored; false where there is no such conflict. */
    boolean saveOverTheirs(ObjectNode draft) {
        if (!(saveState() instanceof SaveState.ChangedElsewhere other)) {
            return false;
        }
        ask(() -> store.save(id(), draft.toString(), other.version()));
        return true;
    }

    /** Stores a draft as another house; empty where it could not be stored. */
    OptionalLong saveCopy(ObjectNode draft, String name) {
        try {
            return OptionalLong.of(store.create(name, draft.toString()).id());
        } catch (DataAccessException | TransactionException | IllegalArgumentException e) {
            notSaved(e);
            return OptionalLong.empty();
        }
    }

    /** Brings a deleted house back with this draft; false where it was not deleted. */
    boolean bringBack(ObjectNode draft) {
        try {
            if (!(saveState() instanceof SaveState.Deleted) || !store.undelete(id())) {
                return false;
            }
            store.find(id()).ifPresent(d -> ask(() -> store.save(id(), draft.toString(), d.version())));
        } catch (DataAccessException | TransactionException e) {
            notSaved(e);
        }
        return true;
    }

    /** Calls the store and takes the outcome; true where it has stored the change. */
    private boolean ask(Supplier<Outcome> call) {
        try {
            Outcome outcome = call.get();
            if (outcome instanceof Outcome.Saved saved) {
                stored = saved.draft();
                saveState = new SaveState.Saved(stored.changed());
                underWay.forget();
                nameAsInDraft();
                return true;
            }
            saveState = outcome instanceof Outcome.Conflict c
                    ? new SaveState.ChangedElsewhere(c.version(), c.when())
                    : new SaveState.Deleted();
        } catch (DataAccessException | TransactionException | IllegalArgumentException e) {
            notSaved(e);
        }
        return false;
    }

    private void notSaved(RuntimeException e) {
        saveState = new SaveState.NotSaved(
                e instanceof IllegalArgumentException ? String.valueOf(e.getMessage()) : NotStored.why(e));
    }

    private void nameAsInDraft() {
        String name = parsed(stored).path("name").asText("");
        if (!name.equals(stored.name())) {
            store.rename(id(), name);
        }
    }
}
