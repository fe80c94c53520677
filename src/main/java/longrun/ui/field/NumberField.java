package longrun.ui.field;

import longrun.draft.EntryAddress;
import longrun.draft.WrongEntry;
import longrun.plan.json.PlanError;
import longrun.ui.frame.Dom;
import longrun.ui.place.HousePage;

/** A count or a price, which is a bare number in the plan; text that is not a number is kept as typed and reported. */
public final class NumberField extends LineField {

    private final String kind;
    private final String each;
    private final String such;

    private NumberField(
            HousePage page, String pointer, String kind, String label, String help, String each, String such) {
        super(page, pointer, "bare", label, help);
        this.kind = kind;
        this.each = each;
        this.such = such;
        target().setAttribute("inputmode", "decimal");
        end(Dom.text("span", "unit", each));
    }

    /** A count. */
    public NumberField(HousePage page, String pointer, String label, String help) {
        this(page, pointer, EntryAddress.NUMBER, label, help, "", "4");
    }

    /** The price of a gallon, in any currency. */
    public static NumberField price(HousePage page, String pointer, String label, String help) {
        return new NumberField(page, pointer, EntryAddress.PRICE, label, help, "a gallon", "2.80");
    }

    /** The price of a kilowatt-hour, in any currency. */
    public static NumberField currentPrice(HousePage page, String pointer, String label, String help) {
        return new NumberField(page, pointer, EntryAddress.PRICE, label, help, "a kWh", "0.14");
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
