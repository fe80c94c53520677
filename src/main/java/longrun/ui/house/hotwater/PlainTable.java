package longrun.ui.house.hotwater;

import com.vaadin.flow.dom.Element;
import java.util.List;
import longrun.ui.frame.Dom;

/** A table of words and numbers, written only where it changed; it slides sideways where it is wide. */
final class PlainTable {

    private final Element head = Dom.el("thead", "");
    private final Element body = Dom.el("tbody", "");
    private final Element element;
    private String shown = "";

    PlainTable(String what) {
        element = Dom.el("div", "row-box", Dom.el("table", "plain water", head, body))
                .setAttribute("tabindex", "0")
                .setAttribute("role", "group")
                .setAttribute("aria-label", what);
    }

    Element element() {
        return element;
    }

    String shown() {
        return shown;
    }

    /**
     * Shows rows, headings first.
     *
     * @param marked name of the row that is the house's own
     */
    void show(List<List<String>> rows, String marked) {
        String now = marked + rows;
        if (now.equals(shown)) {
            return;
        }
        shown = now;
        head.removeAllChildren();
        body.removeAllChildren();
        Element top = Dom.el("tr", "");
        rows.get(0).forEach(t -> top.appendChild(Dom.text("th", "", t).setAttribute("scope", "col")));
        head.appendChild(top);
        for (List<String> row : rows.subList(1, rows.size())) {
            boolean own = row.get(0).equals(marked);
            Element tr = Dom.el(
                    "tr", own ? "own" : "", Dom.text("th", "", row.get(0)).setAttribute("scope", "row"));
            row.subList(1, row.size()).forEach(c -> tr.appendChild(Dom.text("td", "", c)));
            body.appendChild(tr);
        }
    }
}
