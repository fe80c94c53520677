package longrun.ui.house;

import com.fasterxml.jackson.databind.JsonNode;
import com.vaadin.flow.dom.Element;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import longrun.quantity.Pressure;
import longrun.quantity.Quantity;
import longrun.ui.frame.Dom;

/** The regulators a picture has filled in: what each is set to, and, folded up, what its tag and its place say. */
final class RegulatorList {

    private static final String REGULATORS = "/regulators";
    private static final Map<String, String> SETTINGS = new LinkedHashMap<>();
    private static final Map<String, String> VENTS = new LinkedHashMap<>();

    static {
        SETTINGS.put("outdoors", "outdoors");
        SETTINGS.put("indoors", "indoors");
        VENTS.put("outdoors", "outdoors");
        VENTS.put("piped", "through a pipe to outdoors");
        VENTS.put("limiter", "through a vent limiter");
    }

    private final HouseDesk desk;
    private final FieldList fields;
    private final Element blocks = Dom.el("div", "blocks");
    private String shown = "";

    RegulatorList(HouseDesk desk, FieldList fields) {
        this.desk = desk;
        this.fields = fields;
    }

    Element element() {
        return blocks;
    }

    /** Draws the blocks anew where the regulators changed; true where they did. */
    boolean draw() {
        JsonNode all = desk.session().at(REGULATORS);
        StringBuilder key = new StringBuilder();
        all.forEach(r -> key.append(r.path("id").asText())
                .append(' ')
                .append(r.path("kind").asText())
                .append(';'));
        if (key.toString().equals(shown)) {
            return false;
        }
        shown = key.toString();
        blocks.removeAllChildren();
        fields.removeBelow(REGULATORS);
        for (int i = 0; i < all.size(); i++) {
            blocks.appendChild(block(
                    REGULATORS + "/" + i,
                    all.get(i).path("id").asText(),
                    all.get(i).path("kind").asText()));
        }
        return true;
    }

    private Element block(String at, String id, String kind) {
        Shown<Pressure> outlet =
                List.of("first-stage", "two-psi").contains(kind) ? Shown.LINE_PRESSURE : Shown.APPLIANCE_PRESSURE;
        Element tag = Dom.el(
                "div",
                "grid",
                quantity(at + "/capacity", "Capacity", "On its tag, for propane.", Shown.HEAT, ""),
                quantity(at + "/capacityAtInlet", "Capacity is at an inlet of", "On its tag.", Shown.LINE_PRESSURE, ""),
                quantity(at + "/minInlet", "Least inlet at its load", "From its data sheet.", Shown.LINE_PRESSURE, ""),
                quantity(
                        at + "/droopAtCapacity",
                        "Falls at full capacity by",
                        "Its droop.",
                        outlet,
                        "it does not fall"));
        Element place = kind.equals("line") ? linePlace(at) : ventPlace(at);
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
                Dom.el(
                        "details",
                        "more",
                        Dom.text("summary", "", "More from its tag, and where it stands"),
                        tag,
                        place));
    }

    private Element ventPlace(String at) {
        String far = "As measured; > 25 ft where it is far.";
        return Dom.el(
                "div",
                "grid",
                answer(at + "/setting", "It stands", SETTINGS),
                yesNo(at + "/underEaves", "Eaves keep rain and ice off it"),
                quantity(at + "/ventToOpening", "Its vent to an opening below it", far, Shown.LENGTH, "there is none"),
                quantity(at + "/ventToIgnition", "Its vent to a spark or flame", far, Shown.LENGTH, "there is none"),
                quantity(at + "/ventToIntake", "Its vent to an air intake", far, Shown.LENGTH, "there is none"),
                quantity(
                        at + "/ventToVentTerminal",
                        "Its vent to the end of an appliance\u2019s vent",
                        far,
                        Shown.LENGTH,
                        "there is none"));
    }

    private Element linePlace(String at) {
        return Dom.el(
                "div",
                "grid",
                answer(at + "/vent", "It breathes", VENTS),
                yesNo(at + "/access", "It can be reached"),
                yesNo(at + "/shutoffBefore", "A shutoff stands before it"),
                yesNo(at + "/teeBefore", "A capped tee for a gauge stands before it"),
                yesNo(at + "/teeAfter", "A capped tee for a gauge stands after it"),
                quantity(
                        at + "/lossAtLoad", "Loses at its load", "From its data sheet.", Shown.APPLIANCE_PRESSURE, ""));
    }

    private <Q extends Quantity> Element quantity(
            String pointer, String label, String help, Shown<Q> unit, String none) {
        return fields.add(new QuantityField<>(desk, pointer, label, help, unit, true, none))
                .element();
    }

    private Element answer(String pointer, String label, Map<String, String> answers) {
        return fields.add(AnswerField.of(desk, pointer, label, answers)).element();
    }

    private Element yesNo(String pointer, String label) {
        return fields.add(AnswerField.yesNo(desk, pointer, label)).element();
    }
}
