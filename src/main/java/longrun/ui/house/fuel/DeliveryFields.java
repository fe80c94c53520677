package longrun.ui.house.fuel;

import com.vaadin.flow.dom.Element;
import longrun.ui.field.BlockList;
import longrun.ui.field.DateField;
import longrun.ui.field.FieldList;
import longrun.ui.field.NumberField;
import longrun.ui.field.QuantityField;
import longrun.ui.frame.Dom;
import longrun.ui.place.HousePage;
import longrun.words.DisplayUnits;

/** The supplier: price, days ahead, weeks no truck can come, and the tickets of past deliveries. */
final class DeliveryFields {

    private static final String TICKETS = "/deliveries";
    private static final String CLOSED = "/site/unreachable";

    private final HousePage desk;
    private final FieldList fields;
    private final BlockList tickets;
    private final BlockList closed;

    DeliveryFields(HousePage desk, FieldList fields) {
        this.desk = desk;
        this.fields = fields;
        tickets = new BlockList(desk, fields, TICKETS, "Add a delivery ticket", "Remove this ticket", this::ticket)
                .inRows();
        closed = new BlockList(
                        desk, fields, CLOSED, "Add weeks when no truck can come", "Remove these weeks", this::spell)
                .inRows();
    }

    Element supplier() {
        return Dom.el(
                "div",
                "",
                Dom.el(
                        "div",
                        "grid",
                        fields.add(NumberField.price(
                                        desk,
                                        "/use/pricePerGal",
                                        "Price of a gallon",
                                        "On the last ticket, such as 2.80."))
                                .element(),
                        fields.add(new NumberField(
                                        desk,
                                        "/site/leadDays",
                                        "Days from call to truck",
                                        "Ask in winter, not in summer."))
                                .element(),
                        fields.add(new QuantityField<>(
                                        desk,
                                        "/use/heatingValue",
                                        "Heat in a gallon",
                                        "91,502 Btu/gal where none is written; a handbook\u2019s figure, from a secondary source.",
                                        DisplayUnits.HEATING_VALUE,
                                        true,
                                        ""))
                                .element()),
                closed.blocks(),
                closed.adds());
    }

    Element tickets() {
        return Dom.el("div", "", tickets.blocks(), tickets.adds());
    }

    boolean draw() {
        boolean fresh = tickets.draw();
        fresh |= closed.draw();
        return fresh;
    }

    private Element[] ticket(String at) {
        return new Element[] {
            fields.add(new DateField(desk, at + "/date", "Delivered on", "Such as Feb 3 2026, or 2026-02-03."))
                    .element(),
            fields.add(new QuantityField<>(
                            desk,
                            at + "/volume",
                            "Delivered",
                            "Gallons on the ticket, at 60 \u00b0F.",
                            DisplayUnits.GALLONS,
                            false,
                            ""))
                    .element()
        };
    }

    private Element[] spell(String at) {
        return new Element[] {
            fields.add(DateField.everyYear(desk, at + "/from", "No truck from", "Such as Jan 10, or 01-10."))
                    .element(),
            fields.add(DateField.everyYear(desk, at + "/to", "to", "Such as Jan 31, or 01-31."))
                    .element()
        };
    }
}
