package longrun.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;

/** Numbers as people read them: a decimal point, commas between thousands, the same in every country. */
public final class Show {

    private Show() {}

    /** "199,000 Btu/h". */
    public static String btuh(double btuh) {
        return whole(btuh) + " Btu/h";
    }

    /** "199,000 Btu/h". */
    public static String btuh(HeatRate rate) {
        return btuh(rate.btuh());
    }

    /** "199,000". */
    public static String whole(double value) {
        return String.format(Locale.ROOT, "%,.0f", value);
    }

    /** "53.2 ft". */
    public static String feet(double feet) {
        return decimals(feet, 1) + " ft";
    }

    /** "53.2 ft". */
    public static String feet(Length length) {
        return feet(length.feet());
    }

    /** "30 ft", as a table's row is labelled. */
    public static String rowFeet(Length length) {
        return plain(length.feet()) + " ft";
    }

    /** "11 in. w.c." below 1.5 psi, else "10 psi": as the trade speaks of it. */
    public static String pressure(Pressure p) {
        return p.psi() < 1.5 - 1e-9 ? plain(p.inWc()) + " in. w.c." : plain(p.psi()) + " psi";
    }

    /** With a fixed number of decimals. */
    public static String decimals(double value, int decimals) {
        return String.format(Locale.ROOT, "%,." + decimals + "f", value);
    }

    /** Without needless zeros, to three decimals. */
    public static String plain(double value) {
        BigDecimal rounded =
                new BigDecimal(value).setScale(3, RoundingMode.HALF_UP).stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }
}
