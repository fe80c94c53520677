package longrun.quantity;

/** A volume flow, in US gallons per minute. */
public record Flow(double gpm) implements Quantity, Comparable<Flow> {

    public Flow {
        gpm = Quantity.finite(gpm);
    }

    public static Flow ofGpm(double gpm) {
        return new Flow(gpm);
    }

    @Override
    public double canonical() {
        return gpm;
    }

    @Override
    public int compareTo(Flow other) {
        return Double.compare(gpm, other.gpm);
    }
}
