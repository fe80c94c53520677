package longrun.drawing.plot;

import java.util.List;
import longrun.drawing.svg.Plate;
import longrun.drawing.svg.Point;
import longrun.drawing.svg.SvgText;

/** Twelve amounts as bars, January first, to stand over the row of their figures; the greatest is filled. */
public final class MonthBars {

    private static final double TOP = 2;

    private MonthBars() {}

    /**
     * The bars as SVG, black on white, each in the middle of its twelfth of the width.
     *
     * @param amounts twelve, none negative
     * @param width of all twelve, pixels
     * @param tall of the greatest, pixels
     * @param description for those who do not see it
     */
    public static String svg(List<Double> amounts, double width, double tall, String description) {
        if (amounts.size() != 12) {
            throw new IllegalArgumentException("a year has twelve months, not " + amounts.size());
        }
        double step = width / 12;
        double most = amounts.stream().mapToDouble(a -> a).max().orElse(0);
        double foot = TOP + tall;
        SvgText out = Plate.open(width, foot + 2, description);
        for (int m = 0; m < 12; m++) {
            double height = most > 0 ? tall * amounts.get(m) / most : 0;
            double left = m * step + step * 0.27;
            double right = (m + 1) * step - step * 0.27;
            String pen = most > 0 && amounts.get(m) == most ? "pf" : "pt";
            out.path(
                    pen,
                    SvgText.line(
                                    new Point(left, foot),
                                    new Point(left, foot - height),
                                    new Point(right, foot - height),
                                    new Point(right, foot))
                            + "Z");
        }
        out.path("pn", SvgText.line(new Point(0, foot), new Point(width, foot)));
        return out + "</svg>";
    }
}
