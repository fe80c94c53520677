package longrun.words;

import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import longrun.quantity.HeatRate;
import longrun.quantity.Length;
import longrun.quantity.Measure;
import longrun.quantity.Unit;

/** The two systems of units in which a page shows quantities. What a person typed stays as typed in both. */
public enum UnitSystem {
    CUSTOMARY("ft, Btu/h, in. w.c.", "ft", "Btu/h"),
    METRIC("m, kW, kPa", "m", "kW");

    private final String label;
    private final Unit length;
    private final Unit heat;

    UnitSystem(String label, String length, String heat) {
        this.label = label;
        this.length = named(Measure.LENGTH, length);
        this.heat = named(Measure.HEAT_RATE, heat);
    }

    private static Unit named(Measure<?> measure, String name) {
        return measure.units().stream()
                .filter(u -> u.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** The name of the choice: its main units. */
    public String label() {
        return label;
    }

    /** The unit of a length typed without one. */
    public Unit lengthUnit() {
        return length;
    }

    /** The unit of a heat rate typed without one. */
    public Unit heatUnit() {
        return heat;
    }

    /** A length to a tenth of a foot or a hundredth of a metre, without unit. */
    public String length(Length l) {
        return format(this == CUSTOMARY ? "#,##0.0" : "#,##0.00", length.fromCanonical(l.feet()));
    }

    /** The length of a table row, without unit: feet as printed, or metres to a tenth. */
    public String row(Length l) {
        return format(this == CUSTOMARY ? "#,##0.##" : "#,##0.0", length.fromCanonical(l.feet()));
    }

    /** A heat rate to the whole Btu/h or a tenth of a kilowatt, without unit. */
    public String heat(HeatRate h) {
        return format(this == CUSTOMARY ? "#,##0" : "#,##0.0", heat.fromCanonical(h.btuh()));
    }

    /** A cell of a capacity table, without unit: thousand Btu/h as printed, or kilowatts to a tenth. */
    public String cell(HeatRate h) {
        return this == CUSTOMARY ? format("#,##0.##", h.btuh() / 1000) : heat(h);
    }

    /** The unit of the cells of a capacity table. */
    public String cellUnit() {
        return this == CUSTOMARY ? "thousand Btu/h" : "kW";
    }

    private static String format(String pattern, double value) {
        return new DecimalFormat(pattern, DecimalFormatSymbols.getInstance(Locale.ROOT)).format(value);
    }
}
