package longrun.quantity;

/**
 * Comparisons of one quantity with its limit. Equal passes, and binary rounding is no difference: 36 MJ/h is 10 kW, to
 * a billionth of the value.
 */
public final class Same {

    private static final double SHARE = 1e-9;

    private Same() {}

    /** Whether a value reaches a least; false for NaN. */
    public static boolean atLeast(double value, double least) {
        return value >= least - SHARE * Math.abs(least);
    }

    /** Whether a value stays within a greatest; false for NaN. */
    public static boolean atMost(double value, double greatest) {
        return value <= greatest + SHARE * Math.abs(greatest);
    }
}
