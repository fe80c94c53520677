package longrun.words;

import java.util.Locale;
import java.util.Map;
import longrun.origin.Figure;

/** A figure's number and unit in the system of units chosen. */
public final class FigureText {

    /** A unit in the other system: what it is called there, and what a number is multiplied by. */
    private record Other(String unit, double factor) {}

    private static final Map<String, Other> METRIC = Map.of(
            "Btu/h", new Other("kW", 0.000293071),
            "gal", new Other("L", 3.785411784),
            "gal/h", new Other("L/h", 3.785411784),
            "ft", new Other("m", 0.3048),
            "lb", new Other("kg", 0.45359237),
            "psig", new Other("kPa", 6.894757));

    private FigureText() {}

    /** The number alone. */
    public static String number(Figure f, UnitSystem units) {
        return number(f.number(), f.unit(), units);
    }

    /** Days beyond a year: nobody believes 1,649 days, and a tank is looked at before. */
    private static boolean overAYear(double value, String unit) {
        return unit.equals("days") && value > 365;
    }

    /** A number of a unit, alone; days beyond a year in words; Btu/h to the thousand from 10,000 up, since the rule is no finer. */
    public static String number(double value, String unit, UnitSystem units) {
        if (overAYear(value, unit)) {
            return "over a year";
        }
        Other other = units == UnitSystem.METRIC ? METRIC.get(unit) : null;
        double shown = other == null ? value : value * other.factor();
        boolean thousands = other == null && unit.equals("Btu/h") && Math.abs(shown) >= 10_000;
        if (thousands) {
            return String.format(Locale.ROOT, "%,.0f", Math.round(shown / 1000) * 1000.0);
        }
        boolean whole =
                Math.abs(shown) >= 100 || unit.equals("min") || unit.equals("days") || shown == Math.rint(shown);
        return String.format(Locale.ROOT, whole ? "%,.0f" : "%,.1f", shown + 0.0);
    }

    /** Its unit. */
    public static String unit(String unit, UnitSystem units) {
        Other other = units == UnitSystem.METRIC ? METRIC.get(unit) : null;
        String name = other == null ? unit : other.unit();
        return name.equals("degF") ? "\u00b0F" : name;
    }

    /** Number and unit; "not known" where it is not known. */
    public static String words(Figure f, UnitSystem units) {
        return f.isKnown() ? words(f.number(), f.unit(), units) : "not known";
    }

    /** A number of a unit with that unit. */
    public static String words(double value, String unit, UnitSystem units) {
        return (number(value, unit, units) + " " + unit(value, unit, units)).strip();
    }

    /** The unit beside a number; none where the number is words. */
    public static String unit(double value, String unit, UnitSystem units) {
        return overAYear(value, unit) ? "" : unit(unit, units);
    }
}
