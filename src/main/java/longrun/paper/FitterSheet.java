package longrun.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longrun.drawing.route.Schematic;
import longrun.drawing.route.SheetPart;
import longrun.paper.page.Html;
import longrun.paper.page.OpenOnPaper;
import longrun.paper.page.Printing;
import longrun.paper.page.Sheet;
import longrun.paper.page.SheetFile;
import longrun.paper.page.SignBlanks;
import longrun.review.Review;
import org.jsoup.nodes.Element;

/** For whoever pipes the house and whoever passes it: every size as the book gives it, and what is still open. */
final class FitterSheet implements Sheet {

    /** Points the drawing may take up from top to foot. */
    private static final double HIGH = 400;

    /** More sections never fit into it. */
    private static final int MOST = 60;

    @Override
    public String slug() {
        return "fitter";
    }

    @Override
    public String title() {
        return "Propane piping: sizing sheet";
    }

    @Override
    public String under() {
        return "for the fitter and the inspector. Sized, not approved.";
    }

    @Override
    public String purpose() {
        return "For the fitter and the inspector: every size as the book gives it, connections, pressures, findings.";
    }

    @Override
    public List<String> stillOpen(Review review) {
        List<String> open = new ArrayList<>(OpenOnPaper.sizes(review));
        open.addAll(OpenOnPaper.findings(review));
        return open;
    }

    @Override
    public List<Sheet> printedWith(Printing printing) {
        return findRoute(printing).isPresent() ? List.of(this) : List.of(this, new DrawingSheet());
    }

    /** The drawing, where its letters can be read in the room it has here. */
    private static Optional<String> findRoute(Printing printing) {
        if (printing.review().plan().sections().size() > MOST) {
            return Optional.empty();
        }
        SheetPart whole = SheetPart.whole(Schematic.sheet(printing.review()));
        double scale = Html.scale(whole.width(), whole.height(), printing.size().widthPt() - SheetFile.BESIDE, HIGH);
        return scale >= DrawingSheet.SMALLEST ? Optional.of(whole.svg()) : Optional.empty();
    }

    @Override
    public List<Element> body(Printing printing) {
        Review review = printing.review();
        List<Element> out = new ArrayList<>();
        out.add(Html.heading("Route", "directions true, lengths not to scale"));
        Optional<String> route = findRoute(printing);
        if (route.isPresent()) {
            out.add(Html.picture(
                    route.get(), Html.titleOf(route.get()), printing.size().widthPt() - SheetFile.BESIDE, HIGH));
        } else {
            out.add(Html.text(
                    "p",
                    "",
                    "The drawing is too large to be read here; it stands on sheets of its own, after this one where"
                            + " this one is printed alone."));
        }
        out.addAll(new SizingSchedule(review).elements());
        out.addAll(Hookups.elements(review));
        out.addAll(RegulatorTable.forFitter(review));
        out.addAll(BurnerTable.elements(review));
        out.addAll(WaterLines.elements(review));
        out.addAll(FindingsList.elements(review));
        out.addAll(FindingsList.questions(review));
        out.addAll(SignBlanks.elements());
        return out;
    }
}
