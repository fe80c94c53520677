package longrun.draft;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.OptionalLong;
import longrun.draft.entry.Entered;

/** What a person may do where another tab changed or deleted the house, or it could not be stored. */
public final class SaveChoices {

    private final HouseSession session;
    private final StoredHouse house;

    SaveChoices(HouseSession session, StoredHouse house) {
        this.session = session;
        this.house = house;
    }

    /** Looks whether another tab has changed or deleted the house. */
    public void checkForOtherChanges() {
        if (house.checkForOtherChanges(session.tree())) {
            session.tell(HouseSession.Change.SAVE_STATE);
        }
    }

    /** Takes what the other tab has stored; what was typed here is one undo away. */
    public void takeTheirs() {
        if (house.takeTheirs(session.tree())) {
            session.takeStored();
        }
        session.tell(HouseSession.Change.CHANGED);
    }

    /** Takes up a draft that was not stored since another tab had changed the house: the choice is still to be made. */
    public void restoreUnsaved(Entered typed) {
        if (!typed.equals(session.draft()) && typed.node() instanceof ObjectNode plan) {
            house.setChangedElsewhere();
            session.replaceDraft(plan);
            session.tell(HouseSession.Change.CHANGED);
        }
    }

    /** Stores what is here as the newer; what the other tab stored is one undo away. */
    public void keepMine() {
        if (house.saveOverTheirs(session.tree())) {
            session.tell(HouseSession.Change.CHANGED);
        }
    }

    /** Stores what is here as a house of its own and gives its id; empty where it could not be stored. */
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

    /** Brings a deleted house back as it stands here. */
    public void bringBack() {
        if (house.bringBack(session.tree())) {
            session.tell(HouseSession.Change.CHANGED);
        }
    }

    /** Tries again to store what could not be stored. */
    public void tryAgain() {
        house.save(session.tree(), false);
        session.tell(HouseSession.Change.SAVE_STATE);
    }
}
