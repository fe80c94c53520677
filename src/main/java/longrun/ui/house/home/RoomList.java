package longrun.ui.house.home;

import com.vaadin.flow.dom.Element;
import java.util.LinkedHashMap;
import java.util.Map;
import longrun.draft.entry.EntryReferences;
import longrun.draft.entry.FreeId;
import longrun.draft.entry.NewItem;
import longrun.ui.field.AnswerField;
import longrun.ui.field.BlockList;
import longrun.ui.field.FieldList;
import longrun.ui.field.QuantityField;
import longrun.ui.field.WordsField;
import longrun.ui.frame.Dom;
import longrun.ui.place.HousePage;
import longrun.words.DisplayUnits;

/** The rooms that hold appliances, a block each. */
public final class RoomList {

    private static final String ROOMS = "/rooms";
    private static final Map<String, String> KINDS = new LinkedHashMap<>();

    static {
        KINDS.put("garage", "garage");
        KINDS.put("bedroom", "bedroom");
        KINDS.put("bath", "bath");
        KINDS.put("other", "another room");
    }

    private final HousePage desk;
    private final FieldList fields;
    private final BlockList list;
    private final Map<String, OpeningList> openings = new LinkedHashMap<>();
    private final Map<String, AirSums> sums = new LinkedHashMap<>();
    private final Element element;

    RoomList(HousePage desk, FieldList fields) {
        this.desk = desk;
        this.fields = fields;
        list = new BlockList(
                desk,
                fields,
                ROOMS,
                "Add a room",
                "Remove this room",
                this::block,
                () -> NewItem.of("id", FreeId.of(desk.session().draft(), "room")),
                EntryReferences::takeRoom);
        element = Dom.el("div", "", list.blocks(), list.adds());
    }

    Element element() {
        return element;
    }

    /** Draws the blocks anew where their number changed; true where it did. */
    boolean draw() {
        boolean fresh = list.draw();
        openings.keySet().removeIf(at -> desk.session().at(at).isNothing());
        for (OpeningList each : openings.values()) {
            fresh |= each.draw();
        }
        sums.keySet().removeIf(at -> desk.session().at(at).isNothing());
        sums.values().forEach(AirSums::show);
        return fresh;
    }

    private Element[] block(String at) {
        OpeningList air = new OpeningList(desk, fields, at);
        openings.put(at, air);
        return new Element[] {
            fields.add(new WordsField(desk, at + "/name", "Room", "Such as: utility room."))
                    .element(),
            fields.add(AnswerField.of(desk, at + "/kind", "It is a", KINDS)).element(),
            fields.add(new QuantityField<>(
                            desk,
                            at + "/volume",
                            "Volume",
                            "Length times width times height; a burner needs air.",
                            DisplayUnits.ROOM_VOLUME,
                            true,
                            ""))
                    .element(),
            fields.add(new QuantityField<>(
                            desk,
                            at + "/infiltration",
                            "Air that leaks in",
                            "From a blower test; few houses have one.",
                            DisplayUnits.AIR_CHANGE,
                            true,
                            ""))
                    .element(),
            fields.add(AnswerField.yesNo(desk, at + "/belowGrade", "Its floor is below the ground outside"))
                    .element(),
            air.element(),
            sums(at)
        };
    }

    private Element sums(String at) {
        AirSums own = new AirSums(desk, at);
        sums.put(at, own);
        return own.element();
    }
}
