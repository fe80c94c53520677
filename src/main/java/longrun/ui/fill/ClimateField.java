package longrun.ui.fill;

import com.vaadin.flow.dom.Element;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import longrun.draft.entry.MonthlyMeans;
import longrun.draft.fill.FillDraft;
import longrun.draft.fill.FillEntry;
import longrun.draft.fill.MonthsText;
import longrun.fuel.StartingClimate;
import longrun.ui.frame.Dom;
import longrun.ui.frame.Entry;
import longrun.ui.frame.PendingChoice;
import longrun.words.UnitSystem;

/** The climate begun with, and its twelve months to write over. */
final class ClimateField {

    private static final String OWN = "own";

    private final Element select = Dom.el("select", "in")
            .setAttribute("id", "fill-climate")
            .setAttribute("aria-describedby", "fill-climate-note");
    private final PendingChoice pending;
    private final Element note = Dom.text("div", "note", "").setAttribute("id", "fill-climate-note");
    private final List<Entry> months = new ArrayList<>();
    private final Element element;
    private final Element twelve;
    private boolean ownShown;

    ClimateField(FillActions hand) {
        for (StartingClimate each : StartingClimate.all()) {
            select.appendChild(Dom.text("option", "", each.name()).setAttribute("value", each.id()));
        }
        pending = new PendingChoice(select);
        select.addEventListener("change", e -> {
                    String value = e.getEventData().getString("element.value");
                    pending.heard(value);
                    StartingClimate.find(value).ifPresent(hand::chose);
                })
                .addEventData("element.value");
        element = Dom.el(
                "div",
                "fld fact wide",
                Dom.text("label", "k", "Starting climate").setAttribute("for", "fill-climate"),
                select,
                note);
        Element cells = Dom.el("div", "months");
        for (int m = 0; m < 12; m++) {
            int month = m;
            String name = MonthsText.name(m);
            Entry entry = new Entry("fill-month-" + m, "Mean of " + name, "in r", t -> hand.typedMonth(month, t));
            entry.getElement().setAttribute("data-at", "MONTH " + m);
            months.add(entry);
            cells.appendChild(Dom.el(
                    "div",
                    "fld",
                    Dom.text("label", "lab", name).setAttribute("for", "fill-month-" + m),
                    entry.getElement(),
                    entry.said()));
        }
        twelve = Dom.el("details", "more", Dom.text("summary", "", "The twelve months, mean temperature"), cells);
    }

    Element element() {
        return element;
    }

    Element twelveMonths() {
        return twelve;
    }

    Entry month(int month) {
        return months.get(month);
    }

    void show(FillDraft draft, UnitSystem units, String typing) {
        Optional<StartingClimate> begun = draft.climate();
        boolean own = begun.isEmpty();
        if (own != ownShown) {
            ownShown = own;
            if (own) {
                select.appendChild(Dom.text("option", "", "your own months").setAttribute("value", OWN));
            } else {
                select.removeChild(select.getChild(select.getChildCount() - 1));
            }
            pending.show(begun.map(StartingClimate::id).orElse(OWN), true);
        }
        pending.show(begun.map(StartingClimate::id).orElse(OWN), false);
        Dom.retext(
                note,
                (draft.isStartingValue("CLIMATE") ? "starting value: take the one most like yours; " : "")
                        + begun.map(c -> "fills the twelve months; held as "
                                        + c.means().written())
                                .orElse("as written below"));
        List<String> texts = draft.months();
        for (int m = 0; m < 12; m++) {
            Entry entry = months.get(m);
            String stored = texts.get(m);
            if (!typing.equals("MONTH " + m)
                    && (entry.text().isBlank()
                            || !FillEntry.COLDEST.stored(entry.text(), units).equals(stored))) {
                entry.write(FillEntry.COLDEST.inField(stored, units));
            }
            Optional<String> wrong = MonthlyMeans.wrong(stored);
            if (wrong.isPresent()) {
                entry.wrong(wrong.get());
            } else {
                entry.understood(stored.isBlank() ? "not known" : "");
            }
        }
    }

    Map<String, String> heard() {
        Map<String, String> out = new LinkedHashMap<>();
        for (int m = 0; m < 12; m++) {
            out.put("MONTH " + m, months.get(m).text());
        }
        return out;
    }
}
