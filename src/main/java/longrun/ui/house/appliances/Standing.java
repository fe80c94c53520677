package longrun.ui.house.appliances;

import com.vaadin.flow.dom.Element;
import java.util.LinkedHashMap;
import java.util.Map;
import longrun.review.Review;
import longrun.rules.limit.State;
import longrun.ui.field.AnswerField;
import longrun.ui.field.Field;
import longrun.ui.field.FieldList;
import longrun.ui.field.QuantityField;
import longrun.ui.frame.Dom;
import longrun.ui.place.HousePage;
import longrun.words.Shown;

/** What is asked of an appliance by where it stands: only what the rules ask of one of its kind, vent and room. */
final class Standing {

    private static final Map<String, String> CONDENSATES = new LinkedHashMap<>();

    static {
        CONDENSATES.put("drained", "drained");
        CONDENSATES.put("neutralised", "neutralised, then drained");
        CONDENSATES.put("none", "none; it makes none");
    }

    private final HousePage desk;
    private final FieldList fields;
    private final String at;

    /** By the field's name: the rule that reads it, where the rule looks, and the field. */
    private final Map<String, Asked> asked = new LinkedHashMap<>();

    private final Element element;

    private record Asked(String rule, String place, Element field) {}

    Standing(HousePage desk, FieldList fields, String at) {
        this.desk = desk;
        this.fields = fields;
        this.at = at;
        Element grid = Dom.el("div", "grid");
        height(grid);
        toRegulator(grid);
        add(
                grid,
                "appliance-garage",
                "",
                distance(
                        "ignitionAboveFloor",
                        "Its spark or flame above the floor",
                        "In a garage: the lowest spark, switch or flame.",
                        "there is none"));
        add(grid, "condensate", "", AnswerField.of(desk, at + "/condensate", "Its condensate is", CONDENSATES));
        add(
                grid,
                "freeze-power",
                "",
                AnswerField.yesNo(desk, at + "/freezePower", "Its freeze protection works in an outage"));
        element = Dom.el("details", "more", Dom.text("summary", "", "More about where it stands"), grid);
    }

    private void height(Element grid) {
        add(
                grid,
                "vent-terminal",
                "/terminalAboveGrade",
                distance(
                        "terminalAboveGrade",
                        "End of its vent above the ground",
                        "From the ground up to the lowest edge of the opening.",
                        "no end outdoors"));
    }

    private void toRegulator(Element grid) {
        add(
                grid,
                "vent-terminal",
                "",
                distance(
                        "terminalToRegulator",
                        "End of its vent to a regulator\u2019s vent",
                        "As measured; > 25 ft where it is far.",
                        "there is none"));
    }

    private Field distance(String name, String label, String help, String none) {
        return new QuantityField<>(desk, at + "/" + name, label, help, Shown.LENGTH, true, none);
    }

    private void add(Element grid, String rule, String place, Field field) {
        grid.appendChild(fields.add(field).element());
        asked.put(field.pointer(), new Asked(rule, at + place, field.element()));
    }

    Element element() {
        return element;
    }

    /** Shows what can concern it; what is entered already stays in sight. */
    void show() {
        boolean any = false;
        for (Map.Entry<String, Asked> each : asked.entrySet()) {
            boolean shown = !desk.session().text(each.getKey()).isEmpty()
                    || desk.session()
                            .review()
                            .filter(r -> isFree(r, each.getValue()))
                            .isEmpty();
            Dom.show(each.getValue().field(), shown);
            any |= shown;
        }
        Dom.show(element, any);
    }

    /** Whether the rule has nothing to ask there. */
    private static boolean isFree(Review review, Asked asked) {
        return review.rules().states().stream()
                .filter(s -> s.rule().equals(asked.rule()) && s.pointer().equals(asked.place()))
                .anyMatch(s -> s.state() == State.NOT_FOR_THIS_PLAN);
    }
}
