package longrun.ui.field;

import longrun.draft.EntryAddress;
import longrun.ui.place.HousePage;

/** A text, stored as typed. */
public final class WordsField extends LineField {

    public WordsField(HousePage page, String pointer, String label, String help) {
        super(page, pointer, "words", label, help);
        end();
    }

    @Override
    EntryAddress address() {
        return new EntryAddress(pointer(), "");
    }
}
