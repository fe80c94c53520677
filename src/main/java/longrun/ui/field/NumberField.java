package longrun.ui.field;

import longrun.draft.EntryAddress;
import longrun.draft.WrongEntry;
import longrun.ui.place.HousePage;

/** A count or a price, which is a bare number in the plan; what is no number is kept as typed and said to be none. */
public final class NumberField extends LineField {

    private final String kind;

    private NumberField(HousePage desk, String pointer, String kind, String label, String help) {
        super(desk, new EntryAddress(pointer, kind), label, help);
        this.kind = kind;
        target().setAttribute("inputmode", "decimal");
    }

    public NumberField(HousePage desk, String pointer, String label, String help) {
        this(desk, pointer, EntryAddress.NUMBER, label, help);
    }

    /** The price of a gallon, in whatever money. */
    public static NumberField price(HousePage desk, String pointer, String label, String help) {
        return new NumberField(desk, pointer, EntryAddress.PRICE, label, help);
    }

    private boolean isPrice() {
        return kind.equals(EntryAddress.PRICE);
    }

    @Override
    String wrong(String stored, String error) {
        return WrongEntry.says(stored, error).replace("such as 4", isPrice() ? "such as 2.80" : "such as 4");
    }

    @Override
    String understood(String stored) {
        return isPrice() ? stored + " a gallon" : "";
    }
}
