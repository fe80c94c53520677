package longrun.capacity;

import java.math.BigDecimal;
import java.math.RoundingMode;
import longrun.quantity.Pressure;

/** A pressure in the unit that writes it shortest, as table names have it: 11inwc, 0.5inwc, 2psi. */
final class PressureText {

    private PressureText() {}

    static String compact(Pressure pressure) {
        return text(pressure, "inwc", "psi");
    }

    static String spaced(Pressure pressure) {
        return text(pressure, " in w.c.", " psi");
    }

    private static String text(Pressure pressure, String inWc, String psi) {
        String water = shortest(pressure.inWc(), 4);
        String pounds = shortest(pressure.psi(), 6);
        int shorter = Integer.compare(pounds.length(), water.length());
        boolean inPsi = shorter < 0 || (shorter == 0 && FlowEquation.isHigh(pressure));
        return inPsi ? pounds + psi : water + inWc;
    }

    private static String shortest(double value, int places) {
        return BigDecimal.valueOf(value)
                .setScale(places, RoundingMode.HALF_EVEN)
                .stripTrailingZeros()
                .toPlainString();
    }
}
