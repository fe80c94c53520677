package longrun.quantity;

/** A share; 1 is the whole, written by a person in percent. */
public record Ratio(double fraction) implements Quantity, Comparable<Ratio> {

    public Ratio {
        fraction = Quantity.finite(fraction);
    }

    public double percent() {
        return fraction * 100;
    }

    @Override
    public double canonical() {
        return fraction;
    }

    @Override
    public int compareTo(Ratio other) {
        return Double.compare(fraction, other.fraction);
    }
}
