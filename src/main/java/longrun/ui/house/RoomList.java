package longrun.ui.house;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.vaadin.flow.dom.Element;
import java.util.LinkedHashMap;
import java.util.Map;
import longrun.ui.frame.Dom;

/** The rooms that hold appliances, a block each. */
final class RoomList {

    private static final String ROOMS = "/rooms";
    private static final Map<String, String> KINDS = new LinkedHashMap<>();

    static {
        KINDS.put("garage", "garage");
        KINDS.put("bedroom", "bedroom");
        KINDS.put("bath", "bath");
        KINDS.put("other", "another room");
    }

    private final HouseDesk desk;
    private final FieldList fields;
    private final Element blocks = Dom.el("div", "blocks");
    private final Element add = Dom.button("act", "Add a room");
    private final Element element = Dom.el("div", "", blocks, Dom.el("p", "acts", add));
    private int shown = -1;

    RoomList(HouseDesk desk, FieldList fields) {
        this.desk = desk;
        this.fields = fields;
        add.addEventListener("click", e -> add());
    }

    Element element() {
        return element;
    }

    void add() {
        String id = FreeId.of(desk.session().draft(), "room");
        int index =
                desk.session().add(ROOMS, JsonNodeFactory.instance.objectNode().put("id", id));
        fields.focus(ROOMS + "/" + index + "/name");
    }

    /** Draws the blocks anew where their number changed; true where it did. */
    boolean draw() {
        int now = desk.session().at(ROOMS).size();
        if (now == shown) {
            return false;
        }
        shown = now;
        blocks.removeAllChildren();
        fields.removeBelow(ROOMS);
        for (int i = 0; i < now; i++) {
            blocks.appendChild(block(i));
        }
        return true;
    }

    private Element block(int i) {
        String at = ROOMS + "/" + i;
        Element remove = Dom.button("ask", "Remove this room");
        remove.addEventListener("click", e -> remove(i));
        return Dom.el(
                "div",
                "block",
                Dom.el(
                        "div",
                        "grid",
                        fields.add(new WordsField(desk, at + "/name", "Room", "Such as: utility room."))
                                .element(),
                        fields.add(AnswerField.of(desk, at + "/kind", "It is a", KINDS))
                                .element(),
                        fields.add(new QuantityField<>(
                                        desk,
                                        at + "/volume",
                                        "Volume",
                                        "Length times width times height; a burner needs air.",
                                        Shown.ROOM_VOLUME,
                                        true,
                                        ""))
                                .element(),
                        fields.add(new QuantityField<>(
                                        desk,
                                        at + "/infiltration",
                                        "Air that leaks in",
                                        "From a blower test; few houses have one.",
                                        Shown.AIR_CHANGE,
                                        true,
                                        ""))
                                .element(),
                        fields.add(AnswerField.yesNo(desk, at + "/belowGrade", "Its floor is below the ground outside"))
                                .element()),
                remove);
    }

    void remove(int index) {
        String id = desk.session().text(ROOMS + "/" + index + "/id");
        shown = -1;
        desk.session().change(d -> {
            DraftTree.remove(d, ROOMS + "/" + index);
            // An appliance in a room that is gone stands in no room yet.
            d.path("appliances").forEach(a -> {
                if (a instanceof com.fasterxml.jackson.databind.node.ObjectNode appliance
                        && appliance.path("room").asText().equals(id)) {
                    appliance.remove("room");
                }
            });
        });
    }
}
