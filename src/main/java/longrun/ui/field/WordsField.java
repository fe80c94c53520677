package longrun.ui.field;

import longrun.draft.EntryAddress;
import longrun.ui.place.HousePage;

/** Words, kept as typed. */
public final class WordsField extends LineField {

    public WordsField(HousePage desk, String pointer, String label, String help) {
        super(desk, pointer, "words", label, help);
        end();
    }

    @Override
    EntryAddress address() {
        return new EntryAddress(pointer(), "");
    }
}
