package longrun.quantity;

/** A heat loss for each degree of difference, in Btu/(h.degF). */
public record HeatLoss(double btuhPerDegF) implements Quantity, Comparable<HeatLoss> {

    public HeatLoss {
        btuhPerDegF = Quantity.finite(btuhPerDegF);
    }

    public static HeatLoss ofBtuhPerDegF(double btuhPerDegF) {
        return new HeatLoss(btuhPerDegF);
    }

    public double wattsPerKelvin() {
        return btuhPerDegF * 1055.05585262 / 3600 * 1.8;
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
