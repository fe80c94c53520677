package longrun.ui.fill;

import com.vaadin.flow.dom.Element;
import java.util.List;
import java.util.Optional;
import longrun.draft.fill.FuelUse;
import longrun.draft.fill.MonthsText;
import longrun.quantity.HeatRate;
import longrun.quantity.Measure;
import longrun.quantity.NotAQuantity;
import longrun.quantity.Typed;
import longrun.ui.frame.Dom;
import longrun.ui.frame.Entry;
import longrun.ui.frame.PendingChoice;
import longrun.words.UnitSystem;

/** One line of what burns; under the selected line what helps to fill it in. */
final class FuelUseRow {

    private final int index;
    private final Element body = Dom.el("tbody", "");
    private final Element id = Dom.text("th", "id", "").setAttribute("scope", "row");
    private final Entry name;
    private final Entry input;
    private final Entry amount;
    private final Entry months;
    private final Entry efficiency;
    private final Element how = Dom.el("select", "in").setAttribute("data-column", "how");
    private final PendingChoice pending;
    private final Element unit = Dom.text("span", "u", "");
    private final Element byCold = Dom.text("span", "of", "by the cold");
    private final Element inputCell;
    private final Element gallons =
            Dom.text("td", "g", "").setAttribute("data-fig", "").setAttribute("data-l", "A year ");
    private final Element efficiencyNote = Dom.text("span", "", "");
    private final Element efficiencyTool;
    private final Element remove = Dom.button("ask", "Remove this line");
    private final Element onPaper = Dom.text("span", "paper-only of", "");

    FuelUseRow(int index, FillActions hand) {
        this.index = index;
        String letter = FuelUse.letter(index);
        name = entry(FuelUse.Column.NAME, "Line " + letter + ", what burns", "in", hand);
        name.getElement().setAttribute("placeholder", index == 0 ? "furnace" : "what else?");
        input = entry(FuelUse.Column.INPUT, "Line " + letter + ", input from the plate", "in r", hand);
        amount = entry(FuelUse.Column.AMOUNT, "Line " + letter + ", how much", "in r", hand);
        months = entry(FuelUse.Column.MONTHS, "Line " + letter + ", months", "in", hand);
        months.getElement().setAttribute("placeholder", "all year");
        efficiency = entry(FuelUse.Column.EFFICIENCY, "Line " + letter + ", efficiency of the heater", "in r", hand);
        how.setAttribute("aria-label", "Line " + letter + ", the basis of its use")
                .setAttribute("id", "how-" + index);
        for (FuelUse.Basis each : FuelUse.Basis.values()) {
            how.appendChild(Dom.text("option", "", each.title()).setAttribute("value", each.name()));
        }
        pending = new PendingChoice(how);
        how.addEventListener("change", e -> {
                    String value = e.getEventData().getString("element.value");
                    pending.heard(value);
                    hand.chose(index, FuelUse.Basis.valueOf(value));
                })
                .addEventData("element.value");
        remove.addEventListener("click", e -> hand.removedLine(index));
        body.addEventListener("focusin", e -> hand.inHand(index)).setFilter("!element.classList.contains('on')");
        inputCell = Dom.el("td", "ent inp", input.getElement());
        efficiencyTool =
                Dom.el("label", "", Dom.words("Efficiency"), efficiency.getElement(), Dom.words("%"), efficiencyNote);
        Element says = Dom.el(
                "div",
                "says",
                help("name", "What it is; the words on its plate will do."),
                help("input", "INPUT on the rating plate, propane line, with everything firing."),
                help(
                        "amount",
                        "What the house loses on the coldest day; or hours at full fire; or gallons from the bills."),
                help("months", "Sep to May, or Nov, Dec; blank for all year."),
                name.said(),
                input.said(),
                amount.said(),
                months.said(),
                efficiency.said());
        body.appendChild(
                Dom.el(
                        "tr",
                        "main",
                        id,
                        Dom.el("td", "nm", name.getElement(), onPaper),
                        inputCell,
                        Dom.el("td", "how", how).setAttribute("data-l", "Entered as"),
                        Dom.el("td", "ent amt", amount.getElement(), unit).setAttribute("data-l", "How much"),
                        Dom.el("td", "ent mon", months.getElement(), byCold).setAttribute("data-l", "Months"),
                        gallons),
                Dom.el(
                        "tr",
                        "under",
                        Dom.el("td", "", says, Dom.el("div", "tools", efficiencyTool, remove))
                                .setAttribute("colspan", "7")));
    }

    private Entry entry(FuelUse.Column column, String label, String classes, FillActions hand) {
        String lower = column.name().toLowerCase(java.util.Locale.ROOT);
        Entry made = new Entry(lower + "-" + index, label, classes, t -> hand.typed(index, column, t));
        made.getElement().setAttribute("data-column", lower).setAttribute("data-at", "BURNS " + index + " " + column);
        if (column != FuelUse.Column.NAME) {
            made.getElement().setAttribute("placeholder", " ");
        }
        return made;
    }

