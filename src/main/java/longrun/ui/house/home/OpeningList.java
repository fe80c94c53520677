package longrun.ui.house.home;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.vaadin.flow.dom.Element;
import java.util.LinkedHashMap;
import java.util.Map;
import longrun.draft.DraftTree;
import longrun.ui.field.BlockList;
import longrun.ui.field.ChoiceField;
import longrun.ui.field.Field;
import longrun.ui.field.FieldList;
import longrun.ui.field.QuantityField;
import longrun.ui.frame.Dom;
import longrun.ui.place.HousePage;
import longrun.words.Shown;

/** A room's openings for air: each with where it leads and its free area, or that there is none, or that nobody knows. */
public final class OpeningList {

    private final HousePage desk;
    private final FieldList fields;
    private final String room;
    private final String pointer;
    private final BlockList list;
    private final Element none = Dom.button("", "there is none");
    private final Element unknown = Dom.button("", "I don\u2019t know");
    private final Element element;

    OpeningList(HousePage desk, FieldList fields, String room) {
        this.desk = desk;
        this.fields = fields;
        this.room = room;
        this.pointer = room + "/openings";
        list = new BlockList(
                desk,
                fields,
                pointer,
                "Add an opening",
                "Remove this opening",
                this::block,
                item -> {},
                // The last one taken away leaves the question open, not a none that nobody has said.
                (d, at) -> DraftTree.remove(d, d.at(pointer).size() > 1 ? at : pointer));
        none.addEventListener("click", e -> answerNone());
        unknown.addEventListener("click", e -> desk.session().remove(pointer));
        Element answers = Dom.el("div", "ans", unknown, none)
                .setAttribute("role", "group")
                .setAttribute("aria-label", "Openings for air: without a figure");
        element = Dom.el(
                        "fieldset",
                        "fld openings",
                        Dom.text("legend", "lab", "Openings for air"),
                        answers,
                        list.blocks(),
                        list.adds())
                .setAttribute("id", Field.id(pointer));
    }

    Element element() {
        return element;
    }

    /** Looked; there is none. */
    public void answerNone() {
        desk.session().change(d -> DraftTree.put(d, pointer, JsonNodeFactory.instance.arrayNode()));
    }

    public void add() {
        list.add();
    }

    public void remove(int index) {
        list.remove(index);
    }

    /** Draws the openings anew where their number changed; true where it did. */
    boolean draw() {
        JsonNode now = desk.session().at(pointer);
        boolean isNone = now.isArray() && now.isEmpty() || now.asText().equals("none");
        press(none, isNone);
        press(unknown, now.isMissingNode() || now.isNull());
        return list.draw();
    }

    private static void press(Element button, boolean on) {
        button.setAttribute("aria-pressed", String.valueOf(on));
        Dom.setClass(button, "on", on);
    }

    private Element[] block(String at) {
        return new Element[] {
            fields.add(new ChoiceField(desk, at + "/to", "Leads", "I don\u2019t know", this::places))
                    .element(),
            fields.add(new QuantityField<>(
                            desk,
                            at + "/area",
                            "Free area",
                            "What a louvre or grille leaves open; its maker stamps it.",
                            Shown.AREA,
                            true,
                            ""))
                    .element()
        };
    }

    private Map<String, String> places() {
        Map<String, String> out = new LinkedHashMap<>();
        out.put("outdoors", "outdoors");
        for (JsonNode other : desk.session().at("/rooms")) {
            String id = other.path("id").asText("");
            if (!id.isEmpty() && !id.equals(desk.session().text(room + "/id"))) {
                String name = other.path("name").asText("");
                out.put(id, "into " + (name.isBlank() ? id : name));
            }
        }
        out.put("indoors", "into the rest of the house");
        return out;
    }
}
