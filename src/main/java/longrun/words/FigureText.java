package longrun.words;

import java.util.Locale;
import java.util.Map;
import longrun.origin.Figure;

/** A figure's number and unit as text, in the unit system chosen. */
public final class FigureText {

    /** The metric unit in place of a customary one, and the factor a number is multiplied by. */
    private record MetricUnit(String unit, double factor) {}

    private static final Map<String, MetricUnit> METRIC = Map.of(
            "Btu/h", new MetricUnit("kW", 0.000293071),
            "gal", new MetricUnit("L", 3.785411784),
            "gal/h", new MetricUnit("L/h", 3.785411784),
            "ft", new MetricUnit("m", 0.3048),
            "lb", new MetricUnit("kg", 0.45359237),
            "psig", new MetricUnit("kPa", 6.894757));

    private FigureText() {}

    /** A figure's number, without its unit. */
    public static String number(Figure f, UnitSystem units) {
        return number(f.number(), f.unit(), units);
    }

    /** More than a year is not told in days: 1,649 days would look more exact than it is. */
    private static boolean overAYear(double value, String unit) {
        return unit.equals("days") && value > 365;
    }

    /**
     * A number without its unit. More than 365 days are "over a year"; Btu/h from 10,000 up are rounded to the thousand, since
     * the rules behind them are no finer.
     */
    public static String number(double value, String unit, UnitSystem units) {
        if (overAYear(value, unit)) {
            return "over a year";
        }
        MetricUnit other = units == UnitSystem.METRIC ? METRIC.get(unit) : null;
        double shown = other == null ? value : value * other.factor();
        boolean thousands = other == null && unit.equals("Btu/h") && Math.abs(shown) >= 10_000;
        if (thousands) {
            return String.format(Locale.ROOT, "%,.0f", Math.round(shown / 1000) * 1000.0);
        }
        boolean whole =
                Math.abs(shown) >= 100 || unit.equals("min") || unit.equals("days") || shown == Math.rint(shown);
        return String.format(Locale.ROOT, whole ? "%,.0f" : "%,.1f", shown + 0.0);
    }

    /** The name of a unit in the unit system chosen. */
    public static String unit(String unit, UnitSystem units) {
        MetricUnit other = units == UnitSystem.METRIC ? METRIC.get(unit) : null;
        String name = other == null ? unit : other.unit();
        return name.equals("degF") ? "\u00b0F" : name;
    }

    /** A figure's number and unit; "not known" where it is unknown. */
    public static String words(Figure f, UnitSystem units) {
        return f.isKnown() ? words(f.number(), f.unit(), units) : "not known";
    }

    /** A number with its unit. */
    public static String words(double value, String unit, UnitSystem units) {
        return (number(value, unit, units) + " " + unit(value, unit, units)).strip();
    }

    /** The unit that stands beside a number; blank where the number is in words ("over a year"). */
    public static String unit(double value, String unit, UnitSystem units) {
        return overAYear(value, unit) ? "" : unit(unit, units);
    }
}
