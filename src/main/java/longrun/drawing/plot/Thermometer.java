package longrun.drawing.plot;

/** A thermometer lying under a plot as its axis, -50 to 60 degF. */
final class Thermometer {

    static final double COLDEST = -50;
    static final double WARMEST = 60;
    private static final double TUBE = 5.5;

    private final double left;
    private final double right;
    private final double top;

    /** @param top height of the plot's floor, the ticks hang from it */
    Thermometer(double left, double right, double top) {
        this.left = left;
        this.right = right;
        this.top = top;
    }

    double x(double airF) {
        double in = Math.max(COLDEST, Math.min(WARMEST, airF));
        return left + (right - left) * (in - COLDEST) / (WARMEST - COLDEST);
    }

    /** Ticks every 5 degF, figures every 10, and the empty tube. */
    void scale(PlotSvg svg) {
        for (int f = (int) COLDEST; f <= WARMEST; f += 5) {
            svg.line(x(f), top, x(f), top + (f % 10 == 0 ? 7 : 4), PlotSvg.LEADER, PlotSvg.Ink.QUIET, "");
            if (f % 10 == 0) {
                svg.text(x(f), top + 22, "middle", PlotSvg.Ink.QUIET, degrees(f));
            }
        }
        double y = top + 38;
        double[] px = new double[15];
        double[] py = new double[15];
        for (int i = 0; i <= 12; i++) {
            double a = Math.PI * i / 12;
            px[i] = right + TUBE * Math.sin(a);
            py[i] = y - TUBE * Math.cos(a);
        }
        px[13] = left - 12;
        py[13] = y + TUBE;
        px[14] = left - 12;
        py[14] = y - TUBE;
        svg.shape(px, py, PlotSvg.Ink.INK, false);
        svg.circle(left - 17, y, 11, PlotSvg.Ink.INK, false);
        svg.circle(left - 17, y, 6, PlotSvg.Ink.INK, true);
        svg.text(right + 14, y + 5, "start", PlotSvg.Ink.QUIET, "air, \u00b0F");
    }

    /** The thread of mercury up to a temperature. */
    void mercury(PlotSvg svg, double airF) {
        svg.line(left - 14, top + 38, x(airF), top + 38, 5, PlotSvg.Ink.INK, "");
    }

    /** A mark at a temperature, named under the tube. */
    void mark(PlotSvg svg, double airF, String words) {
        double x = x(airF);
        double y = top + 38;
        svg.line(x, y - 10, x, y + 10, 2.5, PlotSvg.Ink.ACCENT, "");
        svg.shape(new double[] {x, x - 7, x + 7}, new double[] {y + 12, y + 23, y + 23}, PlotSvg.Ink.ACCENT, true);
        boolean late = x > (left + right) / 2;
        svg.words(
                late ? x - 12 : x + 12,
                y + 25,
                late ? "end" : "start",
                PlotSvg.Ink.ACCENT,
                14,
                true,
                degrees(airF) + " \u00b0F  " + words);
    }

    /** A true minus sign, and no needless decimals. */
    static String degrees(double f) {
        double rounded = Math.round(f * 10) / 10.0;
        String size = PlotSvg.number(Math.abs(rounded));
        return rounded < 0 ? "\u2212" + size : size;
    }
}
