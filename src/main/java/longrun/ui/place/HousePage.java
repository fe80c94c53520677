package longrun.ui.place;

import java.util.Optional;
import longrun.draft.HouseSession;
import longrun.words.UnitSystem;

/** What a place needs of the page it stands on. */
public interface HousePage {

    HouseSession session();

    /** The units figures are shown in; what a person typed stays as typed. */
    UnitSystem units();

    /** Id of the selected section, the same in list, drawing, row and answer. */
    Optional<String> lineInHand();

    /** Selects a section; the answer and the place follow. */
    void takeInHand(String sectionId);

    /** Goes to the field of an entry, in whatever place it stands. */
    void goTo(String pointer);
}
