package longrun.paper;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import longrun.finding.AskWhom;
import longrun.finding.Finding;
import longrun.finding.Severity;
import longrun.origin.Confidence;
import longrun.paper.page.Html;
import longrun.review.Review;
import longrun.words.FindingWords;
import longrun.words.Names;
import longrun.words.QuestionsByWhom;
import org.jsoup.nodes.Element;

/** What is wrong or doubtful, must-fix first, each with its reference; and the questions, by who can answer. */
final class FindingsList {

    /** Whom the sheet is for. */
    private static final List<AskWhom> READERS = List.of(AskWhom.FITTER, AskWhom.INSPECTOR);

    private FindingsList() {}

    static List<Element> elements(Review review) {
        List<Finding> found = review.findings().stream()
                .filter(f -> f.severity() != Severity.NOTE)
                .sorted(Comparator.comparing(Finding::severity))
                .toList();
        List<Element> out = new ArrayList<>();
        out.add(Html.heading("To mend", found.isEmpty() ? "" : "must fix first"));
        if (found.isEmpty()) {
            out.add(Html.text(
                    "p", "", "Nothing found so far, of what is entered. What is not entered is among the questions."));
        }
        found.forEach(f -> out.add(line(review, f)));
        return out;
    }

    private static Element line(Review review, Finding f) {
        boolean must = f.severity() == Severity.MUST_FIX;
        Element p = Html.el("p", must ? "f must" : "f");
        p.appendChild(Html.text("b", "", (must ? "\u25A0 Must fix. " : "\u25B2 Caution. ")));
        String where = f.named() ? "" : Names.capital(Names.of(review, f.at())) + ": ";
        p.appendText(Html.printable(where + FindingWords.whole(f) + " "));
        p.appendChild(Html.text("span", "q", "(" + reference(f) + ")"));
        f.answer()
                .ifPresent(a -> p.appendText(Html.printable(" " + a.says().written()
                        + (a.who().isEmpty() ? "" : " by " + a.who()) + " " + a.date() + ".")));
        return p;
    }

    private static String reference(Finding f) {
        return f.reference()
                + (f.edition().isEmpty() || f.reference().contains(f.edition()) ? "" : ", " + f.edition())
                + (f.confidence() == Confidence.MEMORY
                        ? "; held from memory: binding until the authority says otherwise"
                        : "");
    }

    static List<Element> questions(Review review) {
        Map<AskWhom, List<List<Finding>>> byWhom = QuestionsByWhom.together(review.findings());
        List<Element> out = new ArrayList<>();
        if (byWhom.isEmpty()) {
            return out;
        }
        out.add(Html.heading("Questions still open", "by who can answer; first those of whoever reads this sheet"));
        Stream.concat(READERS.stream(), byWhom.keySet().stream()).distinct().forEach(whom -> {
            List<List<Finding>> asked = byWhom.getOrDefault(whom, List.of());
            if (!asked.isEmpty()) {
                out.add(Html.text("h3", "", QuestionsByWhom.heading(whom)));
            }
            asked.forEach(q -> out.add(Html.text("p", "f", "\u25CB " + QuestionsByWhom.words(review, q))));
        });
        return out;
    }
}
