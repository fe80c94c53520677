package longrun.ui.house.fuel;

import com.vaadin.flow.dom.Element;
import java.util.LinkedHashMap;
import java.util.Map;
import longrun.quantity.Quantity;
import longrun.ui.field.AnswerField;
import longrun.ui.field.FieldList;
import longrun.ui.field.NumberField;
import longrun.ui.field.QuantityField;
import longrun.ui.frame.Dom;
import longrun.ui.place.HousePage;
import longrun.words.Shown;

/** The storage heater beside the on-demand one: what it gives over a day is what the gas need not. */
final class StorageFields {

    private static final String AT = "/use/hotWater/storage";

    private final HousePage desk;
    private final FieldList fields;
    private final Element element;

    StorageFields(HousePage desk, FieldList fields) {
        this.desk = desk;
        this.fields = fields;
        Map<String, String> rooms = new LinkedHashMap<>();
        rooms.put("heated", "a heated room");
        rooms.put("unheated", "an unheated room");
        rooms.put("ducted", "outdoors, by ducts");
        element = Dom.el(
                "div",
                "grid",
                quantity("/volume", "The storage heater holds", "On its plate.", Shown.GALLONS),
                quantity("/setTemp", "It is set to", "140 \u00b0F is common practice.", Shown.TEMPERATURE),
                quantity(
                        "/heatPumpOutput",
                        "Its heat pump gives",
                        "Into the water, on its data sheet; not what it draws.",
                        Shown.HEAT),
                fields.add(new NumberField(
                                desk,
                                AT + "/cop",
                                "Its COP",
                                "Heat into the water for each unit of current; on its data sheet, such as 2.5."))
                        .element(),
                quantity(
                        "/standbyLoss",
                        "It loses, standing",
                        "Through its shell for each degree; on its data sheet.",
                        Shown.HEAT_LOSS),
                fields.add(AnswerField.of(desk, AT + "/room", "It takes its heat from", rooms))
                        .element(),
                quantity("/roomTemp", "The air about it", "Where the room is not heated.", Shown.TEMPERATURE));
    }

    private <Q extends Quantity> Element quantity(String entry, String label, String help, Shown<Q> shown) {
        return fields.add(new QuantityField<>(desk, AT + entry, label, help, shown, true, ""))
                .element();
    }

    Element element() {
        return element;
    }

    /** Asked for unless the on-demand heater makes all hot water. */
    void show() {
        Dom.show(element, !desk.session().text("/use/hotWater/arrangement").equals("on-demand-only"));
    }
}
