package longrun.quantity;

/** A mass, in avoirdupois pounds (1 lb = 0.45359237 kg exactly, NIST SP 811 B.8). */
public record Mass(double pounds) implements Quantity, Comparable<Mass> {

    public Mass {
        pounds = Quantity.finite(pounds);
    }

    @Override
    public double canonical() {
        return pounds;
    }

    @Override
    public int compareTo(Mass other) {
        return Double.compare(pounds, other.pounds);
    }
}
