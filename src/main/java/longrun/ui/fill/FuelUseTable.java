package longrun.ui.fill;

import com.vaadin.flow.dom.Element;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import longrun.draft.fill.FillDraft;
import longrun.draft.fill.FuelUse;
import longrun.fuel.OtherYear;
import longrun.fuel.fill.FillReport;
import longrun.origin.Figure;
import longrun.ui.frame.Dom;
import longrun.words.FigureText;
import longrun.words.UnitSystem;

/** What burns: a line each, and one more that is not begun. */
final class FuelUseTable {

    private final Element table = Dom.el("table", "lines burns");
    private final Element inputHead = Dom.text("th", "", "Input, Btu/h").setAttribute("scope", "col");
    private final Element yearHead = Dom.text("th", "", "Gal a year").setAttribute("scope", "col");
    private final List<FuelUseRow> rows = new ArrayList<>();
    private final FillActions hand;

    FuelUseTable(FillActions hand) {
        this.hand = hand;
        Element heads = Dom.el(
                "tr",
                "",
                Dom.text("th", "tl", "What").setAttribute("colspan", "2").setAttribute("scope", "col"),
                inputHead,
                Dom.text("th", "tl", "How much it burns")
                        .setAttribute("colspan", "2")
                        .setAttribute("scope", "col"),
                Dom.text("th", "tl", "Months").setAttribute("scope", "col"),
                yearHead);
        table.appendChild(Dom.text("caption", "vh", "What burns"), Dom.el("thead", "", heads));
    }

    Element element() {
        return table;
    }

    FuelUseRow row(int index) {
        return rows.get(index);
    }

    int size() {
        return rows.size();
    }

    void show(FillDraft draft, UnitSystem units, int inHand, String typing) {
        List<FuelUse> lines = draft.lines();
        while (rows.size() > lines.size() + 1) {
            rows.remove(rows.size() - 1).element().removeFromParent();
        }
        while (rows.size() < lines.size() + 1) {
            FuelUseRow row = new FuelUseRow(rows.size(), hand);
            rows.add(row);
            table.appendChild(row.element());
        }
        Dom.retext(inputHead, "Input, " + units.heatUnit().name());
        Dom.retext(yearHead, (units == UnitSystem.CUSTOMARY ? "Gal" : "L") + " a year");
        for (int i = 0; i < rows.size(); i++) {
            Optional<FuelUse> line = i < lines.size() ? Optional.of(lines.get(i)) : Optional.empty();
            rows.get(i).write(line, units, typing);
            rows.get(i)
                    .show(
                            line,
                            units,
                            line.filter(l -> draft.isStartingValue("efficiency " + l.id()))
                                    .isPresent());
        }
        mark(inHand);
    }

    /** Marks the selected line. */
    void mark(int inHand) {
        for (int i = 0; i < rows.size(); i++) {
            rows.get(i).markInHand(i == inHand);
        }
    }

    /** Gallons of each line; several heaters share one figure, which stands at the last of them. */
    void gallons(FillDraft draft, Optional<FillReport> report, UnitSystem units) {
        List<FuelUse> lines = draft.lines();
        List<Integer> heaters = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).basis() == FuelUse.Basis.HEATS) {
                heaters.add(i);
            }
        }
        for (int i = 0; i < rows.size(); i++) {
            if (i >= lines.size() || report.isEmpty()) {
                rows.get(i).gallons("");
                continue;
            }
            boolean heats = heaters.contains(i);
            boolean last = heats && heaters.indexOf(i) == heaters.size() - 1;
            Optional<Figure> year = Optional.ofNullable(report.get()
                    .fuel()
                    .byUse()
                    .get(heats ? OtherYear.HEATING : lines.get(i).id()));
            rows.get(i)
                    .gallons(
                            heats && !last
                                    ? ""
                                    : year.filter(Figure::isKnown)
                                            .map(f -> FigureText.number(f, units)
                                                    + (heats && heaters.size() > 1 ? " together" : ""))
                                            .orElse("not known"));
        }
    }

    Map<String, String> heard() {
        Map<String, String> heard = new LinkedHashMap<>();
        for (int i = 0; i < rows.size(); i++) {
            for (FuelUse.Column c : FuelUse.Column.values()) {
                heard.put("BURNS " + i + " " + c, rows.get(i).entry(c).text());
            }
        }
        return heard;
    }
}
