package longrun.ui.house.route;

import com.vaadin.flow.dom.Element;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import longrun.ui.frame.Dom;
import longrun.ui.frame.UnitSystem;
import longrun.ui.house.HouseSession;

/**
 * The lines of the route, one more that is not begun, and a few after it that the page brings out by itself, so that a
 * person may type on while the program has yet to answer.
 */
final class RouteTable {

    /** How many lines a person may be ahead of the program's answer. */
    static final int AHEAD = 10;

    private final Element table = Dom.el("table", "lines route");
    private final Element legsHead = Dom.text("th", "tl", "Legs, ft").setAttribute("scope", "col");
    private final Element feetHead = Dom.text("th", "feet", "Feet").setAttribute("scope", "col");
    private final Element loadHead = Dom.text("th", "load", "Load, Btu/h").setAttribute("scope", "col");
    private final List<RouteRow> rows = new ArrayList<>();
    private final RouteRow.Hand hand;

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

    /** The lines and the next one. */
    List<RouteRow> rows() {
        return rows.subList(0, rows.size() - AHEAD);
    }

    void show(HouseSession session, RouteLines lines, int inHand, boolean write, UnitSystem units) {
        int wanted = lines.count() + 1 + AHEAD;
        while (rows.size() > wanted) {
            rows.remove(rows.size() - 1).element().removeFromParent();
        }
        while (rows.size() < wanted) {
            RouteRow row = new RouteRow(rows.size(), hand);
            rows.add(row);
            table.appendChild(row.element());
        }
        Dom.retext(legsHead, "Legs, " + units.lengthUnit().name());
        Dom.retext(feetHead, units == UnitSystem.CUSTOMARY ? "Feet" : "Metres");
        Dom.retext(loadHead, "Load, " + units.heatUnit().name());
        String next = lines.nextId();
        for (int i = 0; i < rows.size(); i++) {
            Optional<RouteLine> line = lines.at(i);
            rows.get(i).spare(i > lines.count());
            rows.get(i).show(session, lines, i == inHand, i > lines.count() ? "" : next, write, units);
            boolean waits = !session.isCurrent()
                    && line.map(l -> !session.isLineAsReviewed(l.id())).orElse(false);
            rows.get(i)
                    .answer(
                            line.filter(l -> !waits).flatMap(l -> RouteAnswer.of(session.review(), l.id())),
                            units,
                            waits ? "waiting" : "");
        }
    }

    Map<String, String> heard() {
        Map<String, String> heard = new LinkedHashMap<>();
        for (int i = 0; i < rows.size(); i++) {
            heard.put("legs " + i, rows.get(i).legs().text());
        }
        return heard;
    }
}
