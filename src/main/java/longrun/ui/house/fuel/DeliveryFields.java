package longrun.ui.house.fuel;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.vaadin.flow.dom.Element;
import longrun.ui.frame.Dom;
import longrun.ui.house.FieldList;
import longrun.ui.house.HouseDesk;
import longrun.ui.house.NumberField;
import longrun.ui.house.QuantityField;
import longrun.ui.house.Shown;
import longrun.ui.house.WordsField;

/** The supplier: price, days ahead, weeks no truck can come, and the tickets of past deliveries. */
final class DeliveryFields {

    private static final String TICKETS = "/deliveries";
    private static final String CLOSED = "/site/unreachable";

    private final HouseDesk desk;
    private final FieldList fields;
    private final Element tickets = Dom.el("div", "blocks");
    private final Element closed = Dom.el("div", "blocks");
    private int ticketsShown = -1;
    private int closedShown = -1;

    DeliveryFields(HouseDesk desk, FieldList fields) {
        this.desk = desk;
        this.fields = fields;
    }

    Element supplier() {
        Element add = Dom.button("act", "Add weeks without truck");
        add.addEventListener("click", e -> addClosed());
        return Dom.el(
                "div",
                "",
                Dom.el(
                        "div",
                        "grid",
                        fields.add(new NumberField(
                                        desk, "/use/pricePerGal", "Price of a gallon", "On the last ticket."))
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
                                        "91,502 Btu/gal where none is written; a handbook\u2019s figure, held as secondary.",
                                        Shown.HEATING_VALUE,
                                        true,
                                        ""))
                                .element()),
                closed,
                Dom.el("div", "acts", add));
    }

    Element tickets() {
        Element add = Dom.button("act", "Add a delivery ticket");
        add.addEventListener("click", e -> addTicket());
        return Dom.el("div", "", tickets, Dom.el("div", "acts", add));
    }

    void addTicket() {
        desk.session().add(TICKETS, JsonNodeFactory.instance.objectNode());
    }

    void addClosed() {
        desk.session().add(CLOSED, JsonNodeFactory.instance.objectNode());
    }

    boolean draw() {
        boolean fresh = false;
        JsonNode t = desk.session().at(TICKETS);
        if (t.size() != ticketsShown) {
            ticketsShown = t.size();
            fields.removeBelow(TICKETS);
            tickets.removeAllChildren();
            for (int i = 0; i < ticketsShown; i++) {
                tickets.appendChild(ticket(i));
            }
            fresh = true;
        }
        JsonNode c = desk.session().at(CLOSED);
        if (c.size() != closedShown) {
            closedShown = c.size();
            fields.removeBelow(CLOSED);
            closed.removeAllChildren();
            for (int i = 0; i < closedShown; i++) {
                closed.appendChild(spell(i));
            }
            fresh = true;
        }
        return fresh;
    }

    private Element ticket(int i) {
        String at = TICKETS + "/" + i;
        return block(
                "Remove this ticket",
                () -> {
                    ticketsShown = -1;
                    desk.session().remove(at);
                },
                fields.add(new WordsField(desk, at + "/date", "Delivered on", "Year-month-day, such as 2026-02-03."))
                        .element(),
                fields.add(new QuantityField<>(
                                desk,
                                at + "/volume",
                                "Delivered",
                                "Gallons on the ticket, at 60 \u00b0F.",
                                Shown.GALLONS,
                                false,
                                ""))
                        .element());
    }

    private Element spell(int i) {
        String at = CLOSED + "/" + i;
        return block(
                "Remove these weeks",
                () -> {
                    closedShown = -1;
                    desk.session().remove(at);
                },
                fields.add(new WordsField(desk, at + "/from", "No truck from", "Month-day, such as 01-10."))
                        .element(),
                fields.add(new WordsField(desk, at + "/to", "to", "Month-day, such as 01-31."))
                        .element());
    }

    private static Element block(String removes, Runnable does, Element... content) {
        Element remove = Dom.button("ask", removes);
        remove.addEventListener("click", e -> does.run());
        return Dom.el("div", "block", Dom.el("div", "grid", content), remove);
    }
}
