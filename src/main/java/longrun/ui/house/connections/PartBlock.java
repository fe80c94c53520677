package longrun.ui.house.connections;

import com.vaadin.flow.dom.Element;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import longrun.draft.entry.DraftValue;
import longrun.finding.Finding;
import longrun.ui.field.AnswerField;
import longrun.ui.field.ChoiceField;
import longrun.ui.field.Field;
import longrun.ui.field.FieldList;
import longrun.ui.field.QuantityField;
import longrun.ui.field.SizeField;
import longrun.ui.frame.Dom;
import longrun.ui.frame.NotSeenLine;
import longrun.ui.house.findings.FindingList;
import longrun.ui.place.HousePage;
import longrun.words.DisplayUnits;

/** One part of a connection: its name, which the arrow keys move, its facts, and beside them what is found at it. */
final class PartBlock {

    /** What a part is called, by the text stored. */
    static final Map<String, String> KINDS = new LinkedHashMap<>();

    private static final Map<String, String> PLACES = new LinkedHashMap<>();
    private static final Map<String, String> GASES = new LinkedHashMap<>();

    static {
        KINDS.put("shutoff", "Shutoff");
        KINDS.put("sediment-trap", "Sediment trap");
        KINDS.put("union", "Union");
        KINDS.put("rigid-pipe", "Rigid pipe");
        KINDS.put("flexible-connector", "Flexible connector");
        KINDS.put("built-in-trap", "Trap built into the appliance");
        PLACES.put("appliance", "at the appliance");
        PLACES.put("manifold", "at a manifold");
        PLACES.put("remote", "elsewhere");
        GASES.put("propane", "propane");
        GASES.put("natural", "natural gas");
    }

    private static final List<String> ON_THE_TAG = List.of("/capacity", "/capacityGas", "/ratedDrop");

    /** What the buttons and keys of a part do. */
    interface Hand {
        void move(int from, int to);

        void remove(int index);

        void markSeen(int index);
    }

    private final HousePage desk;
    private final FieldList fields;
    private final String at;
    private final int index;
    private final Element handle;
    private final NotSeenLine notSeen;
    private final FindingList finds;
    private final Element tagSays = Dom.el("summary", "");
    private final Element tag = Dom.el("details", "more");
    private final Element element = Dom.el("div", "part-b");

    PartBlock(HousePage desk, FieldList fields, String at, int index, int count, Hand hand) {
        this.desk = desk;
        finds = new FindingList(desk);
        this.fields = fields;
        this.at = at;
        this.index = index;
        DraftValue part = desk.session().at(at);
        String name = KINDS.getOrDefault(part.textOf("part"), "Part without a name");
        handle = Dom.el("button", "handle", Dom.text("span", "", String.valueOf(index + 1)), Dom.words(name))
                .setAttribute("type", "button")
                .setAttribute("id", handleId(at))
                .setAttribute("aria-describedby", "move-help");
        handle.addEventListener("keydown", e -> {
                    int to = index + (e.getEventData().getString("event.key").equals("ArrowLeft") ? -1 : 1);
                    if (to >= 0 && to < count) {
                        hand.move(index, to);
                    }
                })
                .setFilter("event.key == 'ArrowLeft' || event.key == 'ArrowRight'")
                .addEventData("event.key")
                .preventDefault();
        handle.addEventListener("keydown", e -> hand.markSeen(index))
                .setFilter(
                        "(event.key == 's' || event.key == 'S') && !event.ctrlKey && !event.metaKey && !event.altKey");
        notSeen = new NotSeenLine("seen", name, () -> hand.markSeen(index));
        Element moves = Dom.el("div", "moves");
        if (index > 0) {
            moves.appendChild(button("\u2190", name, "towards the pipe", () -> hand.move(index, index - 1)));
        }
        if (index < count - 1) {
            moves.appendChild(button("\u2192", name, "towards the burner", () -> hand.move(index, index + 1)));
        }
        moves.appendChild(button("remove", name, "remove", () -> hand.remove(index)));
        element.appendChild(Dom.el("div", "part-head", Dom.el("h4", "", handle), moves), notSeen.element());
        facts(part);
    }

    static String handleId(String at) {
        return "handle" + at.replace('/', '-');
    }

    private static Element button(String says, String part, String what, Runnable does) {
        Element b = Dom.button("ask", says).setAttribute("title", what).setAttribute("aria-label", part + ": " + what);
        b.addEventListener("click", e -> does.run());
        return b;
    }

