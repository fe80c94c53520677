package longrun.paper;

import java.util.ArrayList;
import java.util.List;
import longrun.finding.AskWhom;
import longrun.finding.Finding;
import longrun.paper.page.Html;
import longrun.paper.page.OpenOnPaper;
import longrun.paper.page.Printing;
import longrun.paper.page.Sheet;
import longrun.review.Review;
import longrun.words.QuestionsByWhom;
import org.jsoup.nodes.Element;

/** Every question for the supplier that the review leaves open, each with room for the answer; goes with his sheet. */
final class SupplierAsked implements Sheet {

    @Override
    public String slug() {
        return "supplier-questions";
    }

    @Override
    public String title() {
        return "Propane supply: questions";
    }

    @Override
    public String under() {
        return "for the gas supplier. What is not known is counted as a pass nowhere.";
    }

    @Override
    public boolean opensWithFacts() {
        return false; // they stand on the sheet before
    }

    @Override
    public String purpose() {
        return "For the gas supplier: every question that only he can answer, with room for the answer.";
    }

    @Override
    public List<String> stillOpen(Review review) {
        return OpenOnPaper.supply(review);
    }

    /** The questions, those that many parts share together. */
    static List<List<Finding>> list(Review review) {
        return QuestionsByWhom.together(review.findings()).getOrDefault(AskWhom.SUPPLIER, List.of());
    }

    @Override
    public List<Element> body(Printing printing) {
        Review review = printing.review();
        List<Element> rows = new ArrayList<>();
        for (List<Finding> asked : list(review)) {
            rows.add(Html.el(
                    "tr",
                    "",
                    Html.text("td", "n", String.valueOf(rows.size() + 1)),
                    Html.text("td", "w", QuestionsByWhom.words(review, asked)),
                    Html.el("td", "b wide", Html.text("p", "", "answer"))));
        }
        return List.of(
                Html.heading("All that is asked of you", "what rests on it stays open until it is answered"),
                Html.el("table", "asks", rows.toArray(Element[]::new)),
                Html.text("p", "", "Answered by ____________________________   Date ______________"));
    }
}
