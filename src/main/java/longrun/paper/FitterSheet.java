package longrun.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longrun.drawing.DrawingUnits;
import longrun.drawing.Palette;
import longrun.drawing.Schematic;
import longrun.review.Review;
import org.jsoup.nodes.Element;

/** For whoever pipes the house and whoever passes it: every size as the book gives it, and what is still open. */
final class FitterSheet implements Sheet {

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
    public List<Element> body(Printing printing) {
        Review review = printing.review();
        List<Element> out = new ArrayList<>();
        out.add(Html.heading("Route", "directions true, lengths not to scale"));
        out.add(Html.picture(
                Schematic.svg(review, Optional.empty(), DrawingUnits.CUSTOMARY, Palette.PAPER),
                "The pipe route as an isometric drawing; every figure in it stands in the sizing schedule too",
                printing.size().widthPt() - 86,
                330));
        out.addAll(new SizingSchedule(review).elements());
        out.addAll(Hookups.elements(review));
        out.addAll(RegulatorTable.forFitter(review));
        out.addAll(BurnerTable.elements(review));
        out.addAll(FindingsList.elements(review));
        out.addAll(FindingsList.questions(review));
        out.addAll(SignBlanks.elements());
        return out;
    }
}
