package longrun.ui.house.route;

import com.vaadin.flow.dom.Element;
import java.util.List;
import java.util.function.Consumer;
import longrun.draft.sections.PastedRoute;
import longrun.draft.sections.RoutePasteReader;
import longrun.ui.frame.Dom;

/** What a paste was understood as, shown before it is taken. */
final class RoutePastePanel {

    private final Element panel =
            Dom.el("div", "paste").setAttribute("role", "region").setAttribute("aria-labelledby", "route-paste-h");
    private final Consumer<List<PastedRoute>> taken;
    private List<PastedRoute> lines = List.of();

    RoutePastePanel(Consumer<List<PastedRoute>> taken) {
        this.taken = taken;
        Dom.show(panel, false);
        panel.addEventListener("keydown", e -> close()).setFilter("event.key === 'Escape'");
    }

    Element element() {
        return panel;
    }

    boolean isOpen() {
        return !panel.hasAttribute("hidden");
    }

    List<PastedRoute> lines() {
        return lines;
    }

    void take() {
        close();
        taken.accept(lines);
    }

    void close() {
        Dom.show(panel, false);
        panel.removeAllChildren();
    }

    void show(RoutePasteReader.Understood u) {
        lines = u.lines();
        panel.removeAllChildren();
        int n = lines.size();
        Element take = Dom.button("act main", n == 1 ? "Take this section" : "Take these " + n + " sections");
        take.addEventListener("click", e -> take());
        Element leave = Dom.button("act", "Leave them out");
        leave.addEventListener("click", e -> close());
        panel.appendChild(
                Dom.text("h3", "", "The paste is understood as " + (n == 1 ? "1 section" : n + " sections"))
                        .setAttribute("id", "route-paste-h"),
                Dom.text("p", "s q", u.columns()));
        if (n > 0) {
            panel.appendChild(table(), Dom.el("div", "acts", take, leave));
        } else {
            panel.appendChild(Dom.el("div", "acts", leave));
        }
        Dom.show(panel, true);
        (n > 0 ? take : leave).executeJs("setTimeout(() => this.focus())");
    }

    private Element table() {
        Element heads = Dom.el("tr", "");
        for (String head : List.of("Section", "Leaves", "Legs", "Feeds", "Material")) {
            heads.appendChild(Dom.text("th", "", head).setAttribute("scope", "col"));
        }
        Element body = Dom.el("tbody", "");
        for (PastedRoute l : lines) {
            body.appendChild(Dom.el(
                    "tr",
                    "",
                    Dom.text("td", "", l.id()),
                    Dom.text("td", "", l.from().isEmpty() ? "as suggested" : l.from()),
                    Dom.text("td", "", String.join(", ", l.legs())),
                    Dom.text("td", "", l.feedsWords().isEmpty() ? "branches" : l.feedsWords()),
                    Dom.text("td", "", l.material().isEmpty() ? "as above" : RouteTools.materialWords(l.material()))));
            for (String problem : l.problems()) {
                body.appendChild(Dom.el("tr", "", Dom.text("td", "bad", problem).setAttribute("colspan", "5")));
            }
        }
        return Dom.el("table", "words", Dom.el("thead", "", heads), body);
    }
}
