package longrun.ui.house.findings;

import com.vaadin.flow.dom.Element;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import longrun.draft.OpenQuestions;
import longrun.draft.OpenQuestions.Asked;
import longrun.finding.AskWhom;
import longrun.finding.EntryName;
import longrun.finding.Finding;
import longrun.finding.Severity;
import longrun.plan.PlanPath;
import longrun.ui.frame.Dom;
import longrun.ui.frame.FindingLine;
import longrun.ui.place.HousePage;
import longrun.words.QuestionsByWhom;

/**
 * What is asked of one place or thing, in one line: what the owner can answer by name, what is taken along by how many and
 * to whom. It unfolds to the whole sentences, and stays as it was left. A single question of the owner's is asked at once.
 */
public final class QuestionFold {

    private final HousePage desk;
    private final Element single = Dom.el("div", "");
    private final Element names = Dom.el("span", "");
    private final Element lines = Dom.el("div", "");
    private final Element fold = Dom.el("details", "asks", Dom.el("summary", "", names), lines);
    private final Element element = Dom.el("div", "", single, fold);

    public QuestionFold(HousePage desk) {
        this.desk = desk;
        Dom.show(fold, false);
    }

    public Element element() {
        return element;
    }

    /** Shows the questions among some findings. */
    public void show(List<Finding> findings) {
        List<Finding> open = findings.stream()
                .filter(f -> f.severity() == Severity.NOTE && f.isOpen())
                .toList();
        List<Asked> asked = OpenQuestions.together(open);
        List<Asked> own = asked.stream().filter(Asked::isOwn).toList();
        boolean alone = asked.size() == 1 && own.size() == 1;
        single.removeAllChildren();
        lines.removeAllChildren();
        names.removeAllChildren();
        Dom.show(fold, !asked.isEmpty() && !alone);
        open.forEach(f -> (alone ? single : lines).appendChild(HouseFinding.of(f, desk)));
        if (!alone) {
            names.appendChild(FindingLine.shape(Severity.NOTE), Dom.text("b", "", word(asked.size())));
            named(own).forEach(names::appendChild);
            names.appendChild(Dom.words(others(asked, !own.isEmpty())));
        }
    }

    private static String word(int count) {
        return count == 1 ? "1 question" : count + " questions";
    }

    /** What the owner is asked, each by the name of its entry. */
    private static List<Element> named(List<Asked> own) {
        List<Element> out = new ArrayList<>();
        for (Asked a : own) {
            out.add(Dom.words(out.isEmpty() ? ": " : ", "));
            out.add(Dom.text("span", "", EntryName.of(PlanPath.of(a.first().field())))
                    .setAttribute("data-asks", OpenQuestions.about(a.first().field())));
        }
        return out;
    }

    /** How many are taken along, and to whom. */
    private static String others(List<Asked> asked, boolean more) {
        Map<AskWhom, Integer> count = new LinkedHashMap<>();
        asked.stream().map(Asked::whom).filter(AskWhom::isForSomeoneElse).forEach(w -> count.merge(w, 1, Integer::sum));
        boolean counted = more || count.size() > 1;
        List<String> said = new ArrayList<>();
        count.forEach((whom, n) -> said.add(
                (counted ? n + " " : "") + QuestionsByWhom.heading(whom).toLowerCase(Locale.ROOT)));
        return said.isEmpty() ? "" : (more ? "; " : " ") + String.join(", ", said);
    }
}
