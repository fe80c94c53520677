package longrun.ui.lines;

import com.vaadin.flow.dom.Element;
import java.util.List;
import java.util.Optional;
import longrun.draft.sections.TableRow;
import longrun.ui.frame.Dom;
import longrun.words.UnitSystem;

/** The row of a published table in use, ruled above and below, between its neighbours, its cell between corner ticks. */
public final class RowTable {

    private final Element table = Dom.el("table", "row");
    private final Element box = Dom.el("div", "row-box", table);
    private Shown last = new Shown("", List.of(), List.of(), List.of(), -1);

    /** A row as text: its length, whether it is the one used, its cells. */
    private record Row(String run, boolean used, List<String> cells) {}

    private record Shown(String caption, List<String> sizes, List<Optional<String>> under, List<Row> rows, int hit) {}

    public Element element() {
        return box;
    }

    /** @param caption what the cells are, for those who do not see the table */
    public void show(String caption, TableRow used, UnitSystem units) {
        show(
                caption,
                "Run, " + units.lengthUnit().name(),
                used.sizes(),
                used.ods(),
                used.rows().stream()
                        .map(r -> new Row(
                                units.row(r.run()),
                                r.used(),
                                r.capacities().stream()
                                        .map(c -> c.map(units::cell).orElse("\u2013"))
                                        .toList()))
                        .toList(),
                used.column());
    }

    private void show(
            String caption, String runHead, List<String> sizes, List<Optional<String>> under, List<Row> rows, int hit) {
        Shown now = new Shown(caption + runHead, sizes, under, rows, hit);
        if (now.equals(last)) {
            return;
        }
        last = now;
        Element heads = Dom.el("tr", "", Dom.text("th", "", runHead).setAttribute("scope", "col"));
        for (int i = 0; i < sizes.size(); i++) {
            Element head = Dom.text("th", i == hit ? "hitcol" : far(i, hit, sizes.size()), sizes.get(i))
                    .setAttribute("scope", "col");
            under.get(i).ifPresent(u -> head.appendChild(Dom.text("small", "", u)));
            heads.appendChild(head);
        }
        Element body = Dom.el("tbody", "");
        for (Row row : rows) {
            Element line = Dom.el(
                    "tr",
                    row.used() ? "used" : "",
                    Dom.text("th", "", row.run()).setAttribute("scope", "row"));
            for (int i = 0; i < row.cells().size(); i++) {
                boolean cell = row.used() && i == hit;
                Element td = Dom.text(
                        "td",
                        cell ? "hit" : far(i, hit, row.cells().size()),
                        row.cells().get(i));
                if (cell) {
                    td.setAttribute("data-fig", "");
                    td.appendChild(Dom.text("span", "vh", " (used)"));
                }
                line.appendChild(td);
            }
            body.appendChild(line);
        }
        Dom.fill(table, Dom.text("caption", "vh", caption), Dom.el("thead", "", heads), body);
    }

    /** A phone shows the five columns about the cell used. */
    private static String far(int column, int hit, int columns) {
        int first = Math.max(0, Math.min(hit - 2, columns - 5));
        return column < first || column > first + 4 ? "x" : "";
    }
}
