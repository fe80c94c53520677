package longrun.ui.house.route;

import com.vaadin.flow.dom.Element;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import longrun.draft.HouseSession;
import longrun.finding.Finding;
import longrun.finding.Severity;
import longrun.ui.frame.Dom;
import longrun.ui.frame.FindingLine;
import longrun.ui.house.findings.QuestionFold;
import longrun.ui.place.HousePage;

/** What was found of the route, under its lines. */
final class RouteFindings {

    private final Element told = Dom.el("div", "");
    private final Element box;
    private final HousePage desk;
    private final QuestionFold asked;
    private List<Finding> shown = List.of();

    RouteFindings(HousePage desk) {
        this.desk = desk;
        asked = new QuestionFold(desk);
        box = Dom.el("div", "finds", told, asked.element())
                .setAttribute("role", "group")
                .setAttribute("aria-label", "Found in the route");
    }

    Element element() {
        return box;
    }

    void show() {
        HouseSession session = desk.session();
        Set<String> ids = new HashSet<>();
        session.draft().get("sections").forEach(s -> ids.add(s.textOf("id")));
        List<Finding> now = session.findings().stream()
                .filter(f -> ids.contains(f.at()) || f.field().startsWith("/sections"))
                .sorted(java.util.Comparator.comparing(Finding::severity))
                .toList();
        if (now.equals(shown)) {
            return;
        }
        shown = now;
        told.removeAllChildren();
        now.stream().filter(f -> f.severity() != Severity.NOTE).forEach(f -> told.appendChild(line(f)));
        asked.show(now);
    }

    private Element line(Finding f) {
        Element line = FindingLine.of(f, Optional.empty());
        if (!f.field().isEmpty()) {
            Element go = Dom.button("ask go", "go to the entry");
            go.addEventListener("click", e -> desk.goTo(f.field()));
            line.appendChild(Dom.words(" "), go);
        }
        return line;
    }
}
