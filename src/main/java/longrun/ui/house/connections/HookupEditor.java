package longrun.ui.house.connections;

import com.vaadin.flow.dom.Element;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import longrun.draft.entry.Entered;
import longrun.draft.hookup.HookupParts;
import longrun.drawing.part.HookupDrawing;
import longrun.finding.Finding;
import longrun.plan.Appliance.Part;
import longrun.ui.field.FieldList;
import longrun.ui.frame.Dom;
import longrun.ui.place.HousePage;
import longrun.words.Names;

/** One appliance's parts in flow order: drawn, moved, and each with its facts and what is found at it. */
final class HookupEditor implements PartsEditor {

    private static final List<List<String>> USUAL = List.of(
            List.of("shutoff", "sediment-trap", "flexible-connector"),
            List.of("shutoff", "sediment-trap", "union", "rigid-pipe"),
            List.of("shutoff", "flexible-connector"));

    private final HousePage desk;
    private final String appliance;
    private final HookupParts parts;
    private final HookupFindings found;
    private final FieldList fields = new FieldList();
    private final HookupBoard board;
    private final Element row = Dom.el("div", "parts");
    private final Element begin = Dom.el("div", "acts");
    private final Element none = Dom.button("act", "Nothing is fitted between pipe and appliance");
    private final Element unknown = Dom.button("ask", "I don\u2019t know what is fitted");
    private final Element said = Dom.text("p", "lede", "");
    private final Element spoken = Dom.text("p", "vh", "").setAttribute("role", "status");
    private final Element element;
    private final List<PartBlock> blocks = new ArrayList<>();
    private String rowShown = "?";

    HookupEditor(HousePage desk, String appliance) {
        this.desk = desk;
        this.appliance = appliance;
        parts = new HookupParts(desk.session(), appliance);
        found = new HookupFindings(desk, parts, this::putRight);
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
        none.addEventListener("click", e -> parts.none());
        unknown.addEventListener("click", e -> parts.unknown());
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
                                "The run\u2019s own tape stops at the end of the pipe, where part 1 begins. Move a"
                                        + " part by its buttons below, with the mouse in the drawing, or on its name with"
                                        + " the left and right arrow keys.")
                        .setAttribute("id", "move-help"),
                said,
                begin,
                found.order(),
                row,
                found.others(),
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
        parts.begin(kinds);
        focusHandle(0);
    }

    /** Adds a part where one of its kind belongs. */
    void add(String kind) {
        if (!kind.isEmpty()) {
            focusHandle(parts.add(kind));
        }
    }

    /** A move with the mouse: the drawing stays in sight. */
    private void moveInSight(int from, int to) {
        shift(from, to, "{preventScroll: true}");
    }

    void move(int from, int to) {
        shift(from, to, "{}");
    }

    private void shift(int from, int to, String focus) {
        if (parts.move(from, to)) {
            focusHandle(to, focus);
            Dom.retext(
                    spoken,
                    Names.capital(parts.nameOf(to)) + " is now part " + (to + 1) + " of " + blocks.size() + ".");
        }
    }

    private void remove(int index) {
        parts.remove(index);
        focusHandle(Math.max(0, index - 1));
    }

    /** Puts all parts in the order every code accepts. */
    void putRight() {
        parts.putRight();
        focusHandle(0);
    }

    /** Puts the cursor on a part's name, or at the first choice where no part is entered; false for any other entry. */
    boolean focusPart(String pointer) {
        if (pointer.equals(parts.pointer())) {
            FieldList.focus(blocks.isEmpty() ? begin.getChild(0) : blocks.get(0).handle());
            return true;
        }
        for (PartBlock block : blocks) {
            if (pointer.equals(parts.pointer() + "/" + block.index())) {
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

    // What is shown.

    @Override
    public void show(boolean write) {
        Entered connection = parts.entry();
        String now = parts.structure();
        boolean fresh = !now.equals(rowShown);
        if (fresh) {
            rowShown = now;
            draw(connection);
        }
        boolean isNone = connection.isText();
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
        showFound();
    }

    private void draw(Entered connection) {
        fields.clear();
        blocks.clear();
        row.removeAllChildren();
        PartBlock.Hand hand = new PartBlock.Hand() {
            @Override
            public void move(int from, int to) {
                HookupEditor.this.move(from, to);
            }

            @Override
            public void remove(int index) {
                HookupEditor.this.remove(index);
            }
        };
        int count = connection.isList() ? connection.size() : 0;
        for (int i = 0; i < count; i++) {
            PartBlock block = new PartBlock(desk, fields, parts.pointer() + "/" + i, i, count, hand);
            blocks.add(block);
            row.appendChild(block.element());
        }
    }

    private void showFound() {
        found.read();
        List<Part> list = parts.list();
        List<Integer> right = parts.right();
        Set<Integer> wrong = found.outOfOrder(list.size());
        board.draw(
                HookupDrawing.of(parts.name(), list, wrong, right),
                HookupDrawing.narrow(parts.name(), list, wrong, right));
        for (PartBlock block : blocks) {
            List<Finding> here = found.at(block.index());
            block.show(here, wrong.contains(block.index()) || HookupFindings.mustFix(here));
        }
        found.show(list, right);
    }

    HookupBoard board() {
        return board;
    }

    List<PartBlock> blocks() {
        return List.copyOf(blocks);
    }

    String orderShown() {
        return found.orderShown();
    }
}
