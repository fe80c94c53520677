package longrun.quantity;

/** A heat loss for each degree of difference, in Btu/(h.degF). */
public record HeatLoss(double btuhPerDegF) implements Quantity, Comparable<HeatLoss> {

    public HeatLoss {
        btuhPerDegF = Quantity.finite(btuhPerDegF);
    }

    @Override
    public double canonical() {
        return btuhPerDegF;
    }

    @Override
    public int compareTo(HeatLoss other) {
        return Double.compare(btuhPerDegF, other.btuhPerDegF);
    }
}
