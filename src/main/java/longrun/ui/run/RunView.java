package longrun.ui.run;

import com.vaadin.flow.component.dependency.JsModule;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.dom.Element;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import java.util.List;
import java.util.Optional;
import longrun.draft.run.Announcements;
import longrun.draft.run.HouseMaker;
import longrun.draft.run.Line;
import longrun.draft.run.PastedLine;
import longrun.draft.run.Pipe;
import longrun.draft.run.RunAnswer;
import longrun.draft.run.RunAnswers;
import longrun.draft.run.RunDraft;
import longrun.draft.run.RunPasteReader;
import longrun.draft.run.RunState;
import longrun.draft.run.Sizer;
import longrun.ui.frame.Dom;
import longrun.ui.frame.KeptPage;
import longrun.ui.lines.PastePreview;

/** Size a run: where the pressure starts, material, lines, fittings, the row used, and the size of the selected line. */
@Route("run")
@PageTitle("Size a run \u00b7 Longrun")
@StyleSheet("context://frontend/run.css")
@JsModule("context://frontend/lines.js")
public final class RunView extends KeptPage<RunDraft> implements LineRow.Actions {

    private final transient RunAnswers answers;
    private final transient LinesTable lines = new LinesTable(this, this::pasted);
    private final transient AnswerPanel panel;
    private final transient RunFindings findings;
    private final transient RowUsed row = new RowUsed();
    private final transient LineProofs proofs = new LineProofs();
    private final transient PastePreview<PastedLine> paste = new PastePreview<>("paste-h", "line", this::takePasted);
    private final transient RunBasis basis;
    private final transient FittingSwitch fittings = new FittingSwitch(a -> change(draft().with(a)));
    private final Element offer = offer("start-note");
    private transient List<String> wrong = List.of();
    private int inHand;
    private final Element notSized = Dom.text("p", "not-sized", ""); // on paper only

    public RunView(Sizer sizer, HouseMaker houses) {
        super("Size a run", "fuel gas code, 2018", "longrun-run", new RunSheet(), houses);
        answers = new RunAnswers(sizer);
        basis = new RunBasis(s -> change(draft().with(s)), this::choose, acts()::makeHouse);
        findings = new RunFindings(acts()::makeHouse);
        panel = new AnswerPanel(answer(), findings);
        Element rows = section("row", "The row used", "thousand Btu/h", row.content());
        row.headedBy(rows);
        rows.setAttribute("class", "side screen-only"); // on paper each line has its own
        work().appendChild(
                        notSized,
                        section(
                                "where",
                                "Where the pressure starts",
                                "Runs are measured from the last regulator before the appliances.",
                                basis.start()),
                        section("material", "Material", "Of every line that has none of its own.", basis.pipe()),
                        section(
                                "lines",
                                "Lines",
                                "Enter for the next. Another material stands with the length, csst 12, and the lines"
                                        + " after it go on in it. A list from a spreadsheet can be pasted.",
                                lines.element(),
                                offer,
                                paste.element()),
                        section(
                                "fit",
                                "Fittings",
                                "Elbows and tees hold the gas back like more pipe.",
                                fittings.content()),
                        rows,
                        proofs.element(),
                        section("sheet", "This sheet", "", acts().acts(), acts().said())
                                .setAttribute("class", "side screen-only"));
        begin();
    }

    @Override
    protected Element[] afterWork() {
        return new Element[] {SignBlanks.element()};
    }

    // What a person does.

    @Override
    public void typed(int index, Line.Column column, String stored) {
        // A line before it that has been emptied since leaves its place to it.
        boolean movesUp = index > draft().lines().size();
        inHand = index;
        takeKey(draft().typed(index, column, stored), index + " " + column);
        refresh(movesUp);
    }

    void choose(Pipe pipe) {
        change(draft().with(pipe));
    }

    @Override
    public void leaves(int index, String from) {
        change(draft().from(index, from));
    }

    @Override
    public void isOf(int index, Pipe pipe) {
        change(draft().with(index, pipe));
    }

