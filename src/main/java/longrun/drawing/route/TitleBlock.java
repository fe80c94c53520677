package longrun.drawing.route;

import java.util.List;
import longrun.drawing.svg.Point;
import longrun.drawing.svg.SvgText;
import longrun.review.Review;
import longrun.words.IsolatedName;
import longrun.words.Program;

/** The block at the foot of a drawing that leaves the house: what it shows, of which house, and what it is not. */
final class TitleBlock {

    static final double WIDTH = 320;
    private static final double ROW = 23;

    private final List<String> left;
    private final String house;

    private TitleBlock(String house, List<String> left) {
        this.house = house;
        this.left = left;
    }

    static TitleBlock of(Review review) {
        String house =
                review.plan().name().findValue().filter(n -> !n.isBlank()).orElse("House without a name");
        return new TitleBlock(
                IsolatedName.of(RunWords.shortened(house)),
                List.of(
                        "Pipe route, isometric; ft, Btu/h",
                        "Not to scale, legs as paced",
                        "Sized, not approved. Longrun " + Program.version()));
    }

    /** Writes it with its right upper corner at a place and tells how far down it reaches. */
    double write(SvgText out, double right, double top) {
        double from = right - WIDTH;
        double bottom = top + ROW * (left.size() + 1) + 6;
        out.path(
                "pn",
                SvgText.line(
                                new Point(from, top),
                                new Point(right, top),
                                new Point(right, bottom),
                                new Point(from, bottom))
                        + "Z");
        out.words("ts", new Point(from + 10, top + 19), "start", 0, house);
        for (int i = 0; i < left.size(); i++) {
            double y = top + ROW * (i + 1) + 3;
            out.path("ld", SvgText.line(new Point(from, y), new Point(right, y)));
            out.words("tq", new Point(from + 10, y + 17), "start", 0, left.get(i));
        }
        return bottom;
    }
}
