package longrun.quantity;

/** A physical quantity held in one canonical unit. Never NaN or infinite. */
public interface Quantity {

    /** The number in the canonical unit named by the type. */
    double canonical();

    /** Refuses what is no number before anything is rounded or stored. */
    static double finite(double value) {
        if (Double.isNaN(value) || Double.isInfinite(value)) {
            throw new IllegalArgumentException("a quantity must be a finite number, not " + value);
        }
        return value + 0.0; // turns -0.0 into 0.0
    }
}
