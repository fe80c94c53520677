package longrun.ui.field;

import longrun.draft.EntryAddress;
import longrun.ui.place.HousePage;

/** Words, kept as typed. */
public final class WordsField extends LineField {

    public WordsField(HousePage desk, String pointer, String label, String help) {
        super(desk, new EntryAddress(pointer, ""), label, help);
    }
}
