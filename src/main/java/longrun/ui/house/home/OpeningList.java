package longrun.ui.house.home;

import com.vaadin.flow.dom.Element;
import java.util.LinkedHashMap;
import java.util.Map;
import longrun.draft.entry.DraftValue;
import longrun.ui.field.AnswerField;
import longrun.ui.field.AnsweredList;
import longrun.ui.field.ChoiceField;
import longrun.ui.field.FieldList;
import longrun.ui.field.QuantityField;
import longrun.ui.place.HousePage;
import longrun.words.DisplayUnits;

/** A room's openings for air: each with where it leads and its free area, or that there is none, or that nobody knows. */
public final class OpeningList {

    private static final Map<String, String> COVERS = new LinkedHashMap<>();

    static {
        COVERS.put("none", "no, this is its free area");
        COVERS.put("metal", "a metal louvre, measured over all");
        COVERS.put("wood", "a wooden louvre, measured over all");
    }

    private final HousePage desk;
    private final FieldList fields;
    private final String room;
    private final AnsweredList list;

    OpeningList(HousePage desk, FieldList fields, String room) {
        this.desk = desk;
        this.fields = fields;
        this.room = room;
        list = new AnsweredList(
                desk,
                fields,
                room + "/openings",
                "Openings for air",
                "there is none",
                "Add an opening",
                "Remove this opening",
                this::block);
    }

    Element element() {
        return list.element();
    }

    /** Draws the openings anew where their number changed; true where it did. */
    boolean draw() {
        return list.draw();
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
                            DisplayUnits.AREA,
                            true,
                            ""))
                    .element(),
            fields.add(AnswerField.of(desk, at + "/louvre", "A louvre over it takes some", COVERS))
                    .element()
        };
    }

    private Map<String, String> places() {
        Map<String, String> out = new LinkedHashMap<>();
        out.put("outdoors", "outdoors");
        out.put("horizontal-duct", "outdoors by a level duct");
        for (DraftValue other : desk.session().at("/rooms")) {
            String id = other.textOf("id");
            if (!id.isEmpty() && !id.equals(desk.session().text(room + "/id"))) {
                String name = other.textOf("name");
                out.put(id, "into " + (name.isBlank() ? id : name));
            }
        }
        out.put("indoors", "into the rest of the house");
        return out;
    }
}
