package longrun.ui.house.fuel;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.vaadin.flow.dom.Element;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import longrun.draft.Climate;
import longrun.draft.DraftTree;
import longrun.draft.EntryAddress;
import longrun.quantity.Measure;
import longrun.quantity.NotAQuantity;
import longrun.ui.frame.Dom;
import longrun.ui.frame.Entry;
import longrun.ui.place.HousePage;
import longrun.words.Shown;

/**
 * Mean temperature of the twelve months, a line to write on each. A plan holds all twelve or none: while some are missing
 * what is typed waits beside them in the draft, so that the rest of the house goes on being worked out.
 */
final class MonthCells {

    static final String MEANS = "/site/monthlyMeanTemp";
    /** Where unfinished means wait; the plan's reader passes it by. */
    static final String BEGUN = "/site/monthlyMeanTempBegun";

    private final HousePage desk;
    private final List<Entry> entries = new ArrayList<>();
    private final Element said = Dom.text("p", "said", "").setAttribute("role", "status");
    private final Element element;

    MonthCells(HousePage desk) {
        this.desk = desk;
        Element cells = Dom.el("div", "months");
        for (int m = 0; m < 12; m++) {
            int month = m;
            Entry entry =
                    new Entry("month-" + m, "Mean of " + Climate.MONTHS.get(m), "in r", typed -> typed(month, typed));
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
        return new EntryAddress(MEANS + "/" + month, Shown.TEMPERATURE.unit(desk.units()));
    }

    private List<String> texts() {
        JsonNode full = desk.session().at(MEANS);
        JsonNode there = full.isArray() ? full : desk.session().at(BEGUN);
        List<String> out = new ArrayList<>();
        for (int m = 0; m < 12; m++) {
            out.add(there.path(m).asText(""));
        }
        return out;
    }

    void typed(int month, String text) {
        List<String> texts = texts();
        texts.set(month, text.isBlank() ? "" : address(month).stored(text));
        desk.session().type(MEANS + "/" + month, d -> write(d, texts));
    }

    /** Writes twelve means: as the plan's where each can be read, else beside them. */
    static void write(ObjectNode draft, List<String> texts) {
        ArrayNode list = JsonNodeFactory.instance.arrayNode();
        texts.forEach(list::add);
        boolean none = texts.stream().allMatch(String::isBlank);
        boolean all = texts.stream().allMatch(MonthCells::reads);
        DraftTree.remove(draft, all ? BEGUN : MEANS);
        if (none) {
            DraftTree.remove(draft, BEGUN);
        } else {
            DraftTree.put(draft, all ? MEANS : BEGUN, list);
        }
    }

    private static boolean reads(String text) {
        return wrong(text).isEmpty() && !text.isBlank();
    }

    private static Optional<String> wrong(String text) {
        if (text.isBlank()) {
            return Optional.empty();
        }
        try {
            Measure.TEMPERATURE.read(text);
            return Optional.empty();
        } catch (NotAQuantity e) {
            return Optional.of(String.valueOf(e.getMessage()));
        }
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
            Optional<String> wrong = wrong(texts.get(m));
            if (wrong.isPresent()) {
                entry.wrong(wrong.get());
            } else {
                entry.understood("");
            }
            lacking += reads(texts.get(m)) ? 0 : 1;
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
