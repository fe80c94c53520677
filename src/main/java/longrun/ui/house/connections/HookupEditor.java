package longrun.ui.house.connections;

import com.vaadin.flow.dom.Element;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import longrun.draft.entry.DraftValue;
import longrun.draft.hookup.HookupParts;
import longrun.drawing.part.HookupDrawing;
import longrun.finding.Finding;
import longrun.plan.Appliance.Part;
import longrun.ui.field.FieldList;
import longrun.ui.frame.Dom;
import longrun.ui.frame.NotSeenLine;
import longrun.ui.place.HousePage;
import longrun.words.Names;

/** One appliance's parts in flow order: drawn, moved, and each with its facts and what is found at it. */
final class HookupEditor implements PartsEditor {

    private final HousePage desk;
    private final String appliance;
    private final HookupParts parts;
    private final HookupFindings found;
    private final FieldList fields = new FieldList();
    private final HookupBoard board;
    private final Element row = Dom.el("div", "parts");
    private final UsualParts begin;
    private final NotSeenLine notSeen;
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
        found = new HookupFindings(desk, parts, this::putInOrder);
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
        begin = new UsualParts(parts, this::begin);
        notSeen = new NotSeenLine("Seen: all as entered", "", this::markAllSeen);
        unknown.addEventListener("click", e -> parts.unknown());
        element = Dom.el(
                "div",
                "bench",
                Dom.el("div", "bench-top", board.getElement(), side(kind)),
                said,
                begin.element(),
                notSeen.element(),
                found.order(),
                row,
                found.others(),
                spoken);
    }

    /** How the parts are moved, and what adds one. */
    private Element side(Element kind) {
        return Dom.el(
                "div",
                "bench-side",
                Dom.el(
                                "p",
                                "s q",
                                Dom.words("Part 1 begins where the measured length of the pipe ends. Move a part with"
                                        + " its arrows"),
                                Dom.text(
                                        "span",
                                        "at-a-desk",
                                        ", or with the mouse in the drawing; on its name the arrow keys move it, and S"
                                                + " says that you have seen it"),
                                Dom.words("."))
                        .setAttribute("id", "move-help"),
                Dom.el("div", "fld add", Dom.text("label", "lab", "Add a part").setAttribute("for", "add-part"), kind),
                Dom.el("p", "acts", unknown));
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

    private void begin(Runnable takes) {
        takes.run();
        focusHandle(0);
    }

    private void markAllSeen() {
        parts.markAllSeen();
        focusHandle(0);
        Dom.retext(spoken, "All parts are marked as seen.");
    }

    void markSeen(int index) {
        if (parts.isAssumed(index)) {
            parts.markSeen(index);
            focusHandle(index);
            Dom.retext(spoken, Names.capital(parts.nameOf(index)) + " is marked as seen.");
        }
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
    void putInOrder() {
        parts.putInOrder();
        focusHandle(0);
    }

    /** Puts the cursor on a part's name, or at the first choice where no part is entered; false for any other entry. */
    boolean focusPart(String pointer) {
        if (pointer.equals(parts.pointer())) {
            FieldList.focus(blocks.isEmpty() ? begin.first() : blocks.get(0).handle());
            return true;
        }
        for (PartBlock block : blocks) {
            String at = parts.pointer() + "/" + block.index();
            if (pointer.equals(at) || pointer.equals(at + "/seen")) {
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
        DraftValue connection = parts.entry();
        String now = parts.structure();
        boolean fresh = !now.equals(rowShown);
        if (fresh) {
            rowShown = now;
            draw(connection);
        }
        boolean isNone = connection.isText();
        begin.show(isNone);
        Dom.show(begin.element(), connection.isEmpty());
        int assumed = parts.countAssumed();
        notSeen.show(
                assumed == 0
                        ? ""
                        : assumed == 1
                                ? "One part is assumed, not seen: no rule passes by it."
                                : assumed + " parts are assumed, not seen: no rule passes by them.");
        Dom.show(unknown, isNone || !connection.isEmpty());
        Dom.retext(
                said,
                isNone
                        ? "You looked, and nothing is fitted."
                        : connection.isEmpty()
                                ? "Not known yet. Begin with the row that looks most like yours; it stands as assumed until you have seen it:"
                                : "");
        Dom.show(said, connection.isEmpty());
        fields.show(write || fresh);
        showFound();
    }

    private void draw(DraftValue connection) {
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

            @Override
            public void markSeen(int index) {
                HookupEditor.this.markSeen(index);
            }
        };
        int count = connection.isList() ? connection.size() : 0;
        for (int i = 0; i < count; i++) {
            PartBlock block = new PartBlock(desk, fields, parts.pointer() + "/" + i, i, count, hand);
            blocks.add(block);
            row.appendChild(block.element(), block.finds());
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
            block.show(
                    here,
                    parts.isAssumed(block.index()),
                    wrong.contains(block.index()) || HookupFindings.mustFix(here));
        }
        found.show(list, right);
    }
}
