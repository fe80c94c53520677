package longrun.drawing.route;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import longrun.drawing.svg.Box;
import longrun.drawing.svg.Palette;
import longrun.drawing.svg.Pens;
import longrun.drawing.svg.Point;
import longrun.drawing.svg.SvgText;
import longrun.review.Review;

/**
 * The pipe route as an isometric sketch: directions true, lengths not to scale and lettered in feet, strokes by where a
 * section lies (indoors solid, outdoors long dash, buried dash-dot, concealed dotted), marks on them by material. Each
 * section's strokes and words stand in groups that carry its id in {@code data-key}. The same review always gives the same
 * text.
 */
public final class Schematic {

    private static final double MARGIN = 12;
    private static final double LEAST_WIDTH = 760;
    private static final double LEGEND = 1100;
    private static final double NORTH = 210;

    private final RouteModel model;
    private final DrawingUnits units;
    private final Palette palette;
    private final Drawn drawn;

    private Schematic(Review review, DrawingUnits units, Palette palette) {
        this.model = new RouteModel(review, units);
        this.units = units;
        this.palette = palette;
        this.drawn = Drawn.of(model, units);
    }

    /** The drawing as it stands on the page, in feet, with the selected section in the accent colour. */
    public static String svg(Review review, Optional<String> selectedSectionId) {
        return svg(review, selectedSectionId, DrawingUnits.CUSTOMARY, Palette.SCREEN);
    }

    /** The drawing as it stands on a page that bears the house's name itself. */
    public static String svg(Review review, Optional<String> selectedSectionId, DrawingUnits units, Palette palette) {
        return new Schematic(review, units, palette).write(Optional.of(selectedSectionId.orElse("")), Optional.empty());
    }

    /** The drawing as it goes out of the house, black on white, with its title block. */
    public static String sheet(Review review) {
        return new Schematic(review, DrawingUnits.CUSTOMARY, Palette.PAPER)
                .write(Optional.empty(), Optional.of(TitleBlock.of(review)));
    }

    /**
     * The same in parts, for paper: a key of the whole without words where there is more than one, then each part that has
     * something in it. Letters stay as large as they are drawn.
     *
     * @param width of a part, pixels
     * @param height of a part, pixels
     */
    public static List<SheetPart> parts(Review review, double width, double height) {
        return new Schematic(review, DrawingUnits.CUSTOMARY, Palette.PAPER).parted(review, width, height);
    }

    private String write(Optional<String> selected, Optional<TitleBlock> block) {
        if (drawn.isEmpty()) {
            return empty();
        }
        SvgText body = new SvgText();
        Box extent = drawn.extent().grown(MARGIN);
        Box north = new Box(extent.left(), extent.top(), extent.left() + NORTH - 20, extent.top() + 58);
        if (!drawn.isFree(north)) {
            extent = extent.with(extent.moved(0, -62));
        }
        drawn.write(body, selected, b -> true, b -> true);
        Legend.north(body, new Point(extent.left() + MARGIN, extent.top() + 26));
        double width = Math.max(LEAST_WIDTH, extent.width());
        double foot = block.isPresent() ? TitleBlock.WIDTH + 2 * MARGIN : 0;
        double room = Math.min(width - foot, LEGEND) - 2 * MARGIN;
        double top = extent.bottom() + 24;
        double bottom = new Legend(model).write(body, extent.left() + MARGIN, top, room);
        if (block.isPresent()) {
            double right = extent.left() + width - MARGIN;
            bottom = Math.max(bottom, block.get().write(body, right, extent.bottom() + 8) + MARGIN);
        }
        return head(extent.left(), extent.top(), Math.ceil(width), Math.ceil(bottom - extent.top()), description())
                + body + "</svg>";
    }

    private List<SheetPart> parted(Review review, double width, double height) {
        String whole = write(Optional.empty(), Optional.of(TitleBlock.of(review)));
        SheetPart one = SheetPart.whole(whole);
        if (drawn.isEmpty() || one.width() <= width && one.height() <= height) {
            return List.of(one);
        }
        return new SheetParts(drawn.extent().grown(MARGIN), width, height)
                .list(this::part, drawn::shows, legend(review, width));
    }

    /** Legend, north and title block alone, for a sheet on which the drawing is a key without words. */
    private SheetParts.Foot legend(Review review, double width) {
        return (body, left, top) -> {
            double room = Math.min(width - TitleBlock.WIDTH - 2 * MARGIN, LEGEND) - 2 * MARGIN;
            Legend.north(body, new Point(left + MARGIN, top + 30));
            double bottom = new Legend(model).write(body, left + NORTH, top + 24, room - NORTH);
            return Math.max(bottom, TitleBlock.of(review).write(body, left + width - MARGIN, top + 8) + MARGIN);
        };
    }

    private String part(Box box, Predicate<Box> whole, SheetParts.Words words) {
        SvgText body = new SvgText();
        if (words.lettered()) {
            drawn.write(body, Optional.empty(), b -> b.overlaps(box), whole);
        } else {
            drawn.writeKey(body);
        }
        words.more().accept(body);
        return head(box.left(), box.top(), Math.ceil(box.width()), Math.ceil(box.height()), words.description()) + body
                + "</svg>";
    }

    private String description() {
        return new Described(model, units).words();
    }

    private String empty() {
        SvgText body = new SvgText();
        body.words("tq", new Point(0, 24), "start", 0, "The drawing begins with the first section.");
        return head(0, 0, LEAST_WIDTH, 40, "The drawing of the pipe route, with no section in it yet.") + body
                + "</svg>";
    }

    private String head(double left, double top, double width, double height, String description) {
        SvgText head = SvgText.picture(left, top, width, height, description);
        return head.raw("<style>").raw(Pens.css(palette)).raw("</style>\n").toString();
    }
}
