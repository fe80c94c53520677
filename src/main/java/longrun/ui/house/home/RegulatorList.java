package longrun.ui.house.home;

import com.vaadin.flow.dom.Element;
import java.util.List;
import longrun.draft.entry.DraftValue;
import longrun.quantity.Pressure;
import longrun.quantity.Quantity;
import longrun.ui.field.FieldList;
import longrun.ui.field.QuantityField;
import longrun.ui.frame.Dom;
import longrun.ui.place.HousePage;
import longrun.words.DisplayUnits;
import longrun.words.RegulatorNames;

/** The regulators a picture has filled in: what each is set to, and, folded up, what its tag and its place say. */
final class RegulatorList {

    private static final String REGULATORS = "/regulators";

    private final HousePage desk;
    private final FieldList fields;
    private final Element blocks = Dom.el("div", "blocks two-up");
    private String shown = "";

    RegulatorList(HousePage desk, FieldList fields) {
        this.desk = desk;
        this.fields = fields;
    }

    Element element() {
        return blocks;
    }

    /** Draws the blocks anew where the regulators changed; true where they did. */
    boolean draw() {
        DraftValue all = desk.session().at(REGULATORS);
        StringBuilder key = new StringBuilder();
        all.forEach(r ->
                key.append(r.textOf("id")).append(' ').append(r.textOf("kind")).append(';'));
        if (key.toString().equals(shown)) {
            return false;
        }
        shown = key.toString();
        blocks.removeAllChildren();
        fields.removeBelow(REGULATORS);
        for (int i = 0; i < all.size(); i++) {
            blocks.appendChild(block(
                    REGULATORS + "/" + i, all.get(i).textOf("id"), all.get(i).textOf("kind")));
        }
        return true;
    }

    private Element block(String at, String id, String kind) {
        DisplayUnits<Pressure> outlet = List.of("first-stage", "two-psi").contains(kind)
                ? DisplayUnits.LINE_PRESSURE
                : DisplayUnits.APPLIANCE_PRESSURE;
        Element tag = Dom.el(
                "div",
                "grid",
                quantity(at + "/capacity", "Capacity", "On its tag, for propane.", DisplayUnits.HEAT, ""),
                quantity(
                        at + "/capacityAtInlet",
                        "Capacity is at an inlet of",
                        "On its tag.",
                        DisplayUnits.LINE_PRESSURE,
                        ""),
                quantity(
                        at + "/minInlet",
                        "Least inlet at its load",
                        "From its data sheet.",
                        DisplayUnits.LINE_PRESSURE,
                        ""),
                quantity(
                        at + "/droopAtCapacity", "Falls at full capacity by", "Its droop.", outlet, "it does not fall"),
                quantity(
                        at + "/lockUp",
                        "Locks up at, of its setting",
                        "Its outlet with nothing firing; 120 % where the sheet is silent.",
                        DisplayUnits.SHARE,
                        ""));
        if (kind.equals("line")) {
            tag.appendChild(quantity(
                    at + "/lossAtLoad",
                    "Loses at its load",
                    "From its data sheet.",
                    DisplayUnits.APPLIANCE_PRESSURE,
                    ""));
        }
        return Dom.el(
                "div",
                "block",
                Dom.text("h4", "", id + ", " + RegulatorNames.of(kind)),
                Dom.el(
                        "div",
                        "grid",
                        quantity(at + "/outlet", "Set to", "On the regulator\u2019s tag.", outlet, ""),
                        quantity(
                                at + "/allowedDrop",
                                "Drop its pipe may use",
                                "0.5 in. w.c. after 11; 1 psi in a 2 or 10 psi line.",
                                outlet,
                                "")),
                Dom.el("details", "more", Dom.text("summary", "", "More from its tag"), tag));
    }

    private <Q extends Quantity> Element quantity(
            String pointer, String label, String help, DisplayUnits<Q> unit, String none) {
        return fields.add(new QuantityField<>(desk, pointer, label, help, unit, true, none))
                .element();
    }
}
