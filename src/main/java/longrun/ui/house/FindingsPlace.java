package longrun.ui.house;

import com.vaadin.flow.dom.Element;
import java.util.List;
import java.util.Map;
import longrun.finding.Finding;
import longrun.finding.Severity;
import longrun.ui.frame.Dom;

/** What is wrong or doubtful, and the questions to take along, each with the way to the field that mends it. */
final class FindingsPlace implements Place {

    private final HouseDesk desk;
    private final Element element = Dom.el("div", "place-body");
    private List<Finding> shown = List.of();
    private boolean drawn;

    FindingsPlace(HouseDesk desk) {
        this.desk = desk;
    }

    @Override
    public Element element() {
        return element;
    }

    @Override
    public void show(boolean write) {
        List<Finding> now = desk.session().findings();
        if (drawn && now.equals(shown)) {
            return;
        }
        drawn = true;
        shown = now;
        element.removeAllChildren();
        part(
                "Must fix",
                now.stream().filter(f -> f.severity() == Severity.MUST_FIX).toList());
        part(
                "Caution",
                now.stream().filter(f -> f.severity() == Severity.CAUTION).toList());
        Element questions = Dom.el("section", "part", Dom.text("h3", "", "Questions to take along"));
        QuestionsByWhom.of(now).forEach((whom, asked) -> {
            questions.appendChild(Dom.text("h4", "", QuestionsByWhom.heading(whom)));
            asked.forEach(f -> questions.appendChild(line(f)));
        });
        if (questions.getChildCount() == 1) {
            questions.appendChild(Dom.text("p", "lede", "No question is open in what has been entered so far."));
        }
        element.appendChild(questions);
    }

    private void part(String title, List<Finding> findings) {
        if (!findings.isEmpty()) {
            Element part = Dom.el("section", "part", Dom.text("h3", "", title));
            findings.forEach(f -> part.appendChild(line(f)));
            element.appendChild(part);
        }
    }

    private Element line(Finding f) {
        return HouseFinding.of(f, desk);
    }

    @Override
    public void focus(String pointer) {
        // Nothing is entered here; each finding leads to its own field.
    }

    @Override
    public Map<String, String> heard() {
        return Map.of();
    }
}
