package longrun.drawing.plot;

import java.util.Locale;
import java.util.OptionalDouble;
import longrun.drawing.svg.Plate;
import longrun.drawing.svg.Point;
import longrun.drawing.svg.SvgText;

/**
 * The two figures for a tank's vapour on one bar, and where what is asked of it lies: filled up to what it keeps up, open
 * up to the most it gives for a short time.
 */
public final class VapourBar {

    private static final double WIDTH = 336;
    private static final double TOP = 32;
    private static final double HIGH = 10;

    private VapourBar() {}

    /**
     * The bar as SVG, black on white.
     *
     * @param plannedBtuh what the tank keeps up; not over the most
     * @param mostBtuh the most for a short time; above zero
     * @param kept the pressure it keeps up meanwhile, in words
     * @param askedBtuh everything firing, where known
     * @param meanBtuh the mean of the coldest day, where known
     */
    public static String svg(
            double plannedBtuh, double mostBtuh, String kept, OptionalDouble askedBtuh, OptionalDouble meanBtuh) {
        double scale = 0.92 * WIDTH / Math.max(mostBtuh, askedBtuh.orElse(0));
        double planned = plannedBtuh * scale;
        double most = mostBtuh * scale;
        SvgText out = Plate.open(
                WIDTH,
                TOP + HIGH + 48,
                "Vapour on one bar: " + whole(plannedBtuh) + " Btu/h while the tank keeps " + kept + ", "
                        + whole(mostBtuh) + " at most for a short time"
                        + (askedBtuh.isPresent() ? "; asked, all firing, " + whole(askedBtuh.getAsDouble()) : "")
                        + (meanBtuh.isPresent() ? "; the coldest day's mean " + whole(meanBtuh.getAsDouble()) : ""));
        out.words("big", new Point(0, 13), "start", 0, whole(plannedBtuh));
        out.words("k", new Point(0, 26), "start", 0, "while it keeps " + kept);
        out.words("big", new Point(WIDTH, 13), "end", 0, whole(mostBtuh));
        out.words("k", new Point(WIDTH, 26), "end", 0, "at most, for a short time");
        out.path("pt", box(0, most));
        out.path("bar", box(0, planned));
        askedBtuh.ifPresent(a -> mark(out, a * scale, 20, "asked, all firing " + whole(a), "v"));
        meanBtuh.ifPresent(m -> mark(out, m * scale, 36, "coldest day\u2019s mean " + whole(m), "k"));
        return out + "</svg>";
    }

    private static void mark(SvgText out, double x, double down, String words, String pen) {
        double foot = TOP + HIGH + down;
        out.path(
                pen.equals("v") ? "pn thick" : "ld",
                SvgText.line(new Point(x, TOP - 3), new Point(x, pen.equals("v") ? foot - 11 : foot - 3)));
        boolean right = x > WIDTH / 2;
        out.words(pen, new Point(x + (right ? -5 : 5), foot), right ? "end" : "start", 0, words);
    }

    private static String box(double from, double to) {
        return SvgText.line(
                        new Point(from, TOP),
                        new Point(to, TOP),
                        new Point(to, TOP + HIGH),
                        new Point(from, TOP + HIGH))
                + "Z";
    }

    /** To whole hundreds from ten thousand on, since a figure that is worked out is no more exact. */
    private static String whole(double btuh) {
        return String.format(Locale.ROOT, "%,.0f", btuh >= 10_000 ? Math.round(btuh / 100) * 100.0 : btuh);
    }
}
