package longrun.ui.house.hotwater;

import com.vaadin.flow.dom.Element;
import java.util.List;
import longrun.ui.frame.Dom;
import longrun.ui.house.figure.MonthsAcross;

/** A table of words and numbers, written only where it changed; it slides sideways where it is wide. */
final class PlainTable {

    private final Element head = Dom.el("thead", "");
    private final Element body = Dom.el("tbody", "");
    private final Element element;
    private final boolean across;
    private String shown = "";

    PlainTable(String what) {
        this(what, false);
    }

    /** A table whose rows are months, which stand across. */
    static PlainTable ofMonths(String what) {
        return new PlainTable(what, true);
    }

    private PlainTable(String what, boolean across) {
        this.across = across;
        element = Dom.el("div", "row-box", Dom.el("table", across ? "plain water across" : "plain water", head, body))
                .setAttribute("tabindex", "0")
                .setAttribute("role", "group")
                .setAttribute("aria-label", what);
    }

    Element element() {
        return element;
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
        if (across) {
            MonthsAcross.write(head, body, "", rows, marked);
            return;
        }
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
