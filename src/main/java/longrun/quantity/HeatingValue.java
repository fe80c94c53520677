package longrun.quantity;

/** The heat in a gallon of liquid propane, in Btu per US gallon. */
public record HeatingValue(double btuPerGallon) implements Quantity, Comparable<HeatingValue> {

    public HeatingValue {
        btuPerGallon = Quantity.finite(btuPerGallon);
    }

    @Override
    public double canonical() {
        return btuPerGallon;
    }

    @Override
    public int compareTo(HeatingValue other) {
        return Double.compare(btuPerGallon, other.btuPerGallon);
    }
}
