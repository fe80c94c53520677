package longrun.drawing.plot;

/** The float gauge on a tank's head: a half circle of figures, a hand, and a mark at the refill gauge. */
final class GaugeDial {

    private static final double R = 72;
    private static final double SWEEP = 3.5; // radians, from 5 to 95 %

    private final double cx;
    private final double cy;

    GaugeDial(double cx, double cy) {
        this.cx = cx;
        this.cy = cy;
    }

    private static double angle(double percent) {
        double in = Math.max(3, Math.min(97, percent));
        return (in - 50) / 45 * SWEEP / 2;
    }

    private double x(double percent, double r) {
        return cx + r * Math.sin(angle(percent));
    }

    private double y(double percent, double r) {
        return cy - r * Math.cos(angle(percent));
    }

    private void spoke(PlotSvg svg, double percent, double from, double to, double width, PlotSvg.Ink ink) {
        svg.line(x(percent, from), y(percent, from), x(percent, to), y(percent, to), width, ink, "");
    }

    /**
     * Draws it.
     *
     * @param gauge reading in percent; a negative one is unknown, and no hand is drawn
     * @param refill the refill gauge, likewise
     */
    void draw(PlotSvg svg, double gauge, double refill, String under) {
        svg.circle(cx, cy, R, PlotSvg.Ink.INK, false);
        for (int p = 5; p <= 95; p += 5) {
            spoke(svg, p, p % 10 == 0 ? R - 32 : R - 28, R - 24, PlotSvg.PART, PlotSvg.Ink.INK);
            if (p % 10 == 0) {
                svg.text(x(p, R - 11), y(p, R - 11) + 5, "middle", PlotSvg.Ink.QUIET, String.valueOf(p));
            }
        }
        if (refill >= 0) {
            spoke(svg, refill, R + 1, R + 11, PlotSvg.PIPE, PlotSvg.Ink.INK);
        }
        if (gauge >= 0) {
            spoke(svg, gauge, -8, R - 28, 3, PlotSvg.Ink.ACCENT);
            svg.circle(cx, cy, 4.5, PlotSvg.Ink.ACCENT, true);
            svg.words(cx, cy + 44, "middle", PlotSvg.Ink.ACCENT, 20, true, PlotSvg.number(gauge) + " %");
        } else {
            svg.words(cx, cy + 44, "middle", PlotSvg.Ink.QUIET, 14, false, "not read");
        }
        svg.text(cx, cy + R + 24, "middle", PlotSvg.Ink.QUIET, under);
    }
}
