package longrun.capacity;

/** Rounds a computed capacity as the code prints its propane tables. */
public final class PrintRounding {

    private PrintRounding() {}

    /**
     * Three significant digits, whole thousands below 100,000, a blank (NaN) where the rounded figure is below 10,000
     * Btu/h.
     */
    public static double btuh(double btuh) {
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
