package longrun.ui.house.route;

import com.vaadin.flow.dom.Element;
import java.util.Optional;
import longrun.capacity.CapacityTable;
import longrun.ui.frame.Dom;
import longrun.words.UnitSystem;

/** A maker's table as the program read it, to be held against the sheet it came from. */
final class TubingReadTable {

    private final Element heading = Dom.text("p", "s", "");
    private final Element head = Dom.el("thead", "");
    private final Element body = Dom.el("tbody", "");
    private final Element element;
    private String shown = "";

    TubingReadTable() {
        Element box = Dom.el("div", "row-box", Dom.el("table", "plain", head, body))
                .setAttribute("tabindex", "0")
                .setAttribute("role", "group")
                .setAttribute("aria-label", "The table as it was read");
        element = Dom.el("div", "as-read", heading, box);
        Dom.show(element, false);
    }

    Element element() {
        return element;
    }

    void show(Optional<CapacityTable> table, UnitSystem units) {
        Dom.show(element, table.isPresent());
        if (table.isEmpty()) {
            return;
        }
        CapacityTable t = table.get();
        Dom.retext(heading, words(t, units));
        String[][] cells = cells(t, units);
        String now = java.util.Arrays.deepToString(cells);
        if (now.equals(shown)) {
            return;
        }
        shown = now;
        head.removeAllChildren();
        body.removeAllChildren();
        for (int r = 0; r < cells.length; r++) {
            Element tr =
                    Dom.el("tr", "", Dom.text("th", "", cells[r][0]).setAttribute("scope", r == 0 ? "col" : "row"));
            for (int c = 1; c < cells[r].length; c++) {
                tr.appendChild(
                        r == 0
                                ? Dom.text("th", "", cells[r][c]).setAttribute("scope", "col")
                                : Dom.text("td", "", cells[r][c]));
            }
            (r == 0 ? head : body).appendChild(tr);
        }
    }

    private static String words(CapacityTable t, UnitSystem units) {
        int sizes = t.sizes().size();
        int rows = t.rowCount();
        return "As it was read: " + (sizes == 1 ? "1 size" : sizes + " sizes") + ", EHD "
                + t.sizes().get(0)
                + (sizes == 1 ? "" : " to " + t.sizes().get(sizes - 1)) + "; "
                + (rows == 1 ? "1 length, " : rows + " lengths, ")
                + units.row(t.run(0))
                + (rows == 1 ? "" : " to " + units.row(t.run(rows - 1))) + " "
                + units.lengthUnit().name() + ". Hold it against the maker\u2019s sheet. In "
                + units.cellUnit() + ":";
    }

    private static String[][] cells(CapacityTable t, UnitSystem units) {
        String[][] out = new String[t.rowCount() + 1][t.sizes().size() + 1];
        out[0][0] = units.lengthUnit().name();
        for (int c = 0; c < t.sizes().size(); c++) {
            out[0][c + 1] = "EHD " + t.sizes().get(c);
        }
        for (int r = 0; r < t.rowCount(); r++) {
            out[r + 1][0] = units.row(t.run(r));
            for (int c = 0; c < t.sizes().size(); c++) {
                out[r + 1][c + 1] = t.capacity(r, c).map(units::cell).orElse("\u2013");
            }
        }
        return out;
    }
}
