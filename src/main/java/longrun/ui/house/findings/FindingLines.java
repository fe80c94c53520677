package longrun.ui.house.findings;

import com.vaadin.flow.dom.Element;
import java.util.List;
import java.util.function.Predicate;
import longrun.finding.Finding;
import longrun.ui.frame.Dom;
import longrun.ui.place.HousePage;

/** The open findings of one place or thing, a sentence each, drawn anew only where they changed. */
public final class FindingLines {

    private final HousePage desk;
    private final Predicate<Finding> own;
    private final Element element = Dom.el("div", "finds");
    private List<Finding> shown = List.of();

    /** @param own which findings stand here */
    public FindingLines(HousePage desk, Predicate<Finding> own) {
        this.desk = desk;
        this.own = own;
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
        element.removeAllChildren();
        now.forEach(f -> element.appendChild(HouseFinding.of(f, desk)));
    }
}
