package longrun.ui.house.route;

import com.vaadin.flow.dom.Element;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;
import longrun.draft.HouseSession;
import longrun.draft.sections.LegsText;
import longrun.draft.sections.RouteAnswer;
import longrun.draft.sections.RouteLine;
import longrun.draft.sections.RouteLines;
import longrun.finding.EntryName;
import longrun.plan.PlanPath;
import longrun.plan.json.PlanError;
import longrun.quantity.Length;
import longrun.ui.frame.Dom;
import longrun.ui.frame.Entry;
import longrun.ui.lines.LineBody;
import longrun.words.UnitSystem;
import org.jspecify.annotations.Nullable;

/** One line of the route: where it leaves, what it feeds, its legs; and what came of it. */
public final class RouteRow {

    /** What a person does in a line. */
    interface Hand {
        void legs(int index, String typed);

        void put(int index, String entry, String value);

        void rough(int index, boolean rough);

        void feeds(int index, String feeds);

        void removed(int index);

        void inHand(int index);

        UnitSystem units();
    }

    private final int index;
    private final LineBody body;
    private final Choice from;
    private final Choice feeds;
    private final Entry legs;
    private final Element legsCell;
    private final Element feet = Dom.text("td", "feet", "").setAttribute("data-fig", "");
    private final Element flag = Dom.text("span", "q s flag", "");
    private final Element wrong = Dom.el("div", "wrongs");
    private final Element under = Dom.el("td", "").setAttribute("colspan", "8");
    private final RouteTools tools;
    private @Nullable RouteLine inTools;

    RouteRow(int index, Hand hand, Element body) {
        this.index = index;
        this.body = new LineBody(body);
        from = new Choice("from-" + index, "Section leaves", v -> hand.put(index, "from", v));
        feeds = new Choice("feeds-" + index, "Section feeds", v -> hand.feeds(index, v));
        legs = new Entry("legs-" + index, "Section legs", "in", typed -> hand.legs(index, typed));
        from.element().setAttribute("data-column", "from");
        feeds.element().setAttribute("data-column", "feeds").setAttribute("data-first", true);
        legs.getElement()
                .setAttribute("data-column", "legs")
                .setAttribute("data-at", "legs " + index)
                .setAttribute("placeholder", index == 0 ? "such as up 4, north 6" : " ");
        tools = new RouteTools(index, hand);
        legsCell = Dom.el("td", "ent legs tl", legs.getElement());
        Element main = Dom.el(
                "tr",
                "main",
                this.body.id(),
                Dom.el("td", "ent leaves tl", from.element()).setAttribute("data-l", "Leaves"),
                Dom.el("td", "nm tl", feeds.element(), flag),
                legsCell,
                feet);
        main.appendChild(this.body.figures());
        body.appendChild(
                main,
                Dom.el("tr", "under", under.appendChild(Dom.el("div", "says", legs.said(), wrong), tools.element())));
    }

    Element element() {
        return body.element();
    }

    Entry legs() {
        return legs;
    }

    Choice feeds() {
        return feeds;
    }

    Choice from() {
        return from;
    }

    /** What else is entered of the line; on the page before a person gets there, since Tab waits for no answer. */
    RouteTools tools() {
        return tools;
    }

    /** Whether it is kept behind the next line, out of sight until a person types so far ahead. */
    void spare(boolean spare) {
        body.spare(spare);
    }

