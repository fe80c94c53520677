package longrun.drawing.plot;

import longrun.quantity.Show;

/**
 * What the tank gives on the coldest morning against what everything firing asks for.
 *
 * @param planned Btu/h, the figure to plan with
 * @param most Btu/h, the most for a short time
 * @param need Btu/h
 * @param kept what the figure to plan with is called
 */
public record MorningBar(double planned, double most, double need, String kept) {

    /** The picture, in thousands of Btu/h as the rule is no finer. */
    public String svg() {
        double scale = 300 / Math.max(1, Math.max(need, Math.max(planned, most)));
        PlotSvg svg = new PlotSvg(320, 62, "Vapour on the coldest morning");
        svg.title("Vapour " + words(planned) + " Btu/h " + kept + ", " + words(most) + " at the most, need "
                + words(need) + ".");
        double y = 27;
        double end = Math.max(planned, most) * scale;
        svg.line(0, y, Math.max(end, need * scale), y, PlotSvg.LEADER, PlotSvg.Ink.QUIET, "");
        svg.line(0, y, end, y, PlotSvg.PIPE, PlotSvg.Ink.INK, "");
        svg.line(0, y, planned * scale, y, 6, PlotSvg.Ink.INK, "");
        svg.line(end, y - 8, end, y + 8, PlotSvg.PART, PlotSvg.Ink.INK, "");
        double at = need * scale;
        svg.line(at, y - 9, at, y + 14, PlotSvg.PIPE, PlotSvg.Ink.ACCENT, "");
        boolean late = end > 160;
        svg.text(late ? end : end + 6, 12, late ? "end" : "start", PlotSvg.Ink.QUIET, words(most) + " by the rule");
        boolean needLate = at > 170;
        svg.words(
                needLate ? Math.min(320, at + 20) : Math.max(0, at - 4),
                57,
                needLate ? "end" : "start",
                PlotSvg.Ink.ACCENT,
                14,
                true,
                "need " + words(need));
        return svg.end();
    }

    private static String words(double btuh) {
        return Show.whole(btuh >= 10_000 ? Math.round(btuh / 1000) * 1000.0 : btuh);
    }
}
