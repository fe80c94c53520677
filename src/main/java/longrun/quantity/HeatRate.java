package longrun.quantity;

/** A rate of heat, in Btu per hour (international table Btu, 1055.05585262 J, NIST SP 811 B.8). */
public record HeatRate(double btuh) implements Quantity, Comparable<HeatRate> {

    public HeatRate {
        btuh = Quantity.finite(btuh);
    }

    public static final HeatRate ZERO = new HeatRate(0);

    public static HeatRate ofBtuh(double btuh) {
        return new HeatRate(btuh);
    }

    public double kilowatts() {
        return btuh * 1055.05585262 / 3_600_000;
    }

    public HeatRate plus(HeatRate other) {
        return new HeatRate(btuh + other.btuh);
    }

    public HeatRate minus(HeatRate other) {
        return new HeatRate(btuh - other.btuh);
    }

    @Override
    public double canonical() {
        return btuh;
    }

    @Override
    public int compareTo(HeatRate other) {
        return Double.compare(btuh, other.btuh);
    }
}
