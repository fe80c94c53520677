package longrun.drawing.plot;

import java.time.LocalDate;

/**
 * The days between which the refill gauge may be reached, the day worked out, and the day to call by.
 *
 * @param low the first day of the range
 * @param day the day worked out
 * @param high the last
 */
public record FillDateBar(LocalDate low, LocalDate day, LocalDate high, LocalDate callBy) {

    private static final double FROM = 8;
    private static final double TO = 312;
    private static final double Y = 22;

    /** The picture; its scale holds the day to call by as well. */
    public String svg() {
        PlotSvg svg = new PlotSvg(320, 56, "Days of the refill");
        svg.title("Refill between " + LevelPlot.day(low) + " and " + LevelPlot.day(high) + ", " + LevelPlot.day(day)
                + " as worked out; call by " + LevelPlot.day(callBy) + ".");
        svg.line(FROM, Y, TO, Y, PlotSvg.LEADER, PlotSvg.Ink.QUIET, "");
        if (high.isAfter(low)) {
            svg.line(x(low), Y, x(high), Y, 6, PlotSvg.Ink.INK, "");
            svg.line(x(low), Y - 8, x(low), Y + 8, PlotSvg.PART, PlotSvg.Ink.INK, "");
            svg.line(x(high), Y - 8, x(high), Y + 8, PlotSvg.PART, PlotSvg.Ink.INK, "");
        }
        svg.circle(x(day), Y, 7, PlotSvg.Ink.INK, true);
        double middle = Math.max(24, Math.min(296, x(day)));
        svg.words(middle, 50, "middle", PlotSvg.Ink.INK, 14, true, LevelPlot.day(day));
        end(svg, low, middle);
        end(svg, high, middle);
        double x = x(callBy);
        svg.shape(new double[] {x - 6, x + 6, x}, new double[] {Y - 12, Y - 12, Y - 1}, PlotSvg.Ink.ACCENT, true);
        boolean late = x > 180;
        svg.words(
                late ? x - 10 : x + 10,
                11,
                late ? "end" : "start",
                PlotSvg.Ink.ACCENT,
                14,
                true,
                "call by " + LevelPlot.day(callBy));
        return svg.end();
    }

    private void end(PlotSvg svg, LocalDate date, double middle) {
        double x = Math.max(22, Math.min(298, x(date)));
        if (Math.abs(x - middle) > 56) {
            svg.text(x, 50, "middle", PlotSvg.Ink.QUIET, LevelPlot.day(date));
        }
    }

    private double x(LocalDate date) {
        LocalDate first = callBy.isBefore(low) ? callBy : low;
        double span = Math.max(1, high.toEpochDay() - first.toEpochDay());
        double margin = 30;
        return FROM + margin + (TO - FROM - 2 * margin) * (date.toEpochDay() - first.toEpochDay()) / span;
    }
}
