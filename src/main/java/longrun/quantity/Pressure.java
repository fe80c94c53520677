package longrun.quantity;

/**
 * A gauge pressure or pressure drop. It keeps the figure it was made from, in pounds per square inch or inches of water,
 * so that neither is rounded by the other; 27.7 in. w.c. = 1 psi (2018 IFGC 402.4).
 */
public final class Pressure implements Quantity, Comparable<Pressure> {

    /** Inches of water column in one psi as the fuel gas code counts them (2018 IFGC 402.4). */
    public static final double IN_WC_PER_PSI = 27.7;

    public static final Pressure ZERO = new Pressure(0, 0);

    /** How far a stage may be from a table's pressure and still be read in it; rounding of one unit to another. */
    private static final double TABLE_SHARE = 0.001;

    private final double psi;
    private final double inWc;

    private Pressure(double psi, double inWc) {
        this.psi = Quantity.finite(psi);
        this.inWc = Quantity.finite(inWc);
    }

    public static Pressure ofPsi(double psi) {
        return new Pressure(psi, psi * IN_WC_PER_PSI);
    }

    public static Pressure ofInWc(double inWc) {
        return new Pressure(inWc / IN_WC_PER_PSI, inWc);
    }

    public double psi() {
        return psi;
    }

    public double inWc() {
        return inWc;
    }

    public Pressure minus(Pressure other) {
        return new Pressure(psi - other.psi, inWc - other.inWc);
    }

    /** A pressure that is used up is none. */
    public Pressure orNone() {
        return inWc < 0 ? ZERO : this;
    }

    /** Equal to within a ten-thousandth of an inch of water column, which no gauge shows. */
    public boolean same(Pressure other) {
        return Math.abs(inWc - other.inWc) < 1e-4;
    }

    /** Within a thousandth of a table's own pressure: 2.738 kPa reads the table of 11 in. w.c. */
    public boolean fits(Pressure table) {
        return Math.abs(psi - table.psi) <= TABLE_SHARE * Math.abs(table.psi) * (1 + 1e-9);
    }

    /** No more than another, or within the thousandth by which tables are matched. */
    public boolean fitsUpTo(Pressure greatest) {
        return psi <= greatest.psi || fits(greatest);
    }

    @Override
    public double canonical() {
        return psi;
    }

    @Override
    public int compareTo(Pressure other) {
        return Double.compare(psi, other.psi);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Pressure p && Double.compare(psi, p.psi) == 0;
    }

    @Override
    public int hashCode() {
        return Double.hashCode(psi);
    }

    @Override
    public String toString() {
        return "Pressure[psi=" + psi + "]";
    }
}
