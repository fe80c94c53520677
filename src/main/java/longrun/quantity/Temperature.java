package longrun.quantity;

/** A temperature, in degrees Fahrenheit. */
public record Temperature(double degF) implements Quantity, Comparable<Temperature> {

    public Temperature {
        degF = Quantity.finite(degF);
    }

    public static Temperature ofDegF(double degF) {
        return new Temperature(degF);
    }

    @Override
    public double canonical() {
        return degF;
    }

    @Override
    public int compareTo(Temperature other) {
        return Double.compare(degF, other.degF);
    }
}
