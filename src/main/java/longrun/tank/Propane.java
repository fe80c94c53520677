package longrun.tank;

import java.util.List;
import longrun.origin.DataFile;
import longrun.origin.DataRow;
import longrun.quantity.Elevation;

/**
 * Saturated propane, from a table of the reference equation of Lemmon, McLinden and Wagner (2009): ln p straight against
 * 1/T, the rest straight against T. Pressures are gauge: over the air's, which falls with height.
 */
public final class Propane {

    /** Pressure of the air at the sea, psia, which turns absolute pressure into gauge. */
    public static final double AIR_PSIA = 14.696;
    /** Heat in a pound of propane, Btu, of the same set as 2,488 Btu/ft3 (secondary). */
    public static final double BTU_PER_LB = 21_548;

    private static final double RANKINE = 459.67;
    private static final double COLDEST_F = -100;
    private static final double HOTTEST_F = 150;
    private static final List<DataRow> ROWS =
            DataFile.read("tanks/vapour-pressure.csv").rows();
    private static final double[] TEMP = column("temp_f");
    private static final double[] LN_PSIA = logs(column("psia"));
    private static final double[] DENSITY = column("density_lb_per_gal");
    private static final double[] LATENT = column("latent_btu_per_lb");
    private static final double[] VCF = column("vcf");

    private Propane() {}

    private static double[] column(String heading) {
        return ROWS.stream().mapToDouble(r -> r.number(heading)).toArray();
    }

    private static double[] logs(double[] psia) {
        double[] out = new double[psia.length];
        for (int i = 0; i < psia.length; i++) {
            out[i] = Math.log(psia[i]);
        }
        return out;
    }

    /**
     * Pressure of the air at a height, psia: 14.696 (1 - 6.8756e-6 h)^5.2559, h in ft (U.S. Standard Atmosphere, 1976; held
     * from memory).
     */
    public static double airPsia(Elevation elevation) {
        return AIR_PSIA * Math.pow(1 - 6.8756e-6 * elevation.feet(), 5.2559);
    }

    /** Pressure over the liquid at the sea, psig. */
    public static double psig(double degF) {
        int i = segment(degF);
        double share = (inverse(degF) - inverse(TEMP[i - 1])) / (inverse(TEMP[i]) - inverse(TEMP[i - 1]));
        return Math.exp(LN_PSIA[i - 1] + share * (LN_PSIA[i] - LN_PSIA[i - 1])) - AIR_PSIA;
    }

    /** Temperature of the liquid at a pressure at the sea, degF. */
    public static double degF(double psig) {
        return degF(psig, AIR_PSIA);
    }

    /**
     * Temperature of the liquid at a gauge pressure, degF; at 0 psig it boils in the open air.
     *
     * @param airPsia pressure of the air about the gauge
     */
    public static double degF(double psig, double airPsia) {
        double ln = Math.log(psig + airPsia);
        int i = 1;
        while (i < LN_PSIA.length - 1 && ln > LN_PSIA[i]) {
            i++;
        }
        double share = (ln - LN_PSIA[i - 1]) / (LN_PSIA[i] - LN_PSIA[i - 1]);
        double inverse = inverse(TEMP[i - 1]) + share * (inverse(TEMP[i]) - inverse(TEMP[i - 1]));
        return 1 / inverse - RANKINE;
    }

    /** Weight of the liquid, lb/gal. */
    public static double density(double degF) {
        return straight(DENSITY, degF);
    }

    /** Heat a pound of liquid takes up to become vapour, Btu/lb. */
    public static double latent(double degF) {
        return straight(LATENT, degF);
    }

    /** Gallons at 60 degF that one gallon at this temperature makes. */
    public static double volumeFactor(double degF) {
        return straight(VCF, degF);
    }

    private static double straight(double[] values, double degF) {
        double t = Math.max(COLDEST_F, Math.min(HOTTEST_F, degF));
        int i = segment(t);
        return values[i - 1] + (t - TEMP[i - 1]) * (values[i] - values[i - 1]) / (TEMP[i] - TEMP[i - 1]);
    }

    private static int segment(double degF) {
        int i = 1;
        while (i < TEMP.length - 1 && degF > TEMP[i]) {
            i++;
        }
        return i;
    }

    private static double inverse(double degF) {
        return 1 / (degF + RANKINE);
    }
}
