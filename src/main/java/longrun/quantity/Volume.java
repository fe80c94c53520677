package longrun.quantity;

/** A volume, in US gallons (1 gal = 3.785411784 L exactly, NIST SP 811 B.8). */
public record Volume(double gallons) implements Quantity, Comparable<Volume> {

    public Volume {
        gallons = Quantity.finite(gallons);
    }

    public static Volume ofCubicFeet(double cubicFeet) {
        return new Volume(cubicFeet * 1728 / 231);
    }

    public double cubicFeet() {
        return gallons * 231 / 1728;
    }

    @Override
    public double canonical() {
        return gallons;
    }

    @Override
    public int compareTo(Volume other) {
        return Double.compare(gallons, other.gallons);
    }
}
