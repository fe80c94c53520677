package longrun.ui.house;

/** Words, kept as typed. */
public final class WordsField extends LineField {

    public WordsField(HouseDesk desk, String pointer, String label, String help) {
        super(desk, new EntryAddress(pointer, ""), label, help);
    }
}
