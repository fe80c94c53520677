package longrun.paper;

import java.util.ArrayList;
import java.util.List;
import longrun.drawing.route.Schematic;
import longrun.drawing.route.SheetPart;
import longrun.paper.page.Html;
import longrun.paper.page.OpenOnPaper;
import longrun.paper.page.PaperSize;
import longrun.paper.page.Printing;
import longrun.paper.page.Sheet;
import longrun.paper.page.SheetFile;
import longrun.review.Review;
import org.jsoup.nodes.Element;

/**
 * The route as an isometric drawing on a sheet of its own, broadside where that shows it larger; on several sheets with a
 * key before them where its letters would come out smaller than a sheet may bear.
 */
final class DrawingSheet implements Sheet {

    /** Points a pixel at which the drawing's letters of 14 px are a little over 8 pt. */
    static final double SMALLEST = 0.578;

    /** Points between the margins that the head, and above a part its name, take up. */
    private static final double HEAD = 34;

    private static final double PART = 16;

    /** Up to so many sections a drawing that does not fit broadside may still fit upright. */
    private static final int MAY_STAND = 60;

    @Override
    public String slug() {
        return "drawing";
    }

    @Override
    public String title() {
        return "Propane piping: drawing";
    }

    @Override
    public String under() {
        return "Not to scale, legs as paced. Sized, not approved.";
    }

    @Override
    public boolean opensWithFacts() {
        return false;
    }

    private static double scale(SheetPart part, Printing printing, boolean broad) {
        return Math.min(
                0.75,
                Math.min(width(printing.size(), broad) / part.width(), height(printing.size(), broad) / part.height()));
    }

    private static double width(PaperSize size, boolean broad) {
        return (broad ? size.heightPt() : size.widthPt()) - SheetFile.BESIDE;
    }

    private static double height(PaperSize size, boolean broad) {
        return (broad ? size.widthPt() : size.heightPt()) - SheetFile.ABOVE_AND_BELOW - HEAD;
    }

    private static List<SheetPart> parts(Printing printing) {
        double broad = width(printing.size(), true) / SMALLEST;
        double low = (height(printing.size(), true) - PART) / SMALLEST;
        List<SheetPart> parts = Schematic.parts(printing.review(), broad, low);
        if (parts.size() > 1 && printing.review().plan().sections().size() <= MAY_STAND) {
            double narrow = width(printing.size(), false) / SMALLEST;
            double high = height(printing.size(), false) / SMALLEST;
            List<SheetPart> upright = Schematic.parts(printing.review(), narrow, high);
            return upright.size() == 1 ? upright : parts;
        }
        return parts;
    }

    @Override
    public String purpose() {
        return "For everyone who works on the pipe: the route with lengths, sizes, loads and parts.";
    }

    @Override
    public List<String> stillOpen(Review review) {
        return OpenOnPaper.sizes(review);
    }

    @Override
    public List<Element> body(Printing printing) {
        return pages(printing).body();
    }

    @Override
    public Pages pages(Printing printing) {
        List<SheetPart> parts = parts(printing);
        boolean broad =
                parts.size() > 1 || scale(parts.get(0), printing, true) > scale(parts.get(0), printing, false) * 1.05;
        double width = width(printing.size(), broad);
        double height = height(printing.size(), broad) - (parts.size() > 1 ? PART : 0);
        List<Element> out = new ArrayList<>();
        for (SheetPart part : parts) {
            Element picture = Html.picture(part.svg(), Html.titleOf(part.svg()), width, height);
            if (parts.size() == 1) {
                out.add(picture);
            } else {
                String name = part.name().equals("key")
                        ? "Key: the route in " + (parts.size() - 1) + " parts, each on a sheet of its own"
                        : "Part " + part.name() + (part.goesOn().isEmpty() ? "" : "; goes on in " + part.goesOn());
                out.add(Html.el("div", out.isEmpty() ? "part" : "part next", Html.text("p", "src", name), picture));
            }
        }
        return new Pages(broad, out);
    }
}
