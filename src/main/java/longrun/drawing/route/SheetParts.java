package longrun.drawing.route;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Predicate;
import longrun.drawing.svg.Box;
import longrun.drawing.svg.Point;
import longrun.drawing.svg.SvgText;

/** Parts a drawing among sheets of one size, with a strip that two neighbours both show. */
final class SheetParts {

    /** Wider than words are, so that none is cut on both of two neighbours. */
    private static final double SHARED = 280;

    private final Box extent;
    private final double sheetWidth;
    private final double sheetHeight;
    private final double width;
    private final double height;
    private final int across;
    private final int down;

    SheetParts(Box extent, double width, double height) {
        this.extent = extent;
        this.sheetWidth = width;
        this.sheetHeight = height;
        this.across = count(extent.width(), width);
        this.down = count(extent.height(), height);
        this.width = part(extent.width(), width, across);
        this.height = part(extent.height(), height, down);
    }

    /** No more than the parts need between them: a drawing a little too wide is not the same sheet twice. */
    private static double part(double whole, double most, int count) {
        return count == 1 ? most : Math.min(most, (whole + (count - 1) * SHARED) / count);
    }

    private static int count(double whole, double part) {
        return whole <= part ? 1 : (int) Math.ceil((whole - SHARED) / (part - SHARED));
    }

    /**
     * What stands in a part.
     *
     * @param lettered whether the pipes bear their words
     * @param more what is written over it
     */
    record Words(boolean lettered, String description, Consumer<SvgText> more) {}

    /** Writes a part. */
    interface Maker {

        /** @param whole whether words are shown there: those that stand in it whole */
        String make(Box box, Predicate<Box> whole, Words words);
    }

    /** Writes what stands under the key and tells how far down it reaches. */
    interface Foot {
        double write(SvgText out, double left, double top);
    }

    List<SheetPart> list(Maker maker, Predicate<Box> shows, Foot foot) {
        boolean[][] there = new boolean[down][across];
        List<SheetPart> out = new ArrayList<>();
        for (int r = 0; r < down; r++) {
            for (int c = 0; c < across; c++) {
                there[r][c] = shows.test(box(r, c));
            }
        }
        out.add(key(maker, there, foot));
        for (int r = 0; r < down; r++) {
            for (int c = 0; c < across; c++) {
                if (there[r][c]) {
                    Box box = box(r, c);
                    String name = name(r, c);
                    out.add(new SheetPart(
                            name,
                            goesOn(there, r, c),
                            maker.make(
                                    box,
                                    box::holds,
                                    new Words(
                                            true,
                                            "Part " + name + " of the pipe route; every section stands in the"
                                                    + " sizing schedule too.",
                                            s -> {}))));
                }
            }
        }
        return out;
    }

    private Box box(int row, int column) {
        double left = extent.left() + column * step(extent.width(), width, across);
        double top = extent.top() + row * step(extent.height(), height, down);
        return new Box(left, top, left + width, top + height);
    }

    /** From one part to the next, so that the last ends where the drawing does. */
    private static double step(double whole, double part, int count) {
        return count == 1 ? 0 : (whole - part) / (count - 1);
    }

    static String name(int row, int column) {
        String letter = "";
        for (int r = row; r >= 0; r = r / 26 - 1) {
            letter = (char) ('A' + r % 26) + letter;
        }
        return letter + (column + 1);
    }

    private String goesOn(boolean[][] there, int r, int c) {
        List<String> on = new ArrayList<>();
        beside(there, r, c - 1, "left", on);
        beside(there, r, c + 1, "right", on);
        beside(there, r - 1, c, "above", on);
        beside(there, r + 1, c, "below", on);
        return String.join(", ", on);
    }

    private void beside(boolean[][] there, int r, int c, String where, List<String> on) {
        if (r >= 0 && c >= 0 && r < down && c < across && there[r][c]) {
            on.add(name(r, c) + " " + where);
        }
    }

    /** The whole without words, with the parts drawn over it. */
    private SheetPart key(Maker maker, boolean[][] there, Foot foot) {
        double scale = Math.min(1, Math.min(sheetWidth / extent.width(), (sheetHeight - 230) / extent.height()));
        Box inside = new Box(0, 0, sheetWidth, sheetHeight);
        String drawn = maker.make(inside, b -> true, new Words(false, "Key to the parts of the pipe route", out -> {
            for (int r = 0; r < down; r++) {
                for (int c = 0; c < across; c++) {
                    if (there[r][c]) {
                        frame(out, r, c, scale);
                    }
                }
            }
            out.close("g");
            foot.write(out, 0, extent.height() * scale + 4);
        }));
        String shift = "scale(" + String.format(java.util.Locale.ROOT, "%.4f", scale) + ") translate("
                + SvgText.n(-extent.left()) + " " + SvgText.n(-extent.top()) + ")";
        int at = drawn.indexOf("</style>") + "</style>\n".length();
        return new SheetPart(
                "key", "", drawn.substring(0, at) + "<g transform=\"" + shift + "\">" + drawn.substring(at));
    }

    private void frame(SvgText out, int r, int c, double scale) {
        Box b = box(r, c).within(extent);
        String thin = SvgText.n(0.75 / scale);
        out.raw("<path style=\"fill:none;stroke:#000;stroke-width:" + thin + "\" d=\"")
                .raw(SvgText.line(
                                new Point(b.left(), b.top()),
                                new Point(b.right(), b.top()),
                                new Point(b.right(), b.bottom()),
                                new Point(b.left(), b.bottom()))
                        + "Z\"/>");
        out.open(
                        "text",
                        "x",
                        SvgText.n(b.left() + 6 / scale),
                        "y",
                        SvgText.n(b.top() + 18 / scale),
                        "style",
                        "font-size:" + SvgText.n(16 / scale) + "px;fill:#000")
                .raw(name(r, c))
                .raw("</text>");
    }
}
