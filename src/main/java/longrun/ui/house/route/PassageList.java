package longrun.ui.house.route;

import com.vaadin.flow.dom.Element;
import java.util.LinkedHashMap;
import java.util.Map;
import longrun.ui.field.AnswerField;
import longrun.ui.field.AnsweredList;
import longrun.ui.field.ChoiceField;
import longrun.ui.field.Field;
import longrun.ui.field.FieldList;
import longrun.ui.frame.Dom;
import longrun.ui.place.HousePage;

/** What the selected section passes through; of an outside wall also whether sleeve and gap are as they must be. */
final class PassageList {

    private static final String WALL = "outside-wall";
    private static final Map<String, String> WHAT = new LinkedHashMap<>();

    static {
        WHAT.put(WALL, "an outside wall");
        WHAT.put("inside-wall", "an inside wall");
        WHAT.put("floor", "a floor or a ceiling");
        WHAT.put("air-duct", "an air duct");
        WHAT.put("chimney", "a chimney");
        WHAT.put("gas-vent", "a vent");
        WHAT.put("clothes-chute", "a chute");
        WHAT.put("dumbwaiter", "a dumbwaiter shaft");
        WHAT.put("elevator-shaft", "an elevator shaft");
    }

    private final HousePage desk;
    private final FieldList fields;
    private final String pointer;
    private final AnsweredList list;
    private final Map<String, Element> ofWalls = new LinkedHashMap<>();

    /** @param section pointer of the selected section */
    PassageList(HousePage desk, FieldList fields, String section) {
        this.desk = desk;
        this.fields = fields;
        this.pointer = section + "/passes";
        list = new AnsweredList(
                desk,
                fields,
                pointer,
                "What it passes through",
                "nothing",
                "Add what it passes",
                "Remove this passage",
                this::block);
    }

    Element element() {
        return list.element();
    }

    String pointer() {
        return pointer;
    }

    void focus() {
        list.focus();
    }

    /** Draws anew where their number changed, and asks of sleeve and gap where it is an outside wall; true where drawn. */
    boolean draw() {
        boolean fresh = list.draw();
        ofWalls.keySet().removeIf(at -> desk.session().at(at).isNothing());
        ofWalls.forEach(
                (at, asked) -> Dom.show(asked, desk.session().text(at + "/what").equals(WALL)));
        return fresh;
    }

    private Element[] block(String at) {
        Field sleeved = AnswerField.yesNo(desk, at + "/sleeved", "In a sleeve");
        Field sealed = AnswerField.yesNo(desk, at + "/sealed", "The gap round it is sealed");
        Field below = AnswerField.yesNo(desk, at + "/belowGrade", "Below the ground outside");
        Element wall = Dom.el(
                "div",
                "",
                fields.add(sleeved).element(),
                fields.add(sealed).element(),
                fields.add(below).element());
        ofWalls.put(at, wall);
        return new Element[] {
            fields.add(new ChoiceField(desk, at + "/what", "It passes", "I don\u2019t know", () -> WHAT))
                    .element(),
            wall
        };
    }
}
