package longrun.ui.house.route;

import com.vaadin.flow.dom.Element;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import longrun.draft.WrongEntry;
import longrun.draft.sections.PastedSection;
import longrun.draft.sections.RouteAnswer;
import longrun.draft.sections.RouteLine;
import longrun.draft.sections.RouteLines;
import longrun.draft.sections.RoutePasteReader;
import longrun.draft.sections.TubingDraft;
import longrun.plan.PlanPath;
import longrun.review.Review;
import longrun.ui.frame.Dom;
import longrun.ui.house.findings.WrongEntryLine;
import longrun.ui.lines.PastePreview;
import longrun.ui.place.HousePage;
import longrun.ui.place.Place;
import longrun.words.UnitSystem;

/** The pipe route: the drawing, fittings, lines, what was found, the row used. */
public final class RouteView implements Place {

    /** Sizes answer each key; what is large to draw follows when the keys rest. */
    private static final String WHEN_STILL = "clearTimeout(this.still); this.still = setTimeout(() =>"
            + " this.dispatchEvent(new CustomEvent('still')), 250)";

    private final HousePage desk;
    private final FittingSwitch fittings;
    private final WholeRouteBar whole;
    private final RouteTable table;
    private final PastePreview<PastedSection> paste =
            new PastePreview<>("route-paste-h", "section", p -> hand().takePasted(p));
    private final RouteFindings findings;
    private final DrawingPane drawing;
    private final UsedRow row = new UsedRow();
    private final Element noRegulator = Dom.el("p", "lede start-note");
    private final Element unreadable = Dom.el("div", "finds");
    private final Element stale = Dom.text("p", "lede start-note", "");
    private final Element element = Dom.el("div", "route-place");
    private boolean still;
    private final PressurePart pressure;
    private final TubingPanel tubing;
    private final SectionFacts laid;
    private final RouteHand hand;

    public RouteView(HousePage desk) {
        this.desk = desk;
        fittings = new FittingSwitch(w -> desk.session().choose("/fittingAllowance", w.written()));
        hand = new RouteHand(desk, () -> show(false));
        whole = new WholeRouteBar(desk);
        table = new RouteTable(hand, this::pasted);
        findings = new RouteFindings(desk);
        drawing = new DrawingPane(this::chosenInDrawing);
        pressure = new PressurePart(desk);
        tubing = new TubingPanel(desk);
        laid = new SectionFacts(desk);
        Element go = Dom.button("ask", "Say how the pressure is reduced");
        go.addEventListener("click", e -> desk.goTo("/regulators"));
        noRegulator.appendChild(Dom.words("A section leaves a regulator, and none is entered yet. "), go);
        stale.setAttribute("role", "status");
        Element lines = Dom.el(
                "section",
                "part",
                Dom.text("h3", "vh", "Sections"),
                noRegulator,
                unreadable,
                table.element(),
                hand.asking(),
                paste.element(),
                stale,
                tubing.element(),
                laid.element(),
                findings.element());
        element.appendChild(
                drawing.element(), fittings.element(), whole.element(), lines, row.element(), pressure.element());
        table.element()
                .addEventListener("in-sight", e -> {
                    int first = (int) e.getEventData().getNumber("event.detail.first");
                    if (table.inSight(first, (int) e.getEventData().getNumber("event.detail.last"))) {
                        showTable(new RouteLines(desk.session().draft()), false);
                    }
                })
                .addEventData("event.detail.first")
                .addEventData("event.detail.last");
        element.addEventListener("still", e -> {
            desk.session().typingPaused();
            still = true;
            show(false);
            still = false;
        });
    }

    @Override
    public Element element() {
        return element;
    }

    @Override
    public void show(boolean write) {
        RouteLines lines = new RouteLines(desk.session().draft());
        hand.follow(lines);
        int inHand = hand.index();
        UnitSystem units = desk.units();
        Optional<Review> review = desk.session().review();
        Optional<String> id = lines.at(inHand).map(RouteLine::id);
        Optional<RouteAnswer> answer = id.or(
                        () -> lines.at(Math.max(0, lines.count() - 1)).map(RouteLine::id))
                .flatMap(i -> RouteAnswer.of(review, i));
        showTable(lines, write);
        fittings.show(desk.session().text("/fittingAllowance"), answer, units);
        whole.show();
        findings.show();
        row.show(answer, units);
        boolean large = lines.count() > RouteTable.FEW && !still;
        if (hand.isTyping() || large) {
            element.executeJs(WHEN_STILL);
        } else {
            drawing.show(review, id, units);
            pressure.show(answer);
            tubing.show(write);
        }
        laid.show(inHand, write);
        showUnreadable();
        Dom.show(noRegulator, desk.session().at("/regulators").isEmpty());
        Dom.retext(
                stale,
                desk.session().leavesOut()
                        ? "An entry is not understood and left out; what depends on it is not known."
                        : "An entry waits to be corrected; sizes and drawing are those before it.");
        Dom.show(stale, !desk.session().isCurrent() && review.isPresent());
    }

