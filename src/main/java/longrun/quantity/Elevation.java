package longrun.quantity;

/** A height above the sea, in feet; may lie below it. */
public record Elevation(double feet) implements Quantity {

    public Elevation {
        feet = Quantity.finite(feet);
    }

    public static Elevation ofFeet(double feet) {
        return new Elevation(feet);
    }

    @Override
    public double canonical() {
        return feet;
    }
}
