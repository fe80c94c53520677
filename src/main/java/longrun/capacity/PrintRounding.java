package longrun.capacity;

import java.util.Optional;
import longrun.quantity.HeatRate;

/** Rounds a computed capacity as the code prints its propane tables. */
public final class PrintRounding {

    private PrintRounding() {}

    /** As {@link #btuh}; empty where that is blank. */
    public static Optional<HeatRate> rounded(HeatRate computed) {
        double btuh = btuh(computed.btuh());
        return Double.isNaN(btuh) ? Optional.empty() : Optional.of(HeatRate.ofBtuh(btuh));
    }

    /**
     * Three significant digits, whole thousands below 100,000, a blank (NaN) where the rounded figure is below 10,000
     * Btu/h.
     */
    static double btuh(double btuh) {
        if (!(btuh >= 0) || Double.isInfinite(btuh)) {
            return Double.NaN;
        }
        double step = 1000;
        while (btuh / step >= 1000) {
            step *= 10;
        }
        double rounded = Math.floor(btuh / step + 0.5) * step;
        return rounded < 10_000 ? Double.NaN : rounded;
    }
}