    @Override
    public void removed(int index) {
        inHand = Math.max(0, index - 1);
        change(draft().without(index));
    }

    @Override
    public void inHand(int index) {
        inHand = index;
        endStep();
        lines.mark(draft(), inHand);
        showHand();
        showState();
    }

    void pasted(String text) {
        int first = draft().lines().size();
        RunPasteReader.Understood u = new RunPasteReader(units()).read(text, first);
        paste.show(u.lines(), PasteRows.understood(u), PasteRows.of(u.lines(), units(), first));
    }

    private void takePasted(List<PastedLine> pasted) {
        inHand = draft().lines().size();
        change(draft().plus(pasted));
    }

    @Override
    protected void typedBefore(String place, String text) {
        String[] at = place.split(" ", 2);
        int index = Integer.parseInt(at[0]);
        if (index < lines.size()) {
            Line.Column column = Line.Column.valueOf(at[1]);
            takeKey(draft().typed(index, column, lines.row(index).stored(column, text)), place);
            lines.show(draft(), units());
        }
    }

    // What the page shows.

    @Override
    protected void replace(RunDraft next) {
        paste.close(); // what was pasted was for the run before
        inHand = Math.max(0, Math.min(1, next.lines().size() - 1));
        change(next);
    }

    PastePreview<PastedLine> paste() {
        return paste;
    }

    LinesTable lines() {
        return lines;
    }

    @Override
    protected void refresh() {
        refresh(true);
    }

    /** @param write whether the fields are written; never after a key, since the person is typing in one */
    private void refresh(boolean write) {
        RunDraft draft = draft();
        inHand = Math.min(inHand, draft.lines().size());
        basis.show(draft);
        fittings.choose(draft.allowance());
        Dom.show(offer, draft.lines().isEmpty());
        lines.show(draft, units());
        if (write) {
            lines.write(draft, units());
        }
        lines.mark(draft, inHand);
        Sizer.Result now = answers.size(draft);
        wrong = WrongEntries.show(draft, lines, now.errors());
        answers.take(draft, now, wrong, before());
        findings.show(shown(), draft);
        showHand();
        showState();
        keep(lines.heard());
    }

    private void showState() {
        RunDraft draft = draft();
        RunState state = RunState.of(draft, shown(), wrong, inHand);
        lines.answer(draft, shown(), units(), state.unsized());
        proofs.show(draft, shown(), units());
        Dom.show(notSized, !state.words().equals(RunState.SIZED));
        Dom.retext(notSized, "Not sized. " + state.words() + ". " + state.because());
        panel.state(state.words(), state.because());
        panel.show(inHandLine(), inHandAnswer(), draft.pipe(), units(), state.unsized());
        foot().show(
                        inHandLine().map(l -> "Line " + l.id()).orElse("Size"),
                        inHandAnswer()
                                .flatMap(RunAnswer.LineAnswer::cell)
                                .map(c -> c.size()
                                        + inHandLine()
                                                .map(Line::pipe)
                                                .orElse(draft.pipe())
                                                .sizeUnit())
                                .orElse(state.unsized()),
                        state.mustFix(),
                        state.questions());
        speak(Announcements.of(draft, shown(), state));
    }

    private RunAnswer shown() {
        return answers.at(draft().allowance());
    }

    private Optional<Line> inHandLine() {
        List<Line> all = draft().lines();
        return inHand < all.size()
                ? Optional.of(all.get(inHand))
                : all.isEmpty() ? Optional.empty() : Optional.of(all.get(all.size() - 1));
    }

    private Optional<RunAnswer.LineAnswer> inHandAnswer() {
        return inHandLine().flatMap(l -> Optional.ofNullable(shown().lines().get(l.id())));
    }

    private void showHand() {
        Optional<RunAnswer.LineAnswer> own = inHandAnswer();
        row.show(inHandLine(), own.flatMap(RunAnswer.LineAnswer::cell), units());
        fittings.show(draft(), inHandLine(), answers, units());
    }
}
