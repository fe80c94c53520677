package longrun.draft.run;

import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import longrun.quantity.NumberText;

/** A drawing of the end of the pipe, at true size as far as it fits. Nothing is sized by it. */
public final class PipeEnd {

    private static final double PIXELS_PER_INCH = 96; // a CSS inch
    private static final double ROOM = 50.4;

    /** Outside diameters of steel pipe in inches, from memory of ASME B36.10M; drawn only. */
    private static final Map<String, Double> STEEL_OUTSIDE = Map.of(
            "1/2", 0.840, "3/4", 1.050, "1", 1.315, "1-1/4", 1.660, "1-1/2", 1.900, "2", 2.375, "2-1/2", 2.875, "3",
            3.500, "4", 4.500);

    private PipeEnd() {}

    /** The outside diameter, inches; empty where neither the size's name nor a standard gives it. */
    public static OptionalDouble outside(Pipe pipe, RunAnswer.Sized cell) {
        if (pipe == Pipe.STEEL && STEEL_OUTSIDE.containsKey(cell.size())) {
            return OptionalDouble.of(STEEL_OUTSIDE.get(cell.size()));
        }
        return cell.od().isPresent()
                ? OptionalDouble.of(NumberText.read(cell.od().get()))
                : OptionalDouble.empty();
    }

    /** The drawing as SVG. */
    public static String of(double boreInches, OptionalDouble outsideInches) {
        double outer = outsideInches.orElse(boreInches) * PIXELS_PER_INCH / 2;
        double scale = Math.min(1, ROOM / outer);
        double r = boreInches * PIXELS_PER_INCH / 2 * scale;
        String bore = String.format(Locale.ROOT, "%.3f", boreInches);
        String size = scale == 1 ? "true size" : "not to scale";
        StringBuilder svg = new StringBuilder("<svg class='pipe-end' width='104' height='104' viewBox='-52 "
                + (r >= 30 ? -52 : -42) + " 104 104' role='img'" + " aria-label='The end of the pipe, " + size
                + ": bore " + bore + " in.'>");
        if (outsideInches.isPresent()) {
            svg.append(
                            "<defs><pattern id='wall' width='6' height='6' patternUnits='userSpaceOnUse' patternTransform='rotate(45)'>"
                                    + "<path d='M0 0V6' style='stroke:var(--ink);stroke-width:1.5'/></pattern></defs>")
                    .append("<path fill-rule='evenodd' fill='url(#wall)' d='")
                    .append(ring(outer * scale))
                    .append(ring(r))
                    .append("'/>")
                    .append(circle(outer * scale));
        }
        svg.append(circle(r));
        double x = r;
        String end = text(x);
        svg.append("<path class='ld' d='M-" + end + " 0H" + end + "M-" + end + " 0l7 -2.6v5.2zM" + end
                + " 0l-7 -2.6v5.2z' style='fill:var(--quiet)'/>");
        if (r >= 30) {
            svg.append("<text y='-8' text-anchor='middle' class='ts'>" + bore
                    + "</text><text y='18' text-anchor='middle' class='tq'>in. bore</text>");
        } else {
            svg.append("<text y='58' text-anchor='middle' class='tq'>" + bore + " in. bore</text>");
        }
        return svg.append("</svg>").toString();
    }

    private static String ring(double r) {
        String t = text(r);
        String d = text(2 * r);
        return "M-" + t + " 0a" + t + " " + t + " 0 1 0 " + d + " 0a" + t + " " + t + " 0 1 0 -" + d + " 0z";
    }

    private static String circle(double r) {
        return "<circle r='" + text(r) + "' class='pn'/>";
    }

    private static String text(double v) {
        return String.format(Locale.ROOT, "%.2f", v);
    }
}
