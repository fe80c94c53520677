package longrun.ui.house.route;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.vaadin.flow.dom.Element;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import longrun.draft.LineInHand;
import longrun.draft.NamedBy;
import longrun.draft.WrongEntry;
import longrun.draft.sections.PastedRoute;
import longrun.draft.sections.RouteAnswer;
import longrun.draft.sections.RouteDraft;
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
import longrun.ui.place.RemovalAsk;
import longrun.words.UnitSystem;
import org.jspecify.annotations.Nullable;

/** The pipe route: fittings, lines, what was found, the drawing, the row used. */
public final class RouteView implements Place, RouteRow.Hand {

    /** Sizes answer each key; what is large to draw follows when the keys rest. */
    private static final String WHEN_STILL = "clearTimeout(this.still); this.still = setTimeout(() =>"
            + " this.dispatchEvent(new CustomEvent('still')), 250)";

    private final HousePage desk;
    private final FittingSwitch fittings;
    private final RouteTable table;
    private final PastePreview<PastedRoute> paste = new PastePreview<>("route-paste-h", "section", this::takePasted);
    private final RouteFindings findings;
    private final DrawingPane drawing;
    private final UsedRow row = new UsedRow();
    private final Element noRegulator = Dom.el("p", "lede start-note");
    private final Element unreadable = Dom.el("div", "finds");
    private final Element stale = Dom.text("p", "lede start-note", "");
    private final Element element = Dom.el("div", "route-place");
    private boolean typing;
    private boolean still;
    private int inHand;
    private boolean opened;
    private final PressurePart pressure;
    private final TubingPanel tubing;
    private final SectionFacts laid;
    private String followed = "";
    private final Element asking = Dom.el("div", "");
    private @Nullable RemovalAsk removal;
    private String asked = "";
    private int feeding = -1;
    private ObjectNode beforeFed = JsonNodeFactory.instance.objectNode();
    private ObjectNode fed = beforeFed;

