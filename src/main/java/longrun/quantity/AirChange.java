package longrun.quantity;

/** How often a room's air is changed, times per hour. */
public record AirChange(double perHour) implements Quantity, Comparable<AirChange> {

    public AirChange {
        perHour = Quantity.finite(perHour);
    }

    @Override
    public double canonical() {
        return perHour;
    }

    @Override
    public int compareTo(AirChange other) {
        return Double.compare(perHour, other.perHour);
    }
}
