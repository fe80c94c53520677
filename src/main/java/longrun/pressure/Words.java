package longrun.pressure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Optional;
import longrun.capacity.FlowEquation;
import longrun.piping.Piping;
import longrun.quantity.HeatRate;
import longrun.quantity.Length;
import longrun.quantity.Pressure;

/** Figures as this package's findings and origins write them. */
final class Words {

    private Words() {}

    /** "10.75 in. w.c.", and psi beside it from 1.5 psi. */
    static String inWc(Pressure pressure) {
        String water = number(pressure.inWc(), 2) + " in. w.c.";
        double psi = pressure.psi();
        return psi >= FlowEquation.HIGH_FROM.psi() ? number(psi, 2) + " psi (" + water + ")" : water;
    }

    static String inWc(Optional<Pressure> value) {
        return value.map(Words::inWc).orElse("not known");
    }

    static String btuh(Optional<HeatRate> value) {
        return value.map(Words::btuh).orElse("not known");
    }

    static String btuh(HeatRate rate) {
        return String.format(Locale.ROOT, "%,.0f Btu/h", rate.btuh());
    }

    /** An appliance by its name, or a regulator, within a sentence. */
    static String called(Piping piping, String id) {
        return piping.plan().appliances().stream()
                .filter(a -> a.id().equals(id))
                .findFirst()
                .map(piping.names()::called)
                .orElse("regulator " + id);
    }

    static String feet(Length length) {
        return number(length.feet(), 2) + " ft";
    }

    /** Rounded to at most so many places, without trailing noughts. */
    static String number(double value, int places) {
        BigDecimal rounded = new BigDecimal(value).setScale(places, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
