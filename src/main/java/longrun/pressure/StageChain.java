package longrun.pressure;

import java.util.Arrays;
import longrun.piping.Piping;
import longrun.piping.Stage;
import longrun.quantity.HeatRate;
import longrun.quantity.Pressure;
import longrun.sizing.Sizing;

/**
 * Pressure along every run of every stage, worked from each regulator outwards with everything firing. In the high
 * pressure equation each section begins where the one before ends, so that a run of one bore loses the same however it
 * is cut up. NaN is unknown; 0 is a pressure used up.
 */
final class StageChain {

    final SectionFlow[] flow;
    final double[] dropInWc;
    final double[] endInWc;
    final double[] droopedEndInWc;
    private final Piping piping;

    StageChain(Sizing sizing) {
        this.piping = sizing.piping();
        int n = piping.sectionCount();
        flow = new SectionFlow[n];
        for (int s = 0; s < n; s++) {
            flow[s] = SectionFlow.of(sizing, s);
        }
        dropInWc = unknown(n);
        endInWc = unknown(n);
        droopedEndInWc = unknown(n);
    }

    private static double[] unknown(int n) {
        double[] out = new double[n];
        Arrays.fill(out, Double.NaN);
        return out;
    }

    /** Works one stage from its setting and, less droop (NaN: not known), from what the regulator gives at its load. */
    void run(Stage stage, Pressure setting, double droopInWc) {
        for (int s : stage.sections()) {
            double load = loadBtuh(s);
            double start = start(s, setting.inWc(), endInWc);
            dropInWc[s] = flow[s].dropInWc(setting, start, load);
            endInWc[s] = after(start, dropInWc[s]);
            double drooped = start(s, Math.max(0, setting.inWc() - droopInWc), droopedEndInWc);
            droopedEndInWc[s] = after(drooped, flow[s].dropInWc(setting, drooped, load));
        }
    }

    private double start(int section, double atRegulator, double[] ends) {
        int parent = piping.parent(section);
        return parent < 0 ? atRegulator : ends[parent];
    }

    static double after(double start, double drop) {
        return Double.isNaN(start) || Double.isNaN(drop) ? Double.NaN : Math.max(0, start - drop);
    }

    private double loadBtuh(int section) {
        return piping.load(section).whole().map(HeatRate::btuh).orElse(Double.NaN);
    }
}