    private void showTable(RouteLines lines, boolean write) {
        table.show(desk.session(), lines, hand.index(), write, desk.units());
    }

    /** Sections that are no list, or one that is none, have no line of their own to say so. */
    private void showUnreadable() {
        List<Element> wrong = WrongEntry.listIn(desk.session()).stream()
                .filter(w -> w.pointer().matches("/sections(/[0-9]+)?"))
                .map(w -> WrongEntryLine.of(w, desk))
                .toList();
        unreadable.removeAllChildren();
        wrong.forEach(unreadable::appendChild);
        Dom.show(unreadable, !wrong.isEmpty());
    }

    private void chosenInDrawing(String id) {
        new RouteLines(desk.session().draft()).find(id).ifPresent(l -> {
            hand.inHand(l.index());
            Element main = table.rows().get(l.index()).element();
            main.executeJs("this.scrollIntoView({block: 'nearest'})");
        });
    }

    void pasted(String text) {
        RoutePasteReader.Understood u = new RoutePasteReader(desk.session().draft(), desk.units()).read(text);
        paste.show(u.lines(), u.columns(), RoutePasteRows.of(u.lines()));
    }

    // What the page asks.

    @Override
    public void focus(String pointer) {
        PlanPath at = PlanPath.of(pointer);
        if (at.isIn("sections") && at.findIndex().isPresent()) {
            int index = at.findIndex().getAsInt();
            hand.inHand(index);
            if (laid.focus(pointer)) {
                return;
            }
            RouteRow there = table.rows().get(Math.min(index, table.rows().size() - 1));
            Element field = switch (at.length() > 2 ? at.step(2) : "legs") {
                case "material" -> there.tools().material().element();
                case "assumed" -> there.tools().notSeen().target();
                case "setting" -> there.tools().setting().element();
                case "under" -> there.tools().under().element();
                case "ends" -> there.tools().ends().element();
                case "chosenSize" -> there.tools().chosen().element();
                case "installedSize" -> there.tools().installed().element();
                case "table" -> there.tools().table().element();
                case "from" -> there.from().element();
                case "capped" -> there.feeds().element();
                case "reserve" -> there.tools().reserve().getElement();
                default -> there.legs().getElement();
            };
            field.executeJs("setTimeout(() => this.focus())");
        } else if (pointer.startsWith(TubingDraft.TABLES)) {
            tubing.focus(pointer);
        } else if (pointer.endsWith("/fedBy")) {
            RouteRow next = table.rows().get(table.rows().size() - 1); // what nothing feeds hangs on a section to come
            next.feeds().element().executeJs("setTimeout(() => this.focus())");
        } else if (pointer.startsWith("/fittingAllowance")) {
            fittings.scaleElement().executeJs("setTimeout(() => this.querySelector(':checked, input').focus())");
        }
    }

    @Override
    public Map<String, String> heard() {
        Map<String, String> heard = table.heard();
        heard.putAll(tubing.heard());
        heard.putAll(laid.fields().heard());
        return heard;
    }

    @Override
    public void typedBefore(String at, String typed) {
        if (at.matches("legs [0-9]{1,5}")) {
            int index = Integer.parseInt(at.substring(5));
            if (index <= desk.session().at("/sections").size()) {
                hand.legs(index, typed);
            }
        } else {
            tubing.typedBefore(at, typed);
        }
    }

    RouteTable table() {
        return table;
    }

    PastePreview<PastedSection> paste() {
        return paste;
    }

    TubingPanel tubing() {
        return tubing;
    }

    /** What a person does here. */
    public RouteHand hand() {
        return hand;
    }

    WholeRouteBar whole() {
        return whole;
    }
}
