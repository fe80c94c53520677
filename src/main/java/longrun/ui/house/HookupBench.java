package longrun.ui.house;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.vaadin.flow.dom.Element;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import longrun.drawing.HookupDrawing;
import longrun.finding.Finding;
import longrun.finding.Severity;
import longrun.plan.Appliance.Part;
import longrun.plan.PartKind;
import longrun.rules.RightOrder;
import longrun.ui.frame.Dom;

/** One appliance's parts in flow order: drawn, moved, and each with its facts and what is found at it. */
final class HookupBench implements Bench {

    private static final Set<String> ORDER_RULES =
            Set.of("shutoff-upstream-of-connector", "trap-downstream-of-shutoff", "trap-before-connector");
    private static final List<List<String>> USUAL = List.of(
            List.of("shutoff", "sediment-trap", "flexible-connector"),
            List.of("shutoff", "sediment-trap", "union", "rigid-pipe"),
            List.of("shutoff", "flexible-connector"));

    private final HouseDesk desk;
    private final String appliance;
    private final String at;
    private final FieldList fields = new FieldList();
    private final HookupBoard board;
    private final Element row = Dom.el("div", "parts");
    private final Element begin = Dom.el("div", "acts");
    private final Element none = Dom.button("act", "Nothing is fitted between pipe and appliance");
    private final Element unknown = Dom.button("ask", "I don\u2019t know what is fitted");
    private final Element said = Dom.text("p", "lede", "");
    private final Element spoken = Dom.text("p", "vh", "").setAttribute("role", "status");
    private final Element order = Dom.el("div", "");
    private final Element finds = Dom.el("div", "finds");
    private final Element element;
    private final List<PartBlock> blocks = new ArrayList<>();
    private String rowShown = "?";
    private String findsShown = "";

    HookupBench(HouseDesk desk, String appliance) {
        this.desk = desk;
        this.appliance = appliance;
        this.at = appliance + "/connection";
        board = new HookupBoard(this::moveInSight, this::focusHandle);
        Element kind = Dom.el("select", "in").setAttribute("id", "add-part");
        kind.appendChild(Dom.text("option", "", "choose what it is").setAttribute("value", ""));
        PartBlock.KINDS.forEach(
                (value, words) -> kind.appendChild(Dom.text("option", "", words).setAttribute("value", value)));
        kind.addEventListener("change", e -> {
                    add(e.getEventData().getString("element.value"));
                    kind.executeJs("this.value = ''");
                })
                .addEventData("element.value");
        none.addEventListener("click", e -> desk.session().choose(at, "none"));
        unknown.addEventListener("click", e -> desk.session().remove(at));
        for (List<String> each : USUAL) {
            Element b = Dom.button(
                    "act",
                    Names.capital(each.stream().map(s -> s.replace('-', ' ')).collect(Collectors.joining(", "))));
            b.addEventListener("click", e -> begin(each));
            begin.appendChild(b);
        }
        begin.appendChild(none);
        element = Dom.el(
                "div",
                "bench",
                board.getElement(),
                Dom.text(
                                "p",
                                "s q",
                                "The run\u2019s own tape stops at the end of the pipe, where part 1 begins. Move a part by"
                                        + " its buttons below, with the mouse in the drawing, or on its name with the left and"
                                        + " right arrow keys.")
                        .setAttribute("id", "move-help"),
                said,
                begin,
                order,
                row,
                finds,
                Dom.el("div", "fld add", Dom.text("label", "lab", "Add a part").setAttribute("for", "add-part"), kind),
                Dom.el("p", "acts", unknown),
                spoken);
    }

    @Override
    public String pointer() {
        return appliance;
    }

    @Override
    public Element element() {
        return element;
    }

    @Override
    public FieldList fields() {
        return fields;
    }

    // What a person does.

    private void begin(List<String> kinds) {
        desk.session().change(d -> {
            ArrayNode list = JsonNodeFactory.instance.arrayNode();
            kinds.forEach(k -> list.addObject().put("part", k));
            DraftTree.put(d, at, list);
        });
        focusHandle(0);
    }

