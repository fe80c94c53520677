package longrun.pressure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.OptionalDouble;
import longrun.capacity.FlowEquation;
import longrun.quantity.Pressure;

/** Figures as this package's findings and origins write them. */
final class Words {

    private Words() {}

    /** "10.75 in. w.c.", and psi beside it from 1.5 psi. */
    static String inWc(double inWc) {
        String water = number(inWc, 2) + " in. w.c.";
        double psi = Pressure.ofInWc(inWc).psi();
        return psi >= FlowEquation.HIGH_FROM.psi() ? number(psi, 2) + " psi (" + water + ")" : water;
    }

    static String inWc(OptionalDouble value) {
        return value.isPresent() ? inWc(value.getAsDouble()) : "not known";
    }

    static String btuh(OptionalDouble value) {
        return value.isPresent() ? btuh(value.getAsDouble()) : "not known";
    }

    static String btuh(double btuh) {
        return String.format(Locale.ROOT, "%,.0f Btu/h", btuh);
    }

    static String feet(double feet) {
        return number(feet, 2) + " ft";
    }

    /** Rounded to at most so many places, without trailing noughts. */
    static String number(double value, int places) {
        BigDecimal rounded = new BigDecimal(value).setScale(places, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
