package longrun.quantity;

/** A wire's size by the American wire gauge; a smaller number is a thicker wire. */
public record WireGauge(double awg) implements Quantity {

    public WireGauge {
        awg = Quantity.finite(awg);
    }

    public boolean atLeastAsThickAs(WireGauge other) {
        return awg <= other.awg;
    }

    @Override
    public double canonical() {
        return awg;
    }
}
