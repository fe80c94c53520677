package longrun.quantity;

/** A span of time, in minutes. */
public record TimeSpan(double minutes) implements Quantity, Comparable<TimeSpan> {

    public TimeSpan {
        minutes = Quantity.finite(minutes);
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
