package longrun.quantity;

/** A length or distance, in feet (1 ft = 0.3048 m exactly, NIST SP 811 B.8). */
public record Length(double feet) implements Quantity, Comparable<Length> {

    public Length {
        feet = Quantity.finite(feet);
    }

    public static final Length ZERO = new Length(0);

    public static Length ofFeet(double feet) {
        return new Length(feet);
    }

    public double inches() {
        return feet * 12;
    }

    public double metres() {
        return feet * 0.3048;
    }

    public Length plus(Length other) {
        return new Length(feet + other.feet);
    }

    public Length minus(Length other) {
        return new Length(feet - other.feet);
    }

    /** To 0.001 ft, the precision at which lengths are compared: 18.288 m is 60.000 ft. */
    public Length rounded() {
        return new Length(Math.rint(feet * 1000) / 1000);
    }

    @Override
    public double canonical() {
        return feet;
    }

    @Override
    public int compareTo(Length other) {
        return Double.compare(feet, other.feet);
    }
}
