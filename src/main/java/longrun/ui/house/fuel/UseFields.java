package longrun.ui.house.fuel;

import com.vaadin.flow.dom.Element;
import java.util.List;
import longrun.draft.Climate;
import longrun.draft.entry.DraftAppliances;
import longrun.draft.entry.MonthsOfUse;
import longrun.draft.entry.SingleOrList;
import longrun.ui.field.ChoiceField;
import longrun.ui.field.Field;
import longrun.ui.field.FieldList;
import longrun.ui.field.NumberField;
import longrun.ui.field.QuantityField;
import longrun.ui.frame.Dom;
import longrun.ui.place.HousePage;
import longrun.words.DisplayUnits;

/** What burns gas and how much of it: heating, hot water, and the rest. */
final class UseFields {

    private static final String OTHERS = "/use/others";

    private final HousePage desk;
    private final FieldList fields;
    private final Element heating = Dom.el("div", "blocks");
    private final Element others = Dom.el("div", "blocks");
    private List<String> heatingShown = List.of();
    private int othersShown = -1;

    UseFields(HousePage desk, FieldList fields) {
        this.desk = desk;
        this.fields = fields;
    }

    Element heating() {
        return Dom.el(
                "div",
                "",
                heating,
                Dom.el(
                        "div",
                        "grid",
                        quantity(
                                "/use/indoorTemp",
                                "Indoors",
                                "68 \u00b0F is taken where none is written; common practice.",
                                DisplayUnits.TEMPERATURE)));
    }

    Element others() {
        Element add = Dom.button("act", "Add a use");
        add.addEventListener("click", e -> addOther());
        return Dom.el("div", "", others, Dom.el("div", "acts", add));
    }

    void addOther() {
        desk.session().change(d -> SingleOrList.addItem(d, OTHERS));
    }

    private void remove(int index) {
        othersShown = -1;
        desk.session().remove(OTHERS + "/" + index);
    }

    /** Draws blocks anew where their number changed; true where it did. */
    boolean draw() {
        boolean fresh = drawHeating();
        int now = desk.session().at(OTHERS).size();
        if (now != othersShown && !desk.session().at(OTHERS).isObject()) {
            othersShown = now;
            fields.removeBelow(OTHERS);
            others.removeAllChildren();
            for (int i = 0; i < now; i++) {
                others.appendChild(other(i));
            }
            fresh = true;
        }
        return fresh;
    }

    private boolean drawHeating() {
        List<String> bases = SingleOrList.of(desk.session().draft(), "/use/heating");
        if (bases.equals(heatingShown)) {
            return false;
        }
        heatingShown.forEach(fields::removeBelow);
        heatingShown = bases;
        heating.removeAllChildren();
        for (String at : bases) {
            heating.appendChild(Dom.el(
                    "div",
                    "grid",
                    appliance(at + "/appliance", "Heated by"),
                    quantity(
                            at + "/designLoad",
                            "The house loses",
                            "At the winter design temperature; from a heat loss calculation.",
                            DisplayUnits.HEAT),
                    quantity(
                            at + "/efficiency",
                            "Efficiency",
                            "On the yellow label, as a share of the heat.",
                            DisplayUnits.SHARE),
                    quantity(
                            at + "/balanceTemp",
                            "No heat is needed above",
                            "Where none is written 65 \u00b0F, the base of published degree days; the year then reads"
                                    + " high.",
                            DisplayUnits.TEMPERATURE)));
        }
        return true;
    }

    private Element other(int i) {
        String at = OTHERS + "/" + i;
        Element remove = Dom.button("ask", "Remove this use");
        remove.addEventListener("click", e -> remove(i));
        NumberField hours = fields.add(new NumberField(
                desk, at + "/hoursPerDay", "or hours a day", "At full input, or at the share beside it."));
        return Dom.el(
                "div",
                "block",
                Dom.el(
                        "div",
                        "grid",
                        appliance(at + "/appliance", "Burnt by"),
                        quantity(
                                at + "/volumePerYear",
                                "Gas a year",
                                "A range burns about 35 gal a year; common practice.",
                                DisplayUnits.GALLONS),
                        hours.element(),
                        quantity(
                                at + "/load",
                                "at this share of its input",
                                "All of it, where nothing is written.",
                                DisplayUnits.SHARE)),
                months(at),
                remove);
    }

    /** The months it burns in, each a switch; with none chosen it burns all year. */
    private Element months(String at) {
        Element row = Dom.el("div", "ans many")
                .setAttribute("role", "group")
                .setAttribute("aria-label", "Months it burns in; none chosen is all year");
        for (int m = 1; m <= 12; m++) {
            int month = m;
            boolean on = MonthsOfUse.has(desk.session().at(at), month);
            Element button = Dom.button(on ? "on" : "", Climate.MONTHS.get(m - 1))
                    .setAttribute("aria-pressed", String.valueOf(on));
            button.addEventListener("click", e -> {
                boolean was = MonthsOfUse.has(desk.session().at(at), month);
                Dom.setClass(button, "on", !was);
                button.setAttribute("aria-pressed", String.valueOf(!was));
                desk.session().change(d -> MonthsOfUse.toggle(d, at, month));
            });
            row.appendChild(button);
        }
        return row;
    }

    private <Q extends longrun.quantity.Quantity> Element quantity(
            String at, String label, String help, DisplayUnits<Q> shown) {
        return add(new QuantityField<>(desk, at, label, help, shown, true, ""));
    }

    private Element appliance(String at, String label) {
        return add(new ChoiceField(
                desk,
                at,
                label,
                "not chosen yet",
                () -> DraftAppliances.of(desk.session().draft()).byId()));
    }

    private Element add(Field field) {
        return fields.add(field).element();
    }
}