    private static Element help(String column, String says) {
        return Dom.text("p", "said help", says).setAttribute("data-for", column);
    }

    Element element() {
        return body;
    }

    Entry entry(FuelUse.Column column) {
        return switch (column) {
            case NAME -> name;
            case INPUT -> input;
            case AMOUNT -> amount;
            case MONTHS -> months;
            case EFFICIENCY -> efficiency;
        };
    }

    /** The line as typed; empty for the next one, which is not begun. */
    void show(Optional<FuelUse> line, UnitSystem units, boolean startingEfficiency) {
        Dom.retext(id, FuelUse.letter(index));
        FuelUse.Basis told = line.map(FuelUse::basis).orElse(FuelUse.Basis.GALLONS);
        pending.show(told.name(), false);
        boolean heats = told == FuelUse.Basis.HEATS;
        Dom.retext(unit, unit(told, units));
        Dom.show(months.getElement(), !heats);
        Dom.show(byCold, heats);
        Dom.show(efficiencyTool, heats);
        Dom.show(remove, line.isPresent());
        Dom.retext(remove, "Remove line " + FuelUse.letter(index));
        Dom.retext(
                efficiencyNote,
                startingEfficiency ? "starting value: an older heater; yours stands on its yellow label" : "");
        Dom.retext(
                onPaper,
                line.filter(l -> heats && !l.efficiency().isBlank())
                        .map(l -> "efficiency " + l.efficiency() + (startingEfficiency ? ", starting value" : ""))
                        .orElse(""));
        inputCell.setAttribute("data-l", "Input, " + units.heatUnit().name());
        Dom.setClass(body, "next", line.isEmpty());
        String stored = line.map(FuelUse::input).orElse("");
        input.understood(heat(stored, units, "Input"));
        amount.understood(heats ? heat(line.map(FuelUse::amount).orElse(""), units, "Loses") : "");
        months.understood(line.map(FuelUse::months)
                .filter(m -> !m.isBlank() && MonthsText.read(m).isPresent() && !m.equals(months.text()))
                .orElse(""));
        efficiency.understood("");
        if (line.filter(l -> !heats
                        && !l.months().isBlank()
                        && MonthsText.read(l.months()).isEmpty())
                .isPresent()) {
            months.wrong("write months as Sep to May, or Nov, Dec, or 11-2; blank for all year");
        }
        markWrong();
    }

    private static String unit(FuelUse.Basis how, UnitSystem units) {
        return switch (how) {
            case HEATS -> units.heatUnit().name();
            case HOURS -> "h";
            case GALLONS -> units == UnitSystem.CUSTOMARY ? "gal" : "L";
        };
    }

    private static String heat(String stored, UnitSystem units, String lead) {
        if (stored.isBlank()) {
            return "";
        }
        try {
            HeatRate h = Measure.HEAT_RATE.read(stored);
            return lead + " " + units.heat(h) + " " + units.heatUnit().name();
        } catch (NotAQuantity e) {
            return "";
        }
    }

    void markWrong() {
        boolean wrong = false;
        for (FuelUse.Column c : FuelUse.Column.values()) {
            wrong |= entry(c).isWrong();
        }
        Dom.setClass(body, "wrong", wrong);
    }

    void markInHand(boolean inHand) {
        Dom.setClass(body, "on", inHand);
    }

    void gallons(String words) {
        Dom.retext(gallons, words);
    }

    /**
     * Writes into the fields what the draft holds and they do not.
     *
     * @param typing the place a person is typing in, which is left alone
     */
    void write(Optional<FuelUse> line, UnitSystem units, String typing) {
        FuelUse.Basis told = line.map(FuelUse::basis).orElse(FuelUse.Basis.GALLONS);
        for (FuelUse.Column each : FuelUse.Column.values()) {
            if (typing.equals("BURNS " + index + " " + each)) {
                continue;
            }
            String stored = line.map(l -> l.stored(each)).orElse("");
            switch (each) {
                case NAME -> name.write(stored);
                case INPUT -> write(input, stored, units.heatUnit().name());
                case AMOUNT -> write(amount, stored, told == FuelUse.Basis.HOURS ? "" : unit(told, units));
                case EFFICIENCY -> write(efficiency, stored, "%");
                case MONTHS -> {
                    Optional<List<Integer>> read = MonthsText.read(months.text());
                    if (read.isEmpty() || !read.equals(MonthsText.read(stored))) {
                        months.write(stored);
                    }
                }
            }
        }
    }

    private static void write(Entry entry, String stored, String unit) {
        boolean stands =
                !entry.text().isBlank() && Typed.quantity(entry.text(), unit).equals(stored);
        if (!stands) {
            entry.write(unit.isEmpty() ? stored : Typed.inField(stored, unit));
        }
    }
}
