package longrun.quantity;

/** The inside diameter of a pipe or tube, in inches, as tables and shops name it. */
public record Bore(double inches) implements Quantity, Comparable<Bore> {

    public Bore {
        inches = Quantity.finite(inches);
    }

    public static Bore ofInches(double inches) {
        return new Bore(inches);
    }

    @Override
    public double canonical() {
        return inches;
    }

    @Override
    public int compareTo(Bore other) {
        return Double.compare(inches, other.inches);
    }
}