    private void facts(DraftValue part) {
        switch (part.textOf("part")) {
            case "shutoff" -> {
                length("distance", "From the appliance", "The tape runs from the valve to the appliance.", "");
                yesNo("sameRoom", "In the appliance\u2019s room");
                yesNo("accessible", "A hand can reach it");
                add(AnswerField.of(desk, at + "/place", "It stands", PLACES));
                if (List.of("manifold", "remote").contains(part.textOf("place"))) {
                    yesNo("readyAccess", "Reached without ladder, panel or moving anything");
                    yesNo("labelled", "Labelled with the appliance it serves");
                }
                add(new SizeField(desk, at + "/size", "Size", "As cast on its body, such as 1/2."));
            }
            case "union" -> {
                length("distance", "From the appliance", "The tape runs from the union to the appliance.", "");
                yesNo("accessible", "A wrench can reach it");
            }
            case "sediment-trap" -> {
                add(new QuantityField<>(
                        desk,
                        at + "/nipple",
                        "Capped nipple",
                        "The nipple alone, from its tee to its cap.",
                        DisplayUnits.SHORT_LENGTH,
                        true,
                        "there is none"));
                yesNo("gasTurns", "Gas turns in the tee");
                yesNo("capPointsDown", "The cap hangs straight down");
            }
            case "rigid-pipe" ->
                length("length", "Length", "The tape runs along the pipe, from the part before to the part after.", "");
            case "flexible-connector" -> {
                length("length", "Length", "The tape runs along its centre line, from end to end.", "");
                add(new SizeField(desk, at + "/size", "Size", "Nominal, as stamped on its nut or tag, such as 1/2."));
                yesNo("throughWall", "Passes a wall, a floor or a housing");
                yesNo("concealed", "Any of it is concealed");
                element.appendChild(tag.appendChild(tagSays));
                addTo(
                        tag,
                        new QuantityField<>(
                                desk,
                                at + "/capacity",
                                "Capacity on its tag",
                                "Not its size: what the tag says it carries.",
                                DisplayUnits.HEAT,
                                true,
                                "there is none on the tag"));
                addTo(tag, AnswerField.of(desk, at + "/capacityGas", "The tag\u2019s figure is for", GASES));
                addTo(
                        tag,
                        new QuantityField<>(
                                desk,
                                at + "/ratedDrop",
                                "Drop the tag counts with",
                                "The pressure it uses up at that capacity.",
                                DisplayUnits.APPLIANCE_PRESSURE,
                                true,
                                "there is none on the tag"));
            }
            case "built-in-trap" ->
                element.appendChild(Dom.text("p", "said", "Its maker built it in; the manual says so."));
            default -> add(new ChoiceField(desk, at + "/part", "It is a", "I don\u2019t know", () -> KINDS));
        }
    }

    private void length(String entry, String label, String tape, String none) {
        add(new QuantityField<>(desk, at + "/" + entry, label, tape, DisplayUnits.LENGTH, true, none));
    }

    private void yesNo(String entry, String label) {
        add(AnswerField.yesNo(desk, at + "/" + entry, label));
    }

    private void add(Field field) {
        addTo(element, field);
    }

    private void addTo(Element where, Field field) {
        where.appendChild(fields.add(field).element());
    }

    Element element() {
        return element;
    }

    /** What is found at it, which stands below, over the whole width of the page. */
    Element finds() {
        return finds.element();
    }

    Element handle() {
        return handle;
    }

    /** What is found at this part; its order is told below, beside the right one. */
    void show(List<Finding> own, boolean assumed, boolean bad) {
        notSeen.show(assumed ? "assumed, not seen" : "");
        Dom.setClass(element, "assumed", assumed);
        Dom.setClass(element, "bad", bad);
        Dom.retext(tagSays, "What its tag says: " + capacitySaid());
        if (own.equals(finds.shown())) {
            return;
        }
        if (own.stream()
                .anyMatch(f -> ON_THE_TAG.stream().anyMatch(e -> f.field().equals(at + e)))) {
            tag.setAttribute("open", true); // what is asked stands open
        }
        finds.show(own);
    }

    private String capacitySaid() {
        String said = desk.session().text(at + "/capacity");
        return switch (said) {
            case "" -> "not known";
            case "none" -> "no capacity";
            default -> said;
        };
    }

    int index() {
        return index;
    }
}
