package longrun.ui.house.route;

import com.vaadin.flow.dom.Element;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import longrun.plan.choice.Material;
import longrun.plan.choice.Named;
import longrun.plan.choice.Setting;
import longrun.quantity.Length;
import longrun.quantity.Measure;
import longrun.quantity.WireGauge;
import longrun.ui.field.AnswerField;
import longrun.ui.field.ChoiceField;
import longrun.ui.field.FieldList;
import longrun.ui.field.QuantityField;
import longrun.ui.frame.Dom;
import longrun.ui.house.figure.PlacePart;
import longrun.ui.place.HousePage;
import longrun.words.DisplayUnits;
import longrun.words.IsolatedName;
import org.jspecify.annotations.Nullable;

/** How the selected section is laid, joined and held: only what its material and its place can ask. */
final class SectionFacts {

    private static final DisplayUnits<WireGauge> WIRE = new DisplayUnits<>(Measure.WIRE, "AWG", "AWG", "0");
    private static final Map<String, String> TUBE = ordered("K", "K", "L", "L", "ACR", "ACR", "M", "M");
    static final Map<String, String> JOINTS = ordered(
            "brazed",
            "brazed",
            "flared",
            "flared",
            "press",
            "pressed",
            "soldered",
            "soft-soldered",
            "compression",
            "compression");
    private static final Map<String, String> JACKET =
            ordered("plain", "plain", "arc-resistant", "arc-resistant, so marked");
    private static final Map<String, String> CONCEALED = ordered(
            "none",
            "there are none",
            "threaded",
            "threaded elbows, tees or couplings",
            "brazed",
            "brazed joints",
            "press",
            "pressed joints",
            "listed",
            "fittings listed for it",
            "union",
            "a union",
            "compression",
            "a compression joint",
            "flare",
            "a flared joint",
            "bushing",
            "a bushing");

    private final HousePage desk;
    private final FieldList fields = new FieldList();
    private final Element title = Dom.text("h3", "", "How it is laid");
    private final Element blocks = Dom.el("div", "facts");
    private final Element element;
    private final LaidPicture picture;
    private String shown = "";
    private @Nullable PassageList passages;

    SectionFacts(HousePage desk) {
        this.desk = desk;
        picture = new LaidPicture(desk);
        element = PlacePart.folded("laid", title, "", picture.element(), blocks);
        Dom.setClass(element, "laid", true);
    }

    Element element() {
        return element;
    }

    FieldList fields() {
        return fields;
    }

    /** Puts the cursor where an entry is asked; false where it is not asked here. */
    boolean focus(String pointer) {
        PassageList list = passages;
        boolean passes = list != null && pointer.startsWith(list.pointer());
        if (fields.find(pointer).filter(f -> f.pointer().equals(pointer)).isPresent()) {
            fields.focus(pointer);
            return true;
        }
        if (list != null && passes) {
            list.focus();
        }
        return passes;
    }

    /** @param index of the selected section; nothing is asked where it stands in no line yet */
    void show(int index, boolean write) {
        String at = "/sections/" + index;
        String material = desk.session().text(at + "/material");
        String setting = desk.session().text(at + "/setting");
        String now = at + " " + material + " " + setting;
        boolean fresh = !now.equals(shown);
        if (fresh) {
            shown = now;
            fields.clear();
            blocks.removeAllChildren();
            passages = null;
            draw(at, material, setting);
        }
        fresh |= passages != null && passages.draw();
        Dom.retext(title, "How section " + IsolatedName.of(desk.session().text(at + "/id")) + " is laid");
        Dom.show(element, fields.count() > 0 || passages != null);
        fields.show(write || fresh);
        picture.show(index);
    }

    private void draw(String at, String material, String setting) {
        boolean plastic = is(material, Material.PE_PIPE) || is(material, Material.PE_TUBING);
        boolean copper = is(material, Material.COPPER);
        boolean csst = is(material, Material.CSST);
        boolean buried = is(setting, Setting.UNDERGROUND);
        boolean concealed = is(setting, Setting.CONCEALED);
        if (buried) {
            length(
                    at + "/depth",
                    "Cover over the pipe",
                    "From the top of the pipe to the ground above it.",
                    DisplayUnits.SHORT_LENGTH);
        }
        if (buried && plastic) {
            wire(at + "/tracerWire", "Tracer wire", "Insulated copper beside the pipe, reached at each end.");
        }
        if (buried && is(material, Material.STEEL)) {
            add(AnswerField.yesNo(desk, at + "/coated", "Coated against rust, its fittings too"));
        }
        if (copper) {
            add(AnswerField.of(desk, at + "/tube", "Type of tube", TUBE));
            choice(at + "/joints", "Joined", JOINTS);
        }
        if (csst) {
            add(AnswerField.of(desk, at + "/jacket", "Jacket", JACKET));
            wire(at + "/bonding", "Bonding wire", "Copper, from a clamp on rigid pipe to the grounding system.");
            length(at + "/bondingLength", "Length of the bonding wire", "", DisplayUnits.LENGTH);
        }
        if (concealed) {
            choice(at + "/fittingsConcealed", "Fittings inside walls, floors or ceilings", CONCEALED);
        }
        if (concealed && (csst || copper)) {
            length(
                    at + "/fromStuds",
                    "Behind the face of the framing",
                    "From the face of the stud to the pipe.",
                    DisplayUnits.SHORT_LENGTH);
            add(AnswerField.yesNo(desk, at + "/plates", "Steel plates where it is nearer"));
        }
        if (!setting.isEmpty()) {
            passages = new PassageList(desk, fields, at);
            blocks.appendChild(passages.element());
        }
        if (!buried && !setting.isEmpty() && !material.isEmpty() && !plastic && !csst) {
            length(at + "/supportEvery", "Held every", "The widest space between two supports.", DisplayUnits.LENGTH);
        }
    }

    private static boolean is(String written, Named value) {
        return written.equals(value.written());
    }

    private void length(String pointer, String label, String help, DisplayUnits<Length> unit) {
        add(new QuantityField<>(desk, pointer, label, help, unit, true, ""));
    }

    private void wire(String pointer, String label, String help) {
        add(new QuantityField<>(desk, pointer, label, help, WIRE, true, "there is none"));
    }

    private void choice(String pointer, String label, Map<String, String> choices) {
        add(new ChoiceField(desk, pointer, label, "not known", () -> choices));
    }

    private void add(longrun.ui.field.Field field) {
        blocks.appendChild(fields.add(field).element());
    }

    private static Map<String, String> ordered(String... pairs) {
        Map<String, String> out = new LinkedHashMap<>();
        List<String> all = List.of(pairs);
        for (int i = 0; i < all.size(); i += 2) {
            out.put(all.get(i), all.get(i + 1));
        }
        return out;
    }
}
