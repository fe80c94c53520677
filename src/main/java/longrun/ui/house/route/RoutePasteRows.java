package longrun.ui.house.route;

import com.vaadin.flow.dom.Element;
import java.util.List;
import longrun.draft.sections.PastedSection;
import longrun.ui.frame.Dom;

/** The sections of a paste as they were understood. */
final class RoutePasteRows {

    private RoutePasteRows() {}

    static Element of(List<PastedSection> lines) {
        Element heads = Dom.el("tr", "");
        for (String head : List.of("Section", "Leaves", "Legs", "Feeds", "Material")) {
            heads.appendChild(Dom.text("th", "", head).setAttribute("scope", "col"));
        }
        Element body = Dom.el("tbody", "");
        for (PastedSection l : lines) {
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
