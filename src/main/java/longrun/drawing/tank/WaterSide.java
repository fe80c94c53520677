package longrun.drawing.tank;

import longrun.drawing.plot.PlotSvg;
import longrun.plan.choice.Arrangement;

/**
 * The water side of the house as a schematic: cold main, storage heater, on-demand heater, mixing valve last, fixtures, with
 * each valve as it stands in an arrangement; the way the hot water takes is in the accent.
 *
 * @param storage what stands in the storage heater, such as "set 140 degF"
 * @param onDemand what stands in the on-demand heater
 * @param mixing what the mixing valve is set to
 * @param cold of the cold main
 */
public record WaterSide(Arrangement arrangement, String storage, String onDemand, String mixing, String cold) {

    private static final double WIDTH = 820;
    private static final double HEIGHT = 320;
    private static final double[][] AT = {{64, 254}, {236, 46}, {335, 230}, {390, 82}, {590, 98}, {490, 46}, {690, 246}
    };
    private static final boolean[] LYING = {false, true, false, false, false, true, false};
    private static final boolean[] NAMED_LEFT = {false, false, true, false, false, false, true};

    /** The picture. */
    public String svg() {
        PlotSvg svg = new PlotSvg(WIDTH, HEIGHT, "Water side, " + arrangement.label());
        svg.title("Water side, " + arrangement.label()
                + ": cold main, storage heater, on-demand heater, mixing valve last, fixtures."
                + " Valves " + WaterValves.words(arrangement)
                + "; 7 open in any position; both relief valves never closed.");
        pipes(svg);
        heaters(svg);
        relief(svg, 222, 122, 1, "relief", 268);
        relief(svg, 514, 178, 1, "relief", 562);
        mixing(svg);
        for (int v = 1; v <= WaterValves.COUNT; v++) {
            valve(svg, v);
        }
        fixtures(svg);
        return svg.end();
    }

    private void pipes(PlotSvg svg) {
        pipe(svg, false, 8, 290, 788, 290, 788, 256);
        pipe(svg, false, 690, 290, 690, 202);
        boolean storage = arrangement != Arrangement.ON_DEMAND_ONLY;
        boolean burner = arrangement != Arrangement.STORAGE_ONLY;
        pipe(svg, !storage, 335, 290, 335, 46);
        pipe(svg, false, 64, 290, 64, 218, 130, 218);
        pipe(svg, storage, 176, 102, 176, 46, 335, 46);
        pipe(svg, true, 335, 46, 390, 46);
        pipe(svg, burner, 390, 46, 390, 218, 422, 218);
        pipe(svg, burner, 514, 150, 590, 150, 590, 46);
        pipe(svg, !burner, 390, 46, 590, 46);
        pipe(svg, true, 590, 46, 690, 46, 690, 158);
        pipe(svg, true, 712, 180, 788, 180, 788, 66, 770, 66);
        for (double[] joint : new double[][] {{64, 290}, {335, 290}, {690, 290}, {335, 46}, {390, 46}, {590, 46}}) {
            svg.circle(joint[0], joint[1], 3.5, PlotSvg.Ink.INK, true);
        }
        svg.text(10, 312, "start", PlotSvg.Ink.QUIET, cold);
    }

    private static void pipe(PlotSvg svg, boolean hot, double... at) {
        double[] x = new double[at.length / 2];
        double[] y = new double[at.length / 2];
        for (int i = 0; i < x.length; i++) {
            x[i] = at[2 * i];
            y[i] = at[2 * i + 1];
        }
        svg.path(x, y, hot ? PlotSvg.PIPE : PlotSvg.PART, hot ? PlotSvg.Ink.ACCENT : PlotSvg.Ink.INK, "");
    }

    private void heaters(PlotSvg svg) {
        svg.shape(new double[] {130, 222, 222, 130}, new double[] {102, 102, 240, 240}, PlotSvg.Ink.INK, false);
        svg.words(176, 160, "middle", PlotSvg.Ink.INK, 14, true, "storage");
        svg.text(176, 184, "middle", PlotSvg.Ink.INK, storage);
        svg.shape(new double[] {422, 514, 514, 422}, new double[] {114, 114, 240, 240}, PlotSvg.Ink.INK, false);
        svg.words(468, 160, "middle", PlotSvg.Ink.INK, 14, true, "on-demand");
        svg.text(468, 184, "middle", PlotSvg.Ink.INK, onDemand);
        for (int i = 0; i < 5; i++) {
            double x = 446 + 11 * i;
            svg.shape(new double[] {x - 4, x, x + 4}, new double[] {232, 218, 232}, PlotSvg.Ink.INK, false);
        }
    }

