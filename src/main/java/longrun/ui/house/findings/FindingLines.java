package longrun.ui.house.findings;

import com.vaadin.flow.dom.Element;
import java.util.List;
import java.util.function.Predicate;
import longrun.finding.Finding;
import longrun.finding.Severity;
import longrun.ui.frame.Dom;
import longrun.ui.place.HousePage;

/**
 * The open findings of one place or thing, drawn anew only where they changed: what is wrong or doubtful a sentence each,
 * what is asked in one line that names it and unfolds.
 */
public final class FindingLines {

    private final HousePage desk;
    private final Predicate<Finding> own;
    private final Element told = Dom.el("div", "");
    private final QuestionFold asked;
    private final Element element;
    private List<Finding> shown = List.of();

    /** @param own which findings stand here */
    public FindingLines(HousePage desk, Predicate<Finding> own) {
        this.desk = desk;
        this.own = own;
        asked = new QuestionFold(desk);
        element = Dom.el("div", "finds", told, asked.element());
    }

    public Element element() {
        return element;
    }

    public List<Finding> shown() {
        return shown;
    }

    public void show() {
        List<Finding> now = desk.session().findings().stream().filter(own).toList();
        if (now.equals(shown)) {
            return;
        }
        shown = now;
        told.removeAllChildren();
        now.stream()
                .filter(f -> f.severity() != Severity.NOTE)
                .forEach(f -> told.appendChild(HouseFinding.of(f, desk)));
        asked.show(now);
    }
}
