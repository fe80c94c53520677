package longrun.tank;

import java.util.Comparator;
import java.util.List;
import longrun.origin.DataFile;
import longrun.origin.DataRow;

/**
 * The trade's rule for vapour: Q = D x L x K(fill) x M(air). K runs through its published points by the wetted share of the
 * shell (the same heat through each square foot of wetted steel), straight between them and through zero; M is
 * (T + 20) / 20, never below 0 and held at 2 above 20 degF, which is then a floor.
 */
public final class VapourRule {

    /** Temperature of the liquid that the rule assumes, degF, and the air at which it gives nothing. */
    public static final double LIQUID_F = -20;
    /** The least tank pressure where none is entered, psig: liquid at -20 degF, the rule's own basis. */
    public static final double LEAST_PSIG = 10.7;

    private static final double HELD_M = 2;
    private static final int MOST_STEPS = 200;
    /** Newton's method squares what it is off: a step this small leaves less than a double can tell. */
    private static final double CLOSE = 1e-9;
    /** Wetted shares of fills an equal step apart, to begin near the answer: asked for at each step of a tank's cooling. */
    private static final double[] NEAR = near(512);

    private static final List<DataRow> POINTS = DataFile.read("tanks/vaporisation-factors.csv").rows().stream()
            .filter(r -> r.text("kind").equals("K"))
            .sorted(Comparator.comparingDouble(r -> r.number("key")))
            .toList();
    private static final double[] K =
            POINTS.stream().mapToDouble(r -> r.number("value")).toArray();
    private static final double[] WETTED =
            POINTS.stream().mapToDouble(r -> wettedShare(r.number("key") / 100)).toArray();

    private VapourRule() {}

    /**
     * Share of a horizontal round shell's circumference under the liquid: w of (2 pi w - sin 2 pi w) / 2 pi = fill.
     *
     * @param fill share of the water capacity
     */
    public static double wettedShare(double fill) {
        if (fill <= 0) {
            return 0;
        }
        if (fill >= 1) {
            return 1;
        }
        int i = (int) (fill * (NEAR.length - 1));
        double beyond = fill * (NEAR.length - 1) - i;
        return wettedShare(fill, NEAR[i] + beyond * (NEAR[i + 1] - NEAR[i]));
    }

    private static double[] near(int steps) {
        double[] out = new double[steps + 1];
        for (int i = 1; i < steps; i++) {
            out[i] = wettedShare((double) i / steps, 0.5);
        }
        out[steps] = 1;
        return out;
    }

    /** By Newton's method, halved where it would leave the bounds. */
    private static double wettedShare(double fill, double start) {
        double low = 0;
        double high = 1;
        double w = start;
        for (int i = 0; i < MOST_STEPS; i++) {
            double over = w - Math.sin(2 * Math.PI * w) / (2 * Math.PI) - fill;
            if (over == 0) {
                return w;
            }
            if (over < 0) {
                low = w;
            } else {
                high = w;
            }
            double next = w - over / (1 - Math.cos(2 * Math.PI * w));
            if (!(next > low && next < high)) {
                next = (low + high) / 2;
            }
            if (Math.abs(next - w) < CLOSE) {
                return next;
            }
            w = next;
        }
        return w;
    }

    /** K by the wetted share of the shell. */
    public static double k(double wetted) {
        int last = K.length - 1;
        if (wetted <= WETTED[0]) {
            return K[0] * Math.max(0, wetted) / WETTED[0];
        }
        if (wetted >= WETTED[last]) {
            return K[last] * wetted / WETTED[last];
        }
        int i = 1;
        while (wetted > WETTED[i]) {
            i++;
        }
        return K[i - 1] + (wetted - WETTED[i - 1]) * (K[i] - K[i - 1]) / (WETTED[i] - WETTED[i - 1]);
    }

    /** M by the air's temperature. */
    public static double m(double airF) {
        return Math.max(0, Math.min(HELD_M, (airF - LIQUID_F) / 20));
    }

    /** The rule, Btu/h, for a shell of D by L inches. */
    public static double btuh(double diameterIn, double lengthIn, double wetted, double airF) {
        return diameterIn * lengthIn * k(wetted) * m(airF);
    }

    /**
     * The rule's figure where the tank must keep another pressure: the heat goes with air less liquid, and the liquid is
     * then as warm as that pressure asks. Never more than the rule.
     *
     * @param liquidF temperature of the liquid at the least tank pressure
     */
    public static double atLiquid(double rule, double airF, double liquidF) {
        if (airF <= LIQUID_F || airF <= liquidF) {
            return 0;
        }
        return Math.max(0, Math.min(rule, rule * (airF - liquidF) / (airF - LIQUID_F)));
    }
}
