package longrun.ui.house.hotwater;

import com.vaadin.flow.dom.Element;
import java.util.LinkedHashMap;
import java.util.Map;
import longrun.draft.entry.DraftAppliances;
import longrun.quantity.Quantity;
import longrun.ui.field.AnswerField;
import longrun.ui.field.ChoiceField;
import longrun.ui.field.FieldList;
import longrun.ui.field.NumberField;
import longrun.ui.field.QuantityField;
import longrun.ui.frame.Dom;
import longrun.ui.place.HousePage;
import longrun.words.DisplayUnits;

/** Cold water, what is used, storage heater, on-demand heater, mixing valve. */
final class WaterFields {

    private static final String AT = "/use/hotWater";
    private static final String STORAGE = AT + "/storage";
    private static final String ON_DEMAND = AT + "/onDemand";

    private final HousePage desk;
    private final FieldList fields;
    private final Element storage;
    private final Element onDemand;

    WaterFields(HousePage desk, FieldList fields) {
        this.desk = desk;
        this.fields = fields;
        storage = storageFields();
        onDemand = onDemandFields();
    }

    Element used() {
        Map<String, String> ways = new LinkedHashMap<>();
        ways.put("series", "storage, then on-demand");
        ways.put("on-demand-only", "an on-demand heater alone");
        ways.put("storage-only", "a storage heater alone");
        Map<String, String> sources = new LinkedHashMap<>();
        sources.put("well", "a well");
        sources.put("mains", "town mains");
        return Dom.el(
                "div",
                "grid",
                fields.add(new ChoiceField(
                                desk, AT + "/arrangement", "Hot water comes from", "I don\u2019t know", () -> ways))
                        .element(),
                quantity(
                        AT + "/dailyVolume",
                        "Hot water a day",
                        "Mixed, at the taps; where none is written, by the people in the house.",
                        DisplayUnits.GALLONS),
                quantity(
                        AT + "/useTemp",
                        "As warm as",
                        "At the tap; 105 \u00b0F is common practice.",
                        DisplayUnits.TEMPERATURE),
                quantity(
                        AT + "/comfortTemp",
                        "Comfortable from",
                        "3 \u00b0F under that, where none is written.",
                        DisplayUnits.TEMPERATURE),
                fields.add(AnswerField.of(desk, "/site/coldWater/source", "Cold water comes from", sources))
                        .element(),
                quantity(
                        "/site/coldWater/temp",
                        "Cold water",
                        "As it comes from the tap; where none is entered, from the air\u2019s mean and the source.",
                        DisplayUnits.TEMPERATURE),
                quantity(
                        AT + "/mixingValve",
                        "The mixing valve is set to",
                        "120 \u00b0F at most; none, where there is none.",
                        DisplayUnits.TEMPERATURE),
                quantity(
                        AT + "/mixingValveApproach",
                        "Hot above mixed by",
                        "What the valve needs over what it delivers; 10 \u00b0F where none is written.",
                        DisplayUnits.TEMPERATURE),
                fields.add(NumberField.currentPrice(
                                desk,
                                "/use/pricePerKwh",
                                "Price of a kilowatt-hour",
                                "On the power bill, such as 0.14."))
                        .element());
    }

    private Element storageFields() {
        Map<String, String> rooms = new LinkedHashMap<>();
        rooms.put("heated", "a heated room");
        rooms.put("unheated", "an unheated room");
        rooms.put("ducted", "outdoors, by ducts");
        return Dom.el(
                "div",
                "grid",
                quantity(STORAGE + "/volume", "The storage heater holds", "On its plate.", DisplayUnits.GALLONS),
                quantity(
                        STORAGE + "/setTemp",
                        "It is set to",
                        "140 \u00b0F, so that Legionella cannot grow.",
                        DisplayUnits.TEMPERATURE),
                quantity(
                        STORAGE + "/heatPumpOutput",
                        "Its heat pump gives",
                        "Into the water, on its data sheet; not what it draws.",
                        DisplayUnits.HEAT),
                fields.add(new NumberField(
                                desk,
                                STORAGE + "/cop",
                                "Its COP",
                                "Heat into the water for each unit of current; on its data sheet, such as 2.5."))
                        .element(),
                quantity(
                        STORAGE + "/standbyLoss",
                        "It loses, standing",
                        "Through its shell for each degree; on its data sheet.",
                        DisplayUnits.HEAT_LOSS),
                fields.add(AnswerField.of(desk, STORAGE + "/room", "It takes its heat from", rooms))
                        .element(),
                quantity(
                        STORAGE + "/roomTemp",
                        "The air about it",
                        "Where the room is not heated.",
                        DisplayUnits.TEMPERATURE),
                quantity(
                        STORAGE + "/lockoutTemp",
                        "The heat pump rests below",
                        "Air temperature; in its manual.",
                        DisplayUnits.TEMPERATURE),
                quantity(
                        STORAGE + "/heatPumpMaxTemp",
                        "Hottest water it makes by heat pump",
                        "In its manual; hotter only by the element.",
                        DisplayUnits.TEMPERATURE),
                quantity(STORAGE + "/element", "Its element", "On its plate, such as 4.5 kW.", DisplayUnits.HEAT),
                fields.add(AnswerField.yesNo(desk, STORAGE + "/elementOn", "The element may come on"))
                        .element());
    }

    private Element onDemandFields() {
        return Dom.el(
                "div",
                "grid",
                fields.add(new ChoiceField(
                                desk,
                                ON_DEMAND + "/appliance",
                                "The on-demand heater is",
                                "not chosen yet",
                                () -> DraftAppliances.of(desk.session().draft()).byId()))
                        .element(),
                quantity(
                        ON_DEMAND + "/efficiency",
                        "Its efficiency",
                        "On its yellow label, as a share of the heat.",
                        DisplayUnits.SHARE),
                quantity(
                        ON_DEMAND + "/setTemp",
                        "It is set to",
                        "120 \u00b0F where none is written.",
                        DisplayUnits.TEMPERATURE),
                quantity(
                        ON_DEMAND + "/leastFire",
                        "Its least input",
                        "Beside INPUT on the rating plate; 15,000 Btu/h where none is written.",
                        DisplayUnits.HEAT),
                quantity(
                        ON_DEMAND + "/activation",
                        "It starts at",
                        "In its manual; 0.5 gal/min where none is written.",
                        DisplayUnits.FLOW),
                quantity(
                        ON_DEMAND + "/maxInletTemp",
                        "Hottest water let in",
                        "On its label or in its manual.",
                        DisplayUnits.TEMPERATURE));
    }

    Element storage() {
        return storage;
    }

    Element onDemand() {
        return onDemand;
    }

    /** Whether storage, and whether an on-demand heater, is asked for. */
    boolean asksForStorage() {
        return !desk.session().text(AT + "/arrangement").equals("on-demand-only");
    }

    boolean asksForOnDemand() {
        return !desk.session().text(AT + "/arrangement").equals("storage-only");
    }

    private <Q extends Quantity> Element quantity(String at, String label, String help, DisplayUnits<Q> shown) {
        return fields.add(new QuantityField<>(desk, at, label, help, shown, true, ""))
                .element();
    }
}
