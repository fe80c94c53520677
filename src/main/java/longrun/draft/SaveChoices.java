package longrun.draft;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.OptionalLong;
import longrun.draft.entry.DraftValue;

/** What a person can do where another tab changed or deleted the house, or it could not be saved. */
public final class SaveChoices {

    private final HouseSession session;
    private final StoredHouse house;

    SaveChoices(HouseSession session, StoredHouse house) {
        this.session = session;
        this.house = house;
    }

    /** Checks whether another tab has changed or deleted the house. */
    public void checkForOtherChanges() {
        if (house.checkForOtherChanges(session.tree())) {
            session.tell(HouseSession.Change.SAVE_STATE);
        }
    }

    /** Takes what the other tab stored; one undo brings back what was typed here. */
    public void takeTheirs() {
        if (house.takeTheirs(session.tree())) {
            session.takeStored();
        }
        session.tell(HouseSession.Change.CHANGED);
    }

    /** Shows again a draft that could not be saved because another tab had changed the house; the choice is still open. */
    public void restoreUnsaved(DraftValue typed) {
        if (!typed.equals(session.draft()) && typed.node() instanceof ObjectNode plan) {
            house.setChangedElsewhere();
            session.replaceDraft(plan);
            session.tell(HouseSession.Change.CHANGED);
        }
    }

    /** Saves what is here; one undo brings back what the other tab stored. */
    public void keepMine() {
        if (house.saveOverTheirs(session.tree())) {
            session.tell(HouseSession.Change.CHANGED);
        }
    }

    /** Saves what is here as another house and gives its id; empty where it could not be saved. */
    public OptionalLong keepCopy() {
        ObjectNode copy = session.tree().deepCopy();
        String name = session.text("/name").isBlank() ? "Copy" : session.text("/name") + " (copy)";
        copy.put("name", name);
        OptionalLong id = house.saveCopy(copy, name);
        if (id.isEmpty()) {
            session.tell(HouseSession.Change.SAVE_STATE);
        }
        return id;
    }

    /** Brings a deleted house back as it is here. */
    public void bringBack() {
        if (house.bringBack(session.tree())) {
            session.tell(HouseSession.Change.CHANGED);
        }
    }

    /** Tries again to save. */
    public void tryAgain() {
        house.save(session.tree(), false);
        session.tell(HouseSession.Change.SAVE_STATE);
    }
}