    /** Adds a part where one of its kind belongs. */
    void add(String kind) {
        if (kind.isEmpty()) {
            return;
        }
        PartKind named = java.util.Arrays.stream(PartKind.values())
                .filter(k -> k.written().equals(kind))
                .findFirst()
                .orElseThrow();
        int place = RightOrder.placeFor(named, kinds(parts()));
        desk.session().change(d -> {
            if (!d.at(at).isArray()) {
                DraftTree.put(d, at, JsonNodeFactory.instance.arrayNode());
            }
            ((ArrayNode) d.at(at)).insertObject(place).put("part", kind);
        });
        focusHandle(place);
    }

    /** A move with the mouse: the drawing stays in sight. */
    private void moveInSight(int from, int to) {
        shift(from, to, "{preventScroll: true}");
    }

    void move(int from, int to) {
        shift(from, to, "{}");
    }

    private void shift(int from, int to, String focus) {
        int count = desk.session().at(at).size();
        if (from < 0 || to < 0 || from >= count || to >= count) {
            return;
        }
        desk.session().change(d -> {
            ArrayNode list = (ArrayNode) d.at(at);
            JsonNode part = list.remove(from);
            list.insert(to, part);
        });
        focusHandle(to, focus);
        tellPlace(to, count);
    }

    private void remove(int index) {
        desk.session().change(d -> ((ArrayNode) d.at(at)).remove(index));
        if (desk.session().at(at).isEmpty()) {
            desk.session().remove(at);
        }
        focusHandle(Math.max(0, index - 1));
    }

    /** Puts all parts in the order every code accepts. */
    void putRight() {
        List<Integer> right = RightOrder.of(kinds(parts()));
        desk.session().change(d -> {
            ArrayNode list = (ArrayNode) d.at(at);
            ArrayNode sorted = JsonNodeFactory.instance.arrayNode();
            right.forEach(i -> sorted.add(list.get(i)));
            ((ObjectNode) d.at(appliance)).set("connection", sorted);
        });
        focusHandle(0);
    }

    /** Puts the cursor on a part's name, or at the first choice where no part is entered; false for any other entry. */
    boolean focusPart(String pointer) {
        if (pointer.equals(at)) {
            FieldList.focus(blocks.isEmpty() ? begin.getChild(0) : blocks.get(0).handle());
            return true;
        }
        for (PartBlock block : blocks) {
            if (pointer.equals(at + "/" + block.index())) {
                FieldList.focus(block.handle());
                return true;
            }
        }
        return false;
    }

    private void focusHandle(int index) {
        focusHandle(index, "{}");
    }

    private void focusHandle(int index, String how) {
        if (index < blocks.size()) {
            blocks.get(index).handle().executeJs("setTimeout(() => this.focus(" + how + "))");
        }
    }

    private void tellPlace(int index, int count) {
        String name =
                desk.session().at(at).path(index).path("part").asText("part").replace('-', ' ');
        Dom.retext(spoken, Names.capital(name) + " is now part " + (index + 1) + " of " + count + ".");
    }

    // What is shown.

    private List<Part> parts() {
        return DrawnParts.of(desk.session().at(at));
    }

    private static List<Optional<PartKind>> kinds(List<Part> parts) {
        return parts.stream().map(p -> p.part().findValue()).toList();
    }

    private String name() {
        JsonNode a = desk.session().at(appliance);
        return a.path("name").asText(a.path("kind").asText("appliance").replace('-', ' '));
    }

    @Override
    public void show(boolean write) {
        JsonNode connection = desk.session().at(at);
        List<Part> parts = parts();
        String now = structure(connection);
        boolean fresh = !now.equals(rowShown);
        if (fresh) {
            rowShown = now;
            draw(connection);
        }
        boolean isNone = connection.isTextual();
        Dom.show(begin, connection.isEmpty());
        Dom.show(unknown, isNone || !connection.isEmpty());
        none.setAttribute("aria-pressed", String.valueOf(isNone));
        Dom.retext(
                said,
                isNone
                        ? "Looked; nothing is fitted."
                        : connection.isEmpty() ? "Not known yet. Begin with the row that looks most like yours:" : "");
        Dom.show(said, connection.isEmpty());
        fields.show(write || fresh);
        findings(parts);
    }

