package longrun.words;

import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import longrun.quantity.HeatRate;
import longrun.quantity.Length;
import longrun.quantity.Measure;
import longrun.quantity.Unit;

/** The two ways a page shows quantities. What a person typed stays as typed in either. */
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

    public String label() {
        return label;
    }

    /** The unit a bare number in a length column has. */
    public Unit lengthUnit() {
        return length;
    }

    /** The unit a bare number in an input column has. */
    public Unit heatUnit() {
        return heat;
    }

    /** A length to a tenth of a foot or a hundredth of a metre, without unit. */
    public String length(Length l) {
        return format(this == CUSTOMARY ? "#,##0.0" : "#,##0.00", length.fromCanonical(l.feet()));
    }

    /** A row of a table, which is a whole number of feet. */
    public String row(Length l) {
        return format(this == CUSTOMARY ? "#,##0.##" : "#,##0.0", length.fromCanonical(l.feet()));
    }

    /** A heat rate to the whole Btu/h or a tenth of a kilowatt, without unit. */
    public String heat(HeatRate h) {
        return format(this == CUSTOMARY ? "#,##0" : "#,##0.0", heat.fromCanonical(h.btuh()));
    }

    /** A cell of a capacity table: thousand Btu/h as printed, or kilowatts. */
    public String cell(HeatRate h) {
        return this == CUSTOMARY ? format("#,##0.##", h.btuh() / 1000) : heat(h);
    }

    /** What the cells of a capacity table are in. */
    public String cellUnit() {
        return this == CUSTOMARY ? "thousand Btu/h" : "kW";
    }

    private static String format(String pattern, double value) {
        return new DecimalFormat(pattern, DecimalFormatSymbols.getInstance(Locale.ROOT)).format(value);
    }
}
