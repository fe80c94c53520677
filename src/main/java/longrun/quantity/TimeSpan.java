package longrun.quantity;

/** A span of time, in minutes. */
public record TimeSpan(double minutes) implements Quantity, Comparable<TimeSpan> {

    public TimeSpan {
        minutes = Quantity.finite(minutes);
    }

    public double hours() {
        return minutes / 60;
    }

    public double days() {
        return minutes / 1440;
    }

    @Override
    public double canonical() {
        return minutes;
    }

    @Override
    public int compareTo(TimeSpan other) {
        return Double.compare(minutes, other.minutes);
    }
}
