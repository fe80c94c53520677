package longrun.drawing.plot;

/**
 * The float gauge alone.
 *
 * @param percent it reads; negative where it has not been read
 * @param refill the refill gauge, likewise
 */
public record GaugePicture(double percent, double refill) {

    /** The picture. */
    public String svg() {
        PlotSvg svg = new PlotSvg(168, 168, "The gauge");
        svg.title(
                percent < 0
                        ? "The gauge, not read yet."
                        : "Gauge at " + PlotSvg.number(percent) + " %"
                                + (refill < 0 ? "." : ", refill mark at " + PlotSvg.number(refill) + " %."));
        new GaugeDial(84, 84).draw(svg, percent, refill, "");
        return svg.end();
    }
}
