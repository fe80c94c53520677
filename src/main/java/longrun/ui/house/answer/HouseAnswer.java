package longrun.ui.house.answer;

import com.vaadin.flow.dom.Element;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import longrun.draft.HouseState;
import longrun.draft.OpenQuestions;
import longrun.draft.PlaceKind;
import longrun.finding.Finding;
import longrun.finding.Severity;
import longrun.piping.Stage;
import longrun.quantity.Length;
import longrun.review.Review;
import longrun.review.json.SizingOrigins;
import longrun.sizing.StageSize;
import longrun.ui.frame.AnswerHead;
import longrun.ui.frame.Dom;
import longrun.ui.house.figure.AnswerSlot;
import longrun.ui.place.HousePage;
import longrun.words.Names;
import longrun.words.ProvisionalSize;
import longrun.words.QuestionsByWhom;
import longrun.words.Sentence;
import longrun.words.UnitSystem;

/** The answer so far, beside every place: the selected size, and fixed slots that do not jump. */
public final class HouseAnswer {

    private final HousePage desk;
    private final AnswerHead head = new AnswerHead();
    private final AnswerSlot load = new AnswerSlot("load", "Connected load");
    private final AnswerSlot run = new AnswerSlot("run", "Longest run");
    private final AnswerSlot sizes = new AnswerSlot("sizes", "Sizes");
    private final AnswerSlot mustFix = new AnswerSlot("must", "Must fix");
    private final AnswerSlot open = new AnswerSlot("open", "Open questions");
    private final SupplyAnswer supply = new SupplyAnswer();
    private final NextStepLine next;
    private final SelectedSize hand;
    private final Element sizeList = Dom.el("ul", "sizes").setAttribute("data-fig", "");
    private final Element mustList = Dom.el("span", "");
    private final Map<String, String> spoken = new TreeMap<>();
    private String sizesShown = "";
    private List<Finding> mustShown = List.of();

    public HouseAnswer(HousePage desk, Element panel) {
        this.desk = desk;
        next = new NextStepLine(desk);
        hand = new SelectedSize(desk, head);
        sizes.below(sizeList);
        mustFix.below(mustList);
        Element findings = Dom.el("span", "", Dom.words(" "));
        Element link = Dom.text("a", "s", "Questions to take along").setAttribute("router-link", true);
        link.setAttribute("href", "house/" + desk.session().id() + "/" + PlaceKind.FINDINGS.slug() + "?by=who");
        open.below(findings.appendChild(link));
        Element slots = Dom.el(
                "dl", "slots", load.element(), run.element(), sizes.element(), mustFix.element(), open.element());
        supply.elements().forEach(slots::appendChild);
        head.addTo(panel);
        panel.appendChild(next.element(), slots);
    }

    /** What may be spoken of it, by what it is about. */
    public Map<String, String> spoken() {
        return spoken;
    }

    /** The selected size for the foot strip. */
    public String sizeInShort(HouseState now) {
        return hand.sizeInShort(now);
    }

    /** What the foot strip calls it. */
    public String handInShort() {
        return hand.inShort();
    }

    /** What to do next, in one sentence. */
    public String nextWords() {
        return next.words();
    }

    /** Goes to where the next thing is done. */
    public void goNext() {
        next.go();
    }

    public void show(HouseState now) {
        UnitSystem units = desk.units();
        Optional<Review> review = desk.session().review();
        head.state(now.words(), now.because());
        next.show();
        spoken.clear();
        spoken.put("state", now.words());
        hand.show(review, now, spoken);
        showLoad(review, units);
        showRun(review, units);
        showSizes(review, now);
        supply.show(review, units, spoken);
        List<Finding> findings = desk.session().findings();
        boolean any = review.isPresent() && !now.isNothing();
        mustFix.show(
                any ? Optional.of(String.valueOf(now.mustFix())) : Optional.empty(),
                "",
                review.isPresent() ? "not yet" : "not known");
        mustFix.mark("has-must", now.mustFix() > 0);
        showMust(findings.stream()
                .filter(f -> f.severity() == Severity.MUST_FIX && f.isOpen())
                .toList());
        open.show(
                review.isPresent() ? Optional.of(String.valueOf(now.questions())) : Optional.empty(), "", "not known");
        open.note(QuestionsByWhom.counts(OpenQuestions.of(desk.session()).now().stream()
                .map(OpenQuestions.Asked::first)
                .toList()));
        spoken.put("must", now.mustFix() == 0 ? "" : now.mustFix() + " must fix");
        spoken.put("open", now.questions() == 1 ? "one question open" : now.questions() + " questions open");
    }

