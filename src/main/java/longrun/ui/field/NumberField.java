package longrun.ui.field;

import longrun.draft.EntryAddress;
import longrun.draft.WrongEntry;
import longrun.plan.json.PlanError;
import longrun.ui.frame.Dom;
import longrun.ui.place.HousePage;

/** A count or a price, which is a bare number in the plan; what is no number is kept as typed and said to be none. */
public final class NumberField extends LineField {

    private final String kind;
    private final String each;
    private final String such;

    private NumberField(
            HousePage desk, String pointer, String kind, String label, String help, String each, String such) {
        super(desk, pointer, "bare", label, help);
        this.kind = kind;
        this.each = each;
        this.such = such;
        target().setAttribute("inputmode", "decimal");
        end(Dom.text("span", "unit", each));
    }

    public NumberField(HousePage desk, String pointer, String label, String help) {
        this(desk, pointer, EntryAddress.NUMBER, label, help, "", "4");
    }

    /** The price of a gallon, in whatever money. */
    public static NumberField price(HousePage desk, String pointer, String label, String help) {
        return new NumberField(desk, pointer, EntryAddress.PRICE, label, help, "a gallon", "2.80");
    }

    /** The price of a kilowatt-hour, in whatever money. */
    public static NumberField currentPrice(HousePage desk, String pointer, String label, String help) {
        return new NumberField(desk, pointer, EntryAddress.PRICE, label, help, "a kWh", "0.14");
    }

    private boolean isPrice() {
        return kind.equals(EntryAddress.PRICE);
    }

    @Override
    EntryAddress address() {
        return new EntryAddress(pointer(), kind);
    }

    @Override
    String wrong(String stored, PlanError error) {
        return WrongEntry.says(stored, error, such);
    }

    @Override
    String understood(String stored) {
        return isPrice() ? stored + " " + each : "";
    }
}
