package longrun.ui.fill;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import longrun.fuel.fill.Range;
import longrun.origin.Figure;
import longrun.words.FigureText;
import longrun.words.UnitSystem;

/** How figures and their ranges are written on the page. A range is rounded outward, so that it holds what it names. */
final class FillWords {

    static final String OVER_A_YEAR = "over a year";
    private static final double LITRES = 3.785411784;

    private FillWords() {}

    /** "38 to 47"; nothing where it is a single figure. */
    static String days(Range r) {
        if (!r.isWide()) {
            return "";
        }
        String low = r.low() > 365 ? OVER_A_YEAR : whole(Math.floor(r.low()));
        String high = r.high() > 365 ? OVER_A_YEAR : whole(Math.ceil(r.high()));
        return low.equals(high) ? "" : low + " to " + high;
    }

    static String gallons(Range r, UnitSystem units) {
        double factor = units == UnitSystem.CUSTOMARY ? 1 : LITRES;
        return r.isWide() ? whole(Math.floor(r.low() * factor)) + " to " + whole(Math.ceil(r.high() * factor)) : "";
    }

    /** To a tenth. */
    static String tenths(Range r) {
        return r.isWide() && !Double.isInfinite(r.high())
                ? String.format(
                        Locale.ROOT, "%.1f to %.1f", Math.floor(10 * r.low()) / 10, Math.ceil(10 * r.high()) / 10)
                : "";
    }

    static String money(Range gallons, double price) {
        return gallons.isWide()
                ? whole(Math.floor(gallons.low() * price)) + " to " + whole(Math.ceil(gallons.high() * price))
                : "";
    }

    static String whole(double value) {
        return String.format(Locale.ROOT, "%,.0f", value);
    }

    /** Days of a fill as the whole house writes them. */
    static String fill(Figure days, UnitSystem units) {
        return days.isKnown() ? FigureText.number(days, units) : "not known";
    }

    /** A length of tanks' distances. */
    static String feet(double feet, UnitSystem units) {
        return units == UnitSystem.CUSTOMARY ? whole(feet) : String.format(Locale.ROOT, "%.1f", feet * 0.3048);
    }

    /** The day a number of days after another, where that is in sight. */
    static Optional<LocalDate> after(LocalDate from, double days) {
        return days <= 3650 ? Optional.of(from.plusDays((long) days)) : Optional.empty();
    }
}
