package longrun.fuel.fill;

/**
 * Where a figure may lie.
 *
 * @param low the least
 * @param high the greatest; infinite where there is no end in sight
 */
public record Range(double low, double high) {

    /** Whether it is more than one figure. */
    public boolean isWide() {
        return high > low;
    }

    /** The same widened so that it holds another figure. */
    Range with(double figure) {
        return new Range(Math.min(low, figure), Math.max(high, figure));
    }

    /** How far it reaches. */
    public double width() {
        return isWide() ? high - low : 0;
    }
}
