package longrun.ui.house.fuel;

import com.vaadin.flow.dom.Element;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import longrun.draft.Climate;
import longrun.draft.EntryAddress;
import longrun.draft.entry.MonthlyMeans;
import longrun.ui.frame.Dom;
import longrun.ui.frame.Entry;
import longrun.ui.place.HousePage;
import longrun.words.DisplayUnits;

/**
 * Mean temperature of the twelve months, a line to write on each. A plan holds all twelve or none: while some are missing
 * what is typed waits beside them in the draft, so that the rest of the house goes on being worked out.
 */
final class MonthCells {

    private final HousePage desk;
    private final List<Entry> entries = new ArrayList<>();
    private final Element said = Dom.text("p", "said", "").setAttribute("role", "status");
    private final Element element;

    MonthCells(HousePage desk) {
        this.desk = desk;
        Element cells = Dom.el("div", "months");
        for (int m = 0; m < 12; m++) {
            int month = m;
            Entry entry = new Entry(
                    "month-" + m,
                    "Mean of " + Climate.MONTHS.get(m),
                    "in r",
                    typed -> address(month).type(desk.session(), typed));
            entry.getElement().setAttribute("inputmode", "text");
            entry.getElement().addEventListener("blur", e -> desk.session().endStep());
            entries.add(entry);
            Element name = Dom.text("label", "lab", Climate.MONTHS.get(m)).setAttribute("for", "month-" + m);
            cells.appendChild(Dom.el("div", "fld", name, entry.getElement(), entry.said()));
        }
        element = Dom.el("div", "", cells, said);
    }

    Element element() {
        return element;
    }

    Entry entry(int month) {
        return entries.get(month);
    }

    private EntryAddress address(int month) {
        return new EntryAddress(MonthlyMeans.AT + "/" + month, DisplayUnits.TEMPERATURE.unit(desk.units()));
    }

    private List<String> texts() {
        return MonthlyMeans.OF_HOUSE.texts(desk.session().draft());
    }

    void show(boolean write) {
        List<String> texts = texts();
        int lacking = 0;
        for (int m = 0; m < 12; m++) {
            Entry entry = entries.get(m);
            entry.getElement().setAttribute("data-at", address(m).written());
            if (write && !address(m).stands(entry.text(), texts.get(m))) {
                entry.write(address(m).inField(texts.get(m)));
            }
            Optional<String> wrong = MonthlyMeans.wrong(texts.get(m));
            if (wrong.isPresent()) {
                entry.wrong(wrong.get());
            } else {
                entry.understood("");
            }
            lacking += MonthlyMeans.reads(texts.get(m)) ? 0 : 1;
        }
        Dom.retext(
                said,
                lacking == 12
                        ? "No climate yet: type the twelve means, begin with one held here, or bring a file of days."
                        : lacking > 0 ? lacking + " of twelve are still to come; until then there is no year." : "");
    }

    Map<String, String> heard() {
        Map<String, String> out = new LinkedHashMap<>();
        entries.forEach(e -> out.put(e.getElement().getAttribute("data-at"), e.text()));
        return out;
    }
}