    /** A relief valve on its heater: nothing stands between. */
    private static void relief(PlotSvg svg, double x, double y, int way, String name, double words) {
        svg.line(x, y, x + 14 * way, y, PlotSvg.PART, PlotSvg.Ink.INK, "");
        svg.shape(
                new double[] {x + 14 * way, x + 14 * way, x + 27 * way},
                new double[] {y - 7, y + 7, y},
                PlotSvg.Ink.INK,
                false);
        svg.shape(
                new double[] {x + 27 * way, x + 20 * way, x + 34 * way},
                new double[] {y, y + 13, y + 13},
                PlotSvg.Ink.INK,
                false);
        svg.line(x + 27 * way, y, x + 27 * way, y - 14, PlotSvg.PART, PlotSvg.Ink.INK, "");
        svg.words(words, y, "start", PlotSvg.Ink.INK, 16, true, name);
        svg.words(words, y + 18, "start", PlotSvg.Ink.INK, 14, true, "never");
        svg.words(words, y + 35, "start", PlotSvg.Ink.INK, 14, true, "closed");
    }

    private void mixing(PlotSvg svg) {
        svg.circle(690, 180, 22, PlotSvg.Ink.INK, false);
        svg.shape(new double[] {690, 682, 698}, new double[] {162, 175, 175}, PlotSvg.Ink.INK, false);
        svg.shape(new double[] {690, 682, 698}, new double[] {198, 185, 185}, PlotSvg.Ink.INK, false);
        svg.shape(new double[] {698, 708, 698}, new double[] {172, 180, 188}, PlotSvg.Ink.INK, false);
        svg.words(704, 106, "start", PlotSvg.Ink.INK, 14, true, "mixing");
        svg.words(704, 123, "start", PlotSvg.Ink.INK, 14, true, "valve, last");
        svg.words(704, 142, "start", PlotSvg.Ink.INK, 14, false, mixing);
    }

    private void valve(PlotSvg svg, int number) {
        double x = AT[number - 1][0];
        double y = AT[number - 1][1];
        boolean open = WaterValves.isOpen(arrangement, number);
        boolean lying = LYING[number - 1];
        double wide = lying ? 12 : 9;
        double high = lying ? 9 : 12;
        svg.shape(
                lying
                        ? new double[] {x - wide, x - wide, x + wide, x + wide}
                        : new double[] {x - wide, x + wide, x - wide, x + wide},
                lying
                        ? new double[] {y - high, y + high, y - high, y + high}
                        : new double[] {y - high, y - high, y + high, y + high},
                PlotSvg.Ink.INK,
                !open);
        boolean left = NAMED_LEFT[number - 1];
        double words = lying ? x + 16 : left ? x - 18 : x + 20;
        double line = lying ? y - 16 : y + 5;
        String anchor = left && !lying ? "end" : "start";
        svg.words(
                words,
                line,
                anchor,
                PlotSvg.Ink.INK,
                14,
                !open,
                number + (open ? " open" : " closed") + (number == WaterValves.COUNT ? ", always" : ""));
    }

    private static void fixtures(PlotSvg svg) {
        svg.shape(new double[] {762, 774, 779, 757}, new double[] {66, 66, 75, 75}, PlotSvg.Ink.INK, false);
        for (int i = -1; i <= 1; i++) {
            svg.line(768 + 7 * i, 80, 768 + 10 * i, 90, PlotSvg.LEADER, PlotSvg.Ink.QUIET, "");
        }
        svg.text(812, 50, "end", PlotSvg.Ink.QUIET, "showers");
        svg.shape(
                new double[] {764, 812, 806, 798, 778, 770},
                new double[] {226, 226, 244, 254, 254, 244},
                PlotSvg.Ink.INK,
                false);
        svg.text(760, 244, "end", PlotSvg.Ink.QUIET, "basin");
    }
}
