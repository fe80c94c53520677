package longrun.paper.calculation;

import java.util.ArrayList;
import java.util.List;
import longrun.origin.Missing;
import longrun.paper.page.HouseFacts;
import longrun.paper.page.Html;
import longrun.paper.page.OpenOnPaper;
import longrun.paper.page.Printing;
import longrun.paper.page.Sheet;
import longrun.paper.page.SheetWords;
import longrun.review.Review;
import org.jsoup.nodes.Element;

/**
 * Every figure of the house with what it was made from and how, in the order one redoes them with book and pencil. It is
 * made from the answers to "where from?", so nothing stands here that cannot be asked for on the screen.
 */
public final class CalculationSheet implements Sheet {

    @Override
    public String slug() {
        return "calculation";
    }

    @Override
    public String title() {
        return "Propane piping: calculation";
    }

    @Override
    public String under() {
        return "for whoever redoes it. Sized, not approved.";
    }

    @Override
    public String purpose() {
        return "For whoever distrusts a program: every figure with what it was made from, to redo with book and pencil.";
    }

    @Override
    public List<String> stillOpen(Review review) {
        List<String> open = new ArrayList<>(OpenOnPaper.sizes(review));
        open.addAll(OpenOnPaper.figures(review));
        return open;
    }

    @Override
    public List<Element> body(Printing printing) {
        Review review = printing.review();
        List<Element> out = new ArrayList<>();
        out.add(Html.text(
                "p",
                "src",
                "Redo it from the top: each figure stands with what it was made from. A letter in brackets says how, and"
                        + " is explained under its part; a figure without a letter is as it was entered."));
        CalculationTable table = new CalculationTable();
        for (CalculationPart part : CalculationOrder.of(review)) {
            out.add(Html.heading(part.title(), part.quiet()));
            out.addAll(table.of(part.title(), part.lines()));
            if (part.holds("/sections/")
                    && !review.connectedLoadComplete()
                    && part.title().equals("Loads")) {
                out.add(Html.led("Connected load:", HouseFacts.load(review) + "."));
            }
            if (part.holds("/sections/")) {
                out.addAll(notSized(review, part));
            }
            out.addAll(MonthTable.of(review, part));
        }
        out.addAll(notKnown(review));
        return out;
    }

    private static List<Element> notSized(Review review, CalculationPart part) {
        List<String> without = SheetWords.sections(review).stream()
                .filter(i -> !part.holds("/sections/" + i + "/"))
                .map(i -> review.piping().section(i).id())
                .toList();
        return without.isEmpty()
                ? List.of()
                : List.of(Html.led("Not known yet for:", String.join(", ", without) + "."));
    }

    private static List<Element> notKnown(Review review) {
        List<String> lacking = new ArrayList<>();
        review.tank().ifPresent(t -> t.missing().stream().map(Missing::words).forEach(lacking::add));
        review.fuel().ifPresent(f -> f.missing().stream().map(Missing::words).forEach(lacking::add));
        List<String> once =
                lacking.stream().filter(w -> !w.isBlank()).distinct().toList();
        return once.isEmpty()
                ? List.of()
                : List.of(
                        Html.heading("Not known yet", "no figure above rests on it"),
                        Html.text("p", "", "\u25CB " + String.join("  \u25CB ", once)));
    }
}