    public RouteView(HousePage desk) {
        this.desk = desk;
        fittings = new FittingSwitch(w -> desk.session().choose("/fittingAllowance", w.written()));
        table = new RouteTable(this, this::pasted);
        findings = new RouteFindings(desk);
        drawing = new DrawingPane(this::chosenInDrawing);
        pressure = new PressurePart(desk);
        tubing = new TubingPanel(desk);
        laid = new SectionFacts(desk);
        Element go = Dom.button("ask", "Say how the pressure is cut down");
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
                asking,
                paste.element(),
                stale,
                tubing.element(),
                findings.element(),
                laid.element());
        element.appendChild(fittings.element(), lines, drawing.element(), row.element(), pressure.element());
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
            desk.session().rest();
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
        follow(lines);
        inHand = Math.min(inHand, lines.count());
        UnitSystem units = desk.units();
        Optional<Review> review = desk.session().review();
        Optional<String> id = lines.at(inHand).map(RouteLine::id);
        Optional<RouteAnswer> answer = id.or(
                        () -> lines.at(Math.max(0, lines.count() - 1)).map(RouteLine::id))
                .flatMap(i -> RouteAnswer.of(review, i));
        showTable(lines, write);
        fittings.show(desk.session().text("/fittingAllowance"), answer, units);
        findings.show();
        row.show(answer, units);
        boolean large = lines.count() > RouteTable.FEW && !still;
        if (typing || large) {
            element.executeJs(WHEN_STILL);
        } else {
            drawing.show(review, id, units);
            pressure.show(answer);
            tubing.show(write);
        }
        laid.show(inHand, write);
        if (removal != null && lines.find(asked).isEmpty()) {
            forgetRemoval();
        }
        showUnreadable();
        Dom.show(noRegulator, desk.session().at("/regulators").isEmpty());
        Dom.retext(
                stale,
                desk.session().leavesOut()
                        ? "An entry is not understood and left out; what rests on it is not known."
                        : "An entry waits to be mended; sizes and drawing are those before it.");
        Dom.show(stale, !desk.session().isCurrent() && review.isPresent());
    }

    private void showTable(RouteLines lines, boolean write) {
        table.show(desk.session(), lines, inHand, write, desk.units());
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

    /** The section in hand may have been chosen elsewhere, in the answer say. */
    private void follow(RouteLines lines) {
        String wanted = desk.lineInHand().orElse("");
        if (!opened && wanted.isEmpty()) {
            desk.session()
                    .review()
                    .ifPresent(r -> LineInHand.usual(r)
                            .ifPresent(i ->
                                    inHand = lines.find(r.piping().section(i).id())
                                            .map(RouteLine::index)
                                            .orElse(0)));
        }
        opened = true;
        if (wanted.equals(followed)) {
            return;
        }
        followed = wanted;
        lines.find(wanted).ifPresent(l -> inHand = l.index());
    }

    // What a person does.

    @Override
    public void inHand(int index) {
        if (index == inHand && followed.equals(idAt(index))) {
            return;
        }
        inHand = index;
        desk.session().endStep();
        String id = idAt(index);
        if (id.isEmpty()) {
            show(false);
        } else {
            followed = id;
            desk.takeInHand(id);
        }
    }

    private String idAt(int index) {
        return desk.session().text("/sections/" + index + "/id");
    }

    private void chosenInDrawing(String id) {
        new RouteLines(desk.session().draft()).find(id).ifPresent(l -> {
            inHand(l.index());
            Element main = table.rows().get(l.index()).element();
            main.executeJs("this.scrollIntoView({block: 'nearest'})");
        });
    }

    @Override
    public void legs(int index, String typed) {
        begun(index);
        typing = true;
        desk.session().type("/sections/" + index + "/legs", d -> RouteDraft.legs(d, index, typed, desk.units()));
        typing = false;
        tellInHand(index);
    }

    @Override
    public void put(int index, String entry, String value) {
        begun(index);
        if (entry.equals("reserve")) {
            desk.session().type("/sections/" + index + "/reserve", d -> RouteDraft.put(d, index, entry, value));
        } else {
            change(d -> RouteDraft.put(d, index, entry, value));
            tellInHand(index);
        }
    }

    @Override
    public void rough(int index, boolean rough) {
        change(d -> {
            if (rough) {
                RouteDraft.section(d, index).put("rough", true);
            } else {
                RouteDraft.section(d, index).remove("rough");
            }
        });
    }

    @Override
    public void feeds(int index, String feeds) {
        begun(index);
        // Whoever types or steps through the list passes others on the way; those stay where they hang.
        boolean onTheWay = feeding == index && desk.session().draft().equals(fed);
        ObjectNode before = onTheWay ? beforeFed : desk.session().draft().deepCopy();
        change(d -> {
            d.removeAll();
            d.setAll(before.deepCopy());
            RouteDraft.feed(d, index, feeds);
        });
        feeding = index;
        beforeFed = before;
        fed = desk.session().draft().deepCopy();
        tellInHand(index);
    }

    /** A choice in a line, while another field of it may hold what is being typed: the fields are left as they are. */
    private void change(java.util.function.Consumer<ObjectNode> change) {
        desk.session().endStep();
        desk.session().type("choice", change);
        desk.session().endStep();
    }

    private void begun(int index) {
        inHand = index;
    }

    /** A section begun by what is typed in it is in hand in the answer too. */
    private void tellInHand(int index) {
        String id = idAt(index);
        if (!id.isEmpty() && !id.equals(desk.lineInHand().orElse(""))) {
            followed = id;
            desk.takeInHand(id);
        }
    }

    @Override
    public void removed(int index) {
        String id = idAt(index);
        List<NamedBy.Mention> mentions = NamedBy.anything(desk.session().draft(), id);
        if (mentions.isEmpty()) {
            remove(index, Set.of());
            return;
        }
        RemovalAsk ask =
                new RemovalAsk("section " + id, mentions, staying -> remove(index, staying), this::forgetRemoval);
        forgetRemoval();
        asking.appendChild(ask.element());
        ask.focus();
        removal = ask;
        asked = id;
    }

    /** The pipe beyond it leaves what it left; what was read or answered at it goes too, all in one step. */
    private void remove(int index, Set<String> staying) {
        inHand = Math.max(0, index - 1);
        desk.session().change(d -> {
            NamedBy.take(d, NamedBy.anything(d, idAt(index)), staying);
            RouteDraft.remove(d, index);
        });
    }

    private void forgetRemoval() {
        removal = null;
        asking.removeAllChildren();
    }

    @Override
    public UnitSystem units() {
        return desk.units();
    }

    void pasted(String text) {
        RoutePasteReader.Understood u = new RoutePasteReader(desk.session().draft(), desk.units()).read(text);
        paste.show(u.lines(), u.columns(), RoutePasteRows.of(u.lines()));
    }

    private void takePasted(List<PastedRoute> pasted) {
        desk.session().change(d -> {
            Map<String, String> named = new HashMap<>();
            for (PastedRoute p : pasted) {
                int index = d.path("sections").size();
                ObjectNode s = RouteDraft.section(d, index);
                named.put(p.id(), s.path("id").asText());
                if (!p.from().isEmpty()) {
                    s.put("from", named.getOrDefault(p.from(), p.from()));
                }
                if (!p.material().isEmpty()) {
                    s.put("material", p.material());
                }
                RouteDraft.legs(d, index, p.legs());
                if (!p.feeds().isEmpty()) {
                    RouteDraft.feed(d, index, p.feeds());
                }
            }
        });
    }

    // What the page asks.

    @Override
    public void focus(String pointer) {
        PlanPath at = PlanPath.of(pointer);
        if (at.isIn("sections") && at.findIndex().isPresent()) {
            int index = at.findIndex().getAsInt();
            inHand(index);
            if (laid.focus(pointer)) {
                return;
            }
            RouteRow there = table.rows().get(Math.min(index, table.rows().size() - 1));
            Element field = switch (at.length() > 2 ? at.step(2) : "legs") {
                case "material" -> there.tools().material().element();
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
                legs(index, typed);
            }
        } else {
            tubing.typedBefore(at, typed);
        }
    }

    RouteTable table() {
        return table;
    }

    SectionFacts laid() {
        return laid;
    }

    PastePreview<PastedRoute> paste() {
        return paste;
    }

    DrawingPane drawing() {
        return drawing;
    }

    UsedRow row() {
        return row;
    }

    PressurePart pressure() {
        return pressure;
    }

    TubingPanel tubing() {
        return tubing;
    }

    @Nullable
    RemovalAsk removal() {
        return removal;
    }

    FittingSwitch fittings() {
        return fittings;
    }

    RouteFindings findings() {
        return findings;
    }
}
