package longrun.ui.checked;

import com.vaadin.flow.dom.Element;
import java.util.List;
import longrun.checked.report.Cell;
import longrun.checked.report.ReportTable;
import longrun.ui.frame.Dom;

/** A table of the report; on a phone each row is a block, each of its cells led by its heading. */
final class CheckedTable {

    private static final int SHORT_COLUMNS = 2;

    private CheckedTable() {}

    /** A list of things and reasons as it stands; any other folded up under its caption and what it comes to. */
    static Element shown(ReportTable table) {
        return table.headings().size() == SHORT_COLUMNS ? of(table) : folded(table);
    }

    private static Element folded(ReportTable table) {
        Element says = Dom.el(
                "summary", "", Dom.text("b", "", table.caption()), Dom.words(" "), Dom.text("span", "q", table.sum()));
        return Dom.el("details", "checked-fold", says, of(table));
    }

    private static Element of(ReportTable table) {
        Element head = row();
        for (String heading : table.headings()) {
            head.appendChild(
                    Dom.text("th", "", heading).setAttribute("scope", "col").setAttribute("role", "columnheader"));
        }
        Element body = Dom.el("tbody", "").setAttribute("role", "rowgroup");
        for (List<Cell> cells : table.rows()) {
            Element row = row();
            for (int c = 0; c < cells.size(); c++) {
                row.appendChild(cell(cells.get(c), c == 0, table.headings().get(c)));
            }
            body.appendChild(row);
        }
        // the roles stay where a phone's style takes the table apart
        return Dom.el(
                        "table",
                        "checked c" + table.headings().size(),
                        Dom.text("caption", "vh", table.caption()),
                        Dom.el("thead", "", head).setAttribute("role", "rowgroup"),
                        body)
                .setAttribute("role", "table");
    }

    private static Element row() {
        return Dom.el("tr", "").setAttribute("role", "row");
    }

    private static Element cell(Cell cell, boolean names, String heading) {
        Element e = Dom.text(names ? "th" : "td", "", "");
        e.appendChild(Dom.text("span", "t", cell.text()));
        cell.under().forEach(u -> e.appendChild(Dom.text("span", "u", u)));
        if (names) {
            e.setAttribute("scope", "row");
        }
        return e.setAttribute("role", names ? "rowheader" : "cell").setAttribute("data-of", heading);
    }
}
