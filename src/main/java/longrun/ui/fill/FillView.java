package longrun.ui.fill;

import com.vaadin.flow.component.dependency.JsModule;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.dom.Element;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import longrun.draft.fill.FillDraft;
import longrun.draft.fill.FillErrors;
import longrun.draft.fill.FillState;
import longrun.draft.run.HouseMaker;
import longrun.ui.frame.Dom;
import longrun.ui.frame.KeptPage;
import org.springframework.beans.factory.annotation.Autowired;

/** How long does a fill last: the tank, its gauge, the climate, what burns, the truck; and the day to call by. */
@Route("fill")
@PageTitle("How long does a fill last \u00b7 Longrun")
@StyleSheet("context://frontend/run.css")
@StyleSheet("context://frontend/field.css")
@StyleSheet("context://frontend/house.css")
@StyleSheet("context://frontend/place.css")
@StyleSheet("context://frontend/fill.css")
@JsModule("context://frontend/lines.js")
public final class FillView extends KeptPage<FillDraft> {

    private final transient FillReviewer reviewer;
    private final transient Supplier<LocalDate> clock;
    private final transient FillActions hand = new FillEdits(this);
    private final transient FillFields fields = new FillFields(hand);
    private final transient FuelUseTable burns = new FuelUseTable(hand);
    private final transient FillDetails below = new FillDetails(hand);
    private final transient FillAnswerPanel panel;
    private final Element notKnown = Dom.text("p", "not-sized", ""); // on paper only
    private final Element offer = offer("offer");
    private transient Map<String, String> wrong = Map.of();
    private int inHand;

    @Autowired
    public FillView(FillReviewer reviewer, HouseMaker houses) {
        this(reviewer, houses, () -> LocalDate.now(ZoneId.systemDefault()));
    }

    FillView(FillReviewer reviewer, HouseMaker houses, Supplier<LocalDate> clock) {
        super("How long does a fill last", "tank rules, NFPA 58", "longrun-fill", new FillSheet(clock), houses);
        this.reviewer = reviewer;
        this.clock = clock;
        getElement().getClassList().add("fill");
        panel = new FillAnswerPanel(answer());
        work().appendChild(
                        notKnown,
                        section("tank", "The tank", "All to one scale.", fields.tank()),
                        section("gauge", "The gauge", "On the tank, under the lid.", fields.gauge()),
                        section(
                                "place",
                                "Where it stands",
                                "The cold sets both the use and the vapour.",
                                fields.place()),
                        section(
                                "burns",
                                "What burns",
                                "Input stands on the plate. Enter for the next.",
                                burns.element(),
                                offer),
                        section("truck", "The truck", "Count a bad week, not a good one.", fields.truck()));
        Element acts = section("sheet", "This sheet", "", acts().acts(), acts().said());
        acts.setAttribute("class", "side screen-only sheet-acts");
        Element sheetOfWork = answer().getParent();
        // A sheet of its own: an answer that stays in view must not run down over it.
        getElement()
                .insertChild(
                        getElement().indexOfChild(sheetOfWork) + 1,
                        Dom.el("section", "after", below.element(), acts)
                                .setAttribute("aria-label", "The year, the tanks, past fills"));
        begin();
    }

    /** What a person does. */
    FillActions hand() {
        return hand;
    }

    /** The line that is selected from the next change on. */
    void standIn(int line) {
        inHand = Math.max(0, line);
    }

    /** A person has gone into a line: the next key begins a step of its own. */
    void goneInto(int line) {
        standIn(line);
        endStep();
        burns.mark(inHand);
    }

    @Override
    protected void typedBefore(String place, String text) {
        FillPlaces.type(this, place, text);
    }

    // What the page shows.

    @Override
    protected void replace(FillDraft next) {
        inHand = 0;
        change(next);
    }

    LocalDate today() {
        return clock.get();
    }

    FillFields fields() {
        return fields;
    }

    FuelUseTable burns() {
        return burns;
    }

    PastFillTable past() {
        return below.past();
    }

    /** A key: what else it changed is written into its field, the field it was typed in never. */
    void took(FillDraft next, String place) {
        takeKey(next, place);
        refresh(place);
    }

    @Override
    protected void refresh() {
        refresh("");
    }

    /** @param typing the place a person is typing in, which is not written; empty for none */
    private void refresh(String typing) {
        FillDraft draft = draft();
        LocalDate today = today();
        inHand = Math.min(inHand, draft.lines().size());
        Dom.show(offer, draft.lines().isEmpty());
        FillReviewer.Result now = reviewer.review(draft.whole());
        wrong = FillErrors.of(draft, now.errors(), today);
        // While an entry is not understood, the answer to what stood there before it.
        FillReviewer.Result shown = now;
        if (!wrong.isEmpty()) {
            shown = before().filter(d -> d.hasSameTank(draft))
                    .filter(d -> FillErrors.of(d, List.of(), today).isEmpty())
                    .map(d -> reviewer.review(d.whole()))
                    .orElse(FillReviewer.Result.NONE);
        }
        burns.show(draft, units(), inHand, typing);
        burns.gallons(draft, shown.report(), units());
        below.show(draft, shown.report(), today, units(), typing);
        fields.show(draft, units(), wrong, typing);
        showWrong();
        FillState state = FillState.of(
                draft,
                shown.report(),
                wrong.keySet().stream().map(FillErrors::where).toList(),
                today);
        panel.show(draft, state, shown.plan(), shown.report(), today, units());
        panel.findings(shown.findings(), draft);
        boolean dated = state.kind() == FillState.Kind.DATED || state.kind() == FillState.Kind.NOW;
        Dom.show(notKnown, !dated);
        Dom.retext(notKnown, state.words() + ". " + state.because());
        FillSpoken.foot(foot(), state, shown.report());
        speak(FillSpoken.of(state));
        keep(heard());
    }

    private void showWrong() {
        wrong.forEach((place, message) ->
                FillPlaces.entry(this, place).filter(e -> !e.isWrong()).ifPresent(e -> e.wrong(message)));
        for (int i = 0; i < burns.size(); i++) {
            burns.row(i).markWrong();
        }
        for (int i = 0; i < past().size(); i++) {
            past().row(i).markWrong();
        }
    }

    private Map<String, String> heard() {
        Map<String, String> heard = new LinkedHashMap<>(fields.heard());
        heard.putAll(burns.heard());
        heard.putAll(past().heard());
        return heard;
    }
}