    /** The line as it stands; empty for the next, which is not begun. */
    void show(HouseSession session, RouteLines lines, boolean inHand, String nextId, boolean write, UnitSystem units) {
        Optional<RouteLine> line = lines.at(index);
        OptionalDouble sum = line.map(l -> LegsText.feet(l.legs())).orElse(OptionalDouble.empty());
        String name = line.map(RouteLine::id).orElse(nextId);
        body.name(name);
        from.element().setAttribute("aria-label", "Section " + name + " leaves");
        feeds.element().setAttribute("aria-label", "Section " + name + " feeds");
        legs.getElement()
                .setAttribute(
                        "aria-label",
                        "Section " + name + ", legs in " + units.lengthUnit().name());
        legsCell.setAttribute("data-l", "Legs, " + units.lengthUnit().name());
        body.notBegun(line.isEmpty());
        Map<String, String> mayFeed = lines.mayFeed(index);
        if (line.isEmpty()) {
            mayFeed.put("", "feeds what?");
        }
        from.show(lines.mayLeave(index), line.map(RouteLine::from).orElseGet(lines::suggestedFrom));
        feeds.show(mayFeed, line.map(RouteLine::feeds).orElse(""));
        if (write) {
            legs.write(LegsText.inField(line.map(RouteLine::legs).orElse(List.of()), units));
        }
        Dom.retext(flag, flags(line, lines.commonSetting()));
        Dom.retext(feet, sum.isPresent() ? units.row(Length.ofFeet(Math.rint(sum.getAsDouble() * 100) / 100)) : "");
        boolean comesInHand = inHand && !body.isInHand();
        body.inHand(inHand);
        RouteLine entered = line.orElseGet(lines::next);
        if (inHand || write || !entered.equals(inTools)) {
            inTools = entered;
            tools.show(session, entered, write || comesInHand);
        }
        showWrong(session, line, sum, units);
    }

    /**
     * What is said of a line beside what it feeds: not seen, paced only, and its place where it is another than that of
     * the whole route.
     */
    static String flags(Optional<RouteLine> line, String common) {
        if (line.isEmpty()) {
            return "";
        }
        String where = line.get().setting().equals("underground")
                ? "buried"
                : line.get().setting();
        return String.join(
                ", ",
                java.util.stream.Stream.of(
                                line.get().assumed() ? "not seen" : "",
                                line.get().rough() ? "rough" : "",
                                line.get().setting().equals(common) ? "" : where)
                        .filter(s -> !s.isEmpty())
                        .toList());
    }

    private void showWrong(HouseSession session, Optional<RouteLine> line, OptionalDouble sum, UnitSystem units) {
        wrong.removeAllChildren();
        String legsWrong = "";
        String leg = "/sections/" + index + "/legs";
        for (Map.Entry<String, PlanError> e : new java.util.TreeMap<>(session.errors()).entrySet()) {
            if (line.isEmpty()) {
                break;
            }
            if (e.getKey().equals(leg) || e.getKey().startsWith(leg + "/")) {
                legsWrong = legsWrong.isEmpty() ? e.getValue().message() : legsWrong;
            } else if (e.getKey().startsWith("/sections/" + index + "/")
                    || isHanging(session, e.getKey(), line.get())) {
                String entry = EntryName.of(PlanPath.of(e.getKey()));
                wrong.appendChild(Dom.el(
                        "p",
                        "said bad",
                        Dom.text("b", "", "Not understood "),
                        Dom.words(entry + ": " + e.getValue().message())));
            }
        }
        if (!legsWrong.isEmpty()) {
            legs.wrong(legsWrong);
        } else {
            legs.understood(
                    sum.isPresent()
                            ? String.join(", ", line.get().legs()) + ": "
                                    + units.length(Length.ofFeet(sum.getAsDouble())) + " "
                                    + units.lengthUnit().name()
                            : "As you would pace it: up 4, north 6, east 10; for another material write it first: csst up 4."
                                    + " North is any wall you choose. Where the pipe branches, leave Feeds empty: the next"
                                    + " sections begin there.");
        }
        body.wrong(legs.isWrong() || wrong.getChildCount() > 0);
    }

    /** Leaves its place to what stands there next. */
    void leave() {
        body.leave();
    }

    private static boolean isHanging(HouseSession session, String pointer, RouteLine line) {
        return pointer.matches("/(appliances|regulators)/\\d+/fedBy")
                && session.text(pointer).equals(line.id());
    }

    /** What came of it. */
    void answer(Optional<RouteAnswer> answer, UnitSystem units, String none) {
        OptionalInt percent = answer.map(RouteAnswer::share).orElse(OptionalInt.empty());
        body.load().setAttribute("data-u", units.heatUnit().name());
        body.answer(
                answer.flatMap(RouteAnswer::load).map(units::heat).orElse(""),
                percent.isPresent() ? OptionalLong.of(percent.getAsInt()) : OptionalLong.empty(),
                answer.map(RouteAnswer::sizeWords).orElse(none),
                "",
                answer.flatMap(a -> a.size().size()).isPresent(),
                answer.map(RouteAnswer::sizeNote).orElse(""));
    }
}
