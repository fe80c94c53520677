package longrun.paper;

import java.util.List;
import java.util.Optional;
import longrun.drawing.DrawingUnits;
import longrun.drawing.Palette;
import longrun.drawing.Schematic;
import longrun.review.Review;
import org.jsoup.nodes.Element;

/** The route as an isometric drawing on a sheet of its own. */
final class DrawingSheet implements Sheet {

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
        String svg = Schematic.svg(printing.review(), Optional.empty(), DrawingUnits.CUSTOMARY, Palette.PAPER);
        double width = printing.size().widthPt() - 86;
        double height = printing.size().heightPt() - 200;
        return List.of(Html.picture(svg, "The pipe route, described in its title", width, height));
    }
}
