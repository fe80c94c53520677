package longrun.hotwater.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * A day cut where a draw begins or ends. Draws at once are one draw at their summed flow and its mean use temperature.
 *
 * @param slices of steady flow, none or some, from midnight to midnight
 */
public record DrawDay(List<Slice> slices) {

    /** Minutes of a day. */
    public static final double DAY = 1440;

    /**
     * Steady flow for a while.
     *
     * @param draws places of the draws at work, in the list they came from
     */
    public record Slice(double startMin, double minutes, double gpm, double useF, List<Integer> draws) {}

    public DrawDay {
        slices = List.copyOf(slices);
    }

    /** A day of draws; what goes on past midnight comes at the day's beginning. */
    public static DrawDay of(List<Draw> draws) {
        List<double[]> pieces = new ArrayList<>();
        TreeSet<Double> cuts = new TreeSet<>(List.of(0.0, DAY));
        for (int i = 0; i < draws.size(); i++) {
            Draw d = draws.get(i);
            double end = d.startMin() + d.minutes();
            add(pieces, cuts, d.startMin(), Math.min(DAY, end), i);
            if (end > DAY) {
                add(pieces, cuts, 0, end - DAY, i);
            }
        }
        List<Slice> out = new ArrayList<>();
        double from = 0;
        for (double to : cuts.tailSet(0.0, false)) {
            out.add(slice(draws, pieces, from, to));
            from = to;
        }
        return new DrawDay(out);
    }

    private static void add(List<double[]> pieces, TreeSet<Double> cuts, double from, double to, int draw) {
        if (to > from) {
            pieces.add(new double[] {from, to, draw});
            cuts.add(from);
            cuts.add(to);
        }
    }

    private static Slice slice(List<Draw> draws, List<double[]> pieces, double from, double to) {
        List<Integer> at = new ArrayList<>();
        double gpm = 0;
        double warm = 0;
        for (double[] p : pieces) {
            if (p[0] <= from && p[1] >= to) {
                Draw d = draws.get((int) p[2]);
                at.add((int) p[2]);
                gpm += d.gpm();
                warm += d.gpm() * d.useF();
            }
        }
        return new Slice(from, to - from, gpm, gpm > 0 ? warm / gpm : 0, List.copyOf(at));
    }
}