    private void showLoad(Optional<Review> review, UnitSystem units) {
        boolean any = review.map(r -> r.connectedLoad().btuh() > 0).orElse(false);
        if (!any) {
            load.show(Optional.empty(), "", review.isPresent() ? "not yet" : "not known");
            load.note("");
            load.origin(Optional.empty());
            return;
        }
        Review r = review.get();
        String figure = units.heat(r.connectedLoad());
        load.show(Optional.of(figure), units.heatUnit().name(), "");
        load.note(r.connectedLoadComplete() ? "" : "so far; not every appliance has an input and a section");
        load.origin(Optional.of(new SizingOrigins(r).connectedLoad()));
        spoken.put("load", "connected load " + figure + " " + units.heatUnit().name());
    }

    /** The longest run of the last stage, which is the one inside the house. */
    private void showRun(Optional<Review> review, UnitSystem units) {
        OptionalInt stage = review.map(HouseAnswer::lastStage).orElse(OptionalInt.empty());
        if (stage.isEmpty()) {
            run.show(Optional.empty(), "", review.isPresent() ? "not yet" : "not known");
            run.note("");
            run.origin(Optional.empty());
            return;
        }
        Review r = review.get();
        StageSize size = r.sizing().stage(stage.getAsInt());
        String unit = units.lengthUnit().name();
        String feet = units.length(size.longestRun().orElse(Length.ZERO));
        String to = size.longestRunTo().map(o -> Names.of(r, o.id())).orElse("its end");
        run.show(Optional.of(feet), unit, "");
        run.note("to " + to + ": " + units.length(size.measured().orElse(Length.ZERO)) + " measured, "
                + units.length(size.allowance().orElse(Length.ZERO)) + " for fittings"
                + ProvisionalSize.withoutAssumed(r, stage.getAsInt(), units));
        run.origin(Optional.of(new SizingOrigins(r).longestRun(stage.getAsInt())));
        spoken.put("run", "longest run " + feet + " " + unit + ", to " + to);
    }

    private static OptionalInt lastStage(Review r) {
        List<Stage> stages = r.piping().stages();
        for (int i = stages.size() - 1; i >= 0; i--) {
            if (r.sizing().stage(i).longestRun().isPresent()) {
                return OptionalInt.of(i);
            }
        }
        return OptionalInt.empty();
    }

    private void showSizes(Optional<Review> review, HouseState now) {
        List<List<String>> cells = new ArrayList<>();
        int inHand = review.map(hand::inHand).orElse(OptionalInt.empty()).orElse(-1);
        for (int i = 0; i < review.map(r -> r.piping().sectionCount()).orElse(0); i++) {
            Review r = review.get();
            String id = r.piping().section(i).id();
            String size = r.sizing().section(i).size().orElse("\u2013");
            cells.add(List.of(id, size, ProvisionalSize.suffix(r, i), i == inHand ? "on" : ""));
        }
        long sized = review.map(ProvisionalSize::sized).orElse(0L);
        List<String> unfed = review.map(HouseAnswer::unfed).orElse(List.of());
        boolean soFar = !unfed.isEmpty() || review.filter(ProvisionalSize::any).isPresent();
        sizes.show(
                cells.isEmpty() ? Optional.empty() : Optional.of(sized + " of " + cells.size()),
                cells.isEmpty() ? "" : soFar ? "sections settled" : "sections",
                now.unsized());
        sizes.note(
                unfed.isEmpty()
                        ? ""
                        : "No section feeds "
                                + String.join(", ", unfed.subList(0, Math.min(3, unfed.size())))
                                + (unfed.size() > 3 ? " and " + (unfed.size() - 3) + " more" : "") + " yet.");
        if (cells.toString().equals(sizesShown)) {
            return;
        }
        sizesShown = cells.toString();
        Dom.fill(
                sizeList,
                cells.stream()
                        .map(cell -> Dom.el(
                                "li",
                                cell.get(3),
                                Dom.text("span", "", cell.get(0)),
                                Dom.text("b", "", cell.get(1)),
                                Dom.text("small", "", cell.get(2))))
                        .toArray(Element[]::new));
    }

    /** Appliances that no section feeds: their pipe is not there yet, and their load is in no size. */
    private static List<String> unfed(Review r) {
        return r.plan().appliances().stream()
                .filter(a -> !a.fedBy().isKnown())
                .map(r.piping().names()::called)
                .toList();
    }

    private void showMust(List<Finding> must) {
        if (must.equals(mustShown)) {
            return;
        }
        mustShown = must;
        mustList.removeAllChildren();
        for (Finding f : must.subList(0, Math.min(3, must.size()))) {
            String words = Sentence.of(f.found());
            if (PlaceKind.find(f.field()).isPresent()) {
                Element go = Dom.button("ask", words);
                go.addEventListener("click", e -> desk.goTo(f.field()));
                mustList.appendChild(go);
            } else {
                mustList.appendChild(Dom.text("span", "line", words));
            }
        }
    }
}
