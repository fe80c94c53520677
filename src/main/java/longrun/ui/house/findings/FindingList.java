package longrun.ui.house.findings;

import com.vaadin.flow.dom.Element;
import java.util.List;
import longrun.finding.Finding;
import longrun.ui.frame.Dom;
import longrun.ui.place.HousePage;

/** Findings told whole, one below the other, drawn anew only where they changed. */
public final class FindingList {

    private final HousePage desk;
    private final Element element = Dom.el("div", "finds");
    private List<Finding> shown = List.of();

    public FindingList(HousePage desk) {
        this.desk = desk;
    }

    public Element element() {
        return element;
    }

    public List<Finding> shown() {
        return shown;
    }

    public void show(List<Finding> now) {
        if (now.equals(shown)) {
            return;
        }
        shown = now;
        element.removeAllChildren();
        now.forEach(f -> element.appendChild(HouseFinding.of(f, desk)));
    }
}
