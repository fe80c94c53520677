package longrun.ui.house.route;

import com.vaadin.flow.dom.Element;
import java.util.AbstractList;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import longrun.draft.HouseSession;
import longrun.draft.sections.RouteAnswer;
import longrun.draft.sections.RouteLine;
import longrun.draft.sections.RouteLines;
import longrun.plan.PlanPath;
import longrun.ui.frame.Dom;
import longrun.words.UnitSystem;

/**
 * The lines of the route, one more that is not begun, and a few after it that the page brings out by itself, so that a
 * person may type on while the program has yet to answer.
 */
final class RouteTable {

    /** How many lines a person may be ahead of the program's answer. */
    static final int AHEAD = 10;

    /** A route of so many lines has fields in each; more than most houses have. */
    static final int FEW = 40;

    /** How far from the selected line lines have fields. */
    static final int NEAR = 8;

    private static final int MOST_IN_SIGHT = 60;

    private final Element table = Dom.el("table", "lines route");
    private final Element legsHead = Dom.text("th", "tl", "Legs, ft").setAttribute("scope", "col");
    private final Element feetHead = Dom.text("th", "feet", "Feet").setAttribute("scope", "col");
    private final Element loadHead = Dom.text("th", "load", "Load, Btu/h").setAttribute("scope", "col");
    private final List<RouteSlot> slots = new ArrayList<>();
    private final RouteRow.Hand hand;
    private int firstInSight;
    private int lastInSight = -1;

    RouteTable(RouteRow.Hand hand, Consumer<String> pasted) {
        this.hand = hand;
        table.addEventListener("pasted", e -> pasted.accept(e.getEventData().getString("event.detail")))
                .addEventData("event.detail");
        Element heads = Dom.el("tr", "");
        for (String head : List.of("Section", "Leaves", "Feeds")) {
            heads.appendChild(Dom.text("th", "tl", head).setAttribute("scope", "col"));
        }
        heads.appendChild(legsHead, feetHead, loadHead);
        for (String head : List.of("Used", "Size, in.")) {
            heads.appendChild(Dom.text("th", "", head).setAttribute("scope", "col"));
        }
        table.appendChild(Dom.text("caption", "vh", "The sections of the route"), Dom.el("thead", "", heads));
    }

    Element element() {
        return table;
    }

    /** The lines and the next one; each asked for has fields. */
    List<RouteRow> rows() {
        return new AbstractList<>() {
            @Override
            public RouteRow get(int index) {
                return slots.get(index).row();
            }

            @Override
            public int size() {
                return slots.size() - AHEAD;
            }
        };
    }

    /** The browser tells which lines are in sight; whether lines are to be drawn for it. */
    boolean inSight(int first, int last) {
        int from = Math.max(0, first);
        int to = Math.min(last, from + MOST_IN_SIGHT);
        if (from == firstInSight && to == lastInSight) {
            return false;
        }
        firstInSight = from;
        lastInSight = to;
        return slots.size() > FEW;
    }

    /** A short route has fields throughout; of a long one the lines in sight, around the one selected, and the last. */
    private boolean hasFields(int index, int count, int inHand) {
        return count <= FEW
                || Math.abs(index - inHand) <= NEAR
                || index == count - 1
                || index >= firstInSight && index <= lastInSight;
    }

    void show(HouseSession session, RouteLines lines, int inHand, boolean write, UnitSystem units) {
        int count = lines.count();
        int wanted = count + 1 + AHEAD;
        while (slots.size() > wanted) {
            slots.remove(slots.size() - 1).element().removeFromParent();
        }
        while (slots.size() < wanted) {
            RouteSlot slot = new RouteSlot(slots.size(), hand);
            slots.add(slot);
            table.appendChild(slot.element());
        }
        Dom.setClass(table, "many", count > FEW);
        Dom.retext(legsHead, "Legs, " + units.lengthUnit().name());
        Dom.retext(feetHead, units == UnitSystem.CUSTOMARY ? "Feet" : "Metres");
        Dom.retext(loadHead, "Load, " + units.heatUnit().name());
        String next = lines.nextId();
        Set<String> same = session.isCurrent() ? Set.of() : session.linesAsReviewed();
        Set<Integer> wrong = session.isCurrent() ? Set.of() : wrongLines(session);
        for (int i = 0; i < slots.size(); i++) {
            Optional<RouteLine> line = lines.at(i);
            boolean waits = !session.isCurrent()
                    && line.map(l -> !same.contains(l.id())).orElse(false);
            String none = waits ? "waiting" : "";
            Optional<RouteAnswer> answer =
                    line.filter(l -> !waits).flatMap(l -> RouteAnswer.of(session.review(), l.id()));
            RouteSlot slot = slots.get(i);
            if (line.isPresent() && !hasFields(i, count, inHand)) {
                RouteLine l = line.get();
                slot.text()
                        .show(
                                l,
                                lines.feedsInWords(l),
                                RouteRow.flags(Optional.of(l), lines.commonSetting()),
                                answer,
                                none,
                                wrong.contains(i),
                                units);
                continue;
            }
            boolean fresh = !slot.hasFields();
            RouteRow row = slot.row();
            row.spare(i > count);
            row.show(session, lines, i == inHand, i > count ? "" : next, write || fresh, units);
            row.answer(answer, units, none);
        }
    }

    private static Set<Integer> wrongLines(HouseSession session) {
        Set<Integer> out = new HashSet<>();
        for (String pointer : session.errors().keySet()) {
            PlanPath at = PlanPath.of(pointer);
            if (at.isIn("sections")) {
                at.findIndex().ifPresent(out::add);
            }
        }
        return out;
    }

    /** What the page has heard in the fields there are. */
    Map<String, String> heard() {
        Map<String, String> heard = new LinkedHashMap<>();
        for (int i = 0; i < slots.size(); i++) {
            if (slots.get(i).hasFields()) {
                heard.put("legs " + i, slots.get(i).row().legs().text());
            }
        }
        return heard;
    }
}