    private static String structure(JsonNode connection) {
        StringBuilder key = new StringBuilder();
        connection.forEach(p -> key.append(p.path("part").asText())
                .append(p.path("place").asText())
                .append(';'));
        return key.toString();
    }

    private void draw(JsonNode connection) {
        fields.clear();
        blocks.clear();
        row.removeAllChildren();
        PartBlock.Hand hand = new PartBlock.Hand() {
            @Override
            public void move(int from, int to) {
                HookupBench.this.move(from, to);
            }

            @Override
            public void remove(int index) {
                HookupBench.this.remove(index);
            }
        };
        int count = connection.isArray() ? connection.size() : 0;
        for (int i = 0; i < count; i++) {
            PartBlock block = new PartBlock(desk, fields, at + "/" + i, i, count, hand);
            blocks.add(block);
            row.appendChild(block.element());
        }
    }

    private void findings(List<Part> parts) {
        List<Finding> own = desk.session().findings().stream()
                .filter(f -> f.field().equals(at) || f.field().startsWith(at + "/"))
                .toList();
        List<Finding> outOfOrder = own.stream()
                .filter(f -> ORDER_RULES.contains(f.rule()) && f.ask().isEmpty())
                .toList();
        Set<Integer> wrong = outOfOrder.stream()
                .map(f -> part(f))
                .filter(i -> i >= 0 && i < parts.size())
                .collect(Collectors.toSet());
        List<Integer> right = RightOrder.of(kinds(parts));
        board.draw(HookupDrawing.of(name(), parts, wrong, right), HookupDrawing.narrow(name(), parts, wrong, right));
        for (PartBlock block : blocks) {
            List<Finding> here = own.stream()
                    .filter(f -> part(f) == block.index() && !outOfOrder.contains(f))
                    .toList();
            boolean bad =
                    wrong.contains(block.index()) || here.stream().anyMatch(f -> f.severity() == Severity.MUST_FIX);
            block.show(here, bad);
        }
        List<Finding> others =
                own.stream().filter(f -> !outOfOrder.contains(f) && part(f) < 0).toList();
        String key = outOfOrder + "" + others + right;
        if (key.equals(findsShown)) {
            return;
        }
        findsShown = key;
        finds.removeAllChildren();
        others.forEach(f -> finds.appendChild(HouseFinding.of(f, desk)));
        order.removeAllChildren();
        outOfOrder.forEach(f -> order.appendChild(wrongOrder(f, parts, right)));
    }

    private Element wrongOrder(Finding f, List<Part> parts, List<Integer> right) {
        Element mend = Dom.button("act main", "Put the parts in the right order");
        mend.addEventListener("click", e -> putRight());
        String drawn =
                HookupDrawing.small(name(), right.stream().map(parts::get).toList());
        return Dom.el(
                "div",
                "mend",
                Dom.el("div", "", HouseFinding.of(f, desk), Dom.el("p", "acts", mend)),
                Dom.el("figure", "", Dom.text("figcaption", "", "In the right order"), Dom.drawing(drawn)));
    }

    /** The part a finding stands at; -1 where it is about the whole connection. */
    private int part(Finding f) {
        if (!f.field().startsWith(at + "/")) {
            return -1;
        }
        String rest = f.field().substring(at.length() + 1);
        int slash = rest.indexOf('/');
        String index = slash < 0 ? rest : rest.substring(0, slash);
        return index.matches("[0-9]{1,6}") ? Integer.parseInt(index) : -1;
    }

    HookupBoard board() {
        return board;
    }

    List<PartBlock> blocks() {
        return List.copyOf(blocks);
    }

    String orderShown() {
        return order.getChildCount() == 0 ? "" : order.getTextRecursively();
    }
}
