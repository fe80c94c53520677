package longrun.drawing;

import java.time.Month;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;

/** Twelve amounts as bars with their figures, January first; the greatest is filled. */
public final class MonthBars {

    private static final double STEP = 46;
    private static final double TALL = 90;
    private static final double TOP = 22;

    private MonthBars() {}

    /**
     * The bars as SVG, black on white.
     *
     * @param amounts twelve, none negative
     * @param description for those who do not see it
     */
    public static String svg(List<Double> amounts, String description) {
        if (amounts.size() != 12) {
            throw new IllegalArgumentException("a year has twelve months, not " + amounts.size());
        }
        double most = amounts.stream().mapToDouble(a -> a).max().orElse(0);
        SvgText out = new SvgText();
        out.open(
                "svg",
                "xmlns",
                "http://www.w3.org/2000/svg",
                "class",
                "schematic",
                "role",
                "img",
                "width",
                SvgText.n(12 * STEP),
                "height",
                SvgText.n(TOP + TALL + 22),
                "viewBox",
                "0 0 " + SvgText.n(12 * STEP) + " " + SvgText.n(TOP + TALL + 22));
        out.open("title").raw(SvgText.escaped(description)).close("title");
        out.raw("<style>").raw(Pens.css(Palette.PAPER)).raw("</style>");
        for (int m = 0; m < 12; m++) {
            double tall = most > 0 ? TALL * amounts.get(m) / most : 0;
            double x = m * STEP + 8;
            double y = TOP + TALL - tall;
            String pen = most > 0 && amounts.get(m) == most ? "pf" : "pn";
            out.path(
                    pen,
                    SvgText.line(
                                    new Point(x, TOP + TALL),
                                    new Point(x, y),
                                    new Point(x + STEP - 16, y),
                                    new Point(x + STEP - 16, TOP + TALL))
                            + "Z");
            double middle = x + (STEP - 16) / 2;
            out.words("", new Point(middle, y - 5), "middle", 0, String.format(Locale.ROOT, "%,.0f", amounts.get(m)));
            out.words(
                    "tq",
                    new Point(middle, TOP + TALL + 17),
                    "middle",
                    0,
                    Month.of(m + 1).getDisplayName(TextStyle.SHORT, Locale.ENGLISH));
        }
        out.path("pn", SvgText.line(new Point(0, TOP + TALL), new Point(12 * STEP, TOP + TALL)));
        return out + "</svg>";
    }
}
