package longrun.ui.run;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.dependency.JsModule;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.dom.Element;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import longrun.ui.frame.Dom;
import longrun.ui.frame.Frame;
import longrun.ui.frame.History;
import longrun.ui.frame.Keeper;
import longrun.ui.frame.RowTable;
import longrun.ui.frame.Scale;
import longrun.ui.frame.UnitSystem;

/** Size a run: where the pressure starts, material, lines, fittings, the row used, and the size of the line in hand. */
@Route("run")
@PageTitle("Size a run \u00b7 Longrun")
@StyleSheet("context://frontend/run.css")
@JsModule("context://frontend/lines.js")
public final class RunView extends Frame implements LineRow.Hand, Keeper.Hears {

    private final transient Sizer sizer;
    private final transient BecomesHouse houses;
    private final transient History<RunDraft> history = new History<>(RunDraft.empty());
    private final transient Map<Allowance, RunAnswer> answers = new EnumMap<>(Allowance.class);
    private final transient LinesTable lines = new LinesTable(this, this::pasted);
    private final transient AnswerPanel panel;
    private final transient RowTable row = new RowTable();
    private final transient PastePanel paste = new PastePanel(this::takePasted);
    private final Scale<Start> starts;
    private final Scale<Pipe> pipes;
    private final Scale<Allowance> fittings;
    private final Element startNote = Dom.text("p", "lede start-note", "");
    private final Element fittingNote = Dom.text("p", "lede start-note", "").setAttribute("data-fig", "");
    private final Element rowHeading;
    private final Element rowUnit;
    private final Element rowSource = Dom.text("p", "q s start-note", "");
    private final Element rowEmpty =
            Dom.text("p", "lede", "The row is shown here as soon as the longest run is known.");
    private final Element offer = Dom.el("div", "acts screen-only start-note");
    private final Element fileSaid =
            Dom.text("p", "s", "").setAttribute("role", "status").setAttribute("id", "file-said");
    private final Element notice = Dom.el("div", "notice").setAttribute("role", "status");
    private final Keeper keeper = new Keeper("longrun-run", this);
    private UnitSystem units = UnitSystem.CUSTOMARY;
    private transient List<String> wrong = List.of();
    private int inHand;
    private boolean begun;

    public RunView(Sizer sizer, BecomesHouse houses) {
        super("Size a run", "fuel gas code, 2018");
        this.sizer = sizer;
        this.houses = houses;
        starts = new Scale<>(
                "start",
                "where",
                List.of(Start.values()),
                s -> new Scale.Choice(s.title(), s.note(), Optional.of(StartPictures.of(s))),
                s -> change(draft().with(s)));
        pipes = new Scale<>(
                "pipe",
                "material",
                List.of(Pipe.values()),
                p -> Scale.Choice.of(p.title(), p.note()),
                p -> change(draft().with(p)));
        fittings = new Scale<>(
                "fittings",
                "fit",
                List.of(Allowance.values()),
                a -> Scale.Choice.of(a.title(), ""),
                a -> change(draft().with(a)));
        panel = new AnswerPanel(answer());
        Element rows = section("row", "The row used", "thousand Btu/h", rowEmpty, row.element(), rowSource);
        rowHeading = rows.getChild(0).getChild(0);
        rowUnit = rows.getChild(0).getChild(1);
        Element demo = Dom.button("ask", "Show the demo run");
        demo.addEventListener(
                "click", e -> replace(RunDraft.demo(), "The demo run is shown; undo brings back what was here."));
        offer.appendChild(Dom.text("span", "q", "Nothing is typed yet."), demo);
        work().appendChild(
                        notice,
                        section(
                                "where",
                                "Where the pressure starts",
                                "Runs are measured from the last regulator before the appliances.",
                                starts.getElement(),
                                startNote),
                        section("material", "Material", "", pipes.getElement()),
                        section(
                                "lines",
                                "Lines",
                                "Enter for the next. A list from a spreadsheet can be pasted.",
                                lines.element(),
                                offer,
                                paste.element()),
                        section(
                                "fit",
                                "Fittings",
                                "Elbows and tees hold the gas back like more pipe.",
                                fittings.getElement(),
                                fittingNote),
                        rows,
                        sheetActions(),
                        keeper.getElement());
        Dom.show(notice, false);
        onUndo(this::undo, this::redo);
        onUnits(this::setUnits);
        refresh();
    }

    private Element sheetActions() {
        Element demo = Dom.button("act", "Show the demo run");
        demo.addEventListener(
                "click", e -> replace(RunDraft.demo(), "The demo run is shown; undo brings back what was here."));
        Element empty = Dom.button("act", "Begin an empty run");
        empty.addEventListener(
                "click", e -> replace(RunDraft.empty(), "An empty run; undo brings back what was here."));
        Element open = Dom.button("act", "Open a plan file");
        open.addEventListener("click", e -> keeper.open());
        Element save = Dom.button("act", "Save the plan file");
        save.addEventListener("click", e -> {
            keeper.download("run.longrun.json", RunFile.write(draft()));
            Dom.retext(fileSaid, "The plan file run.longrun.json went to the browser\u2019s downloads.");
        });
        Element house = Dom.button("act", "Make a house of this run");
        house.addEventListener(
                "click", e -> UI.getCurrent().navigate("house/" + houses.keep(draft().plan()) + "/house"));
        Element s = section("sheet", "This sheet", "", Dom.el("div", "acts", demo, empty, open, save, house), fileSaid);
        return s.setAttribute("class", "side screen-only");
    }

    @Override
    protected Element[] afterWork() {
        Element signs = Dom.el("section", "signs").setAttribute("aria-label", "To sign");
        for (String who : List.of("Fitter, name and licence", "Inspector, name and office")) {
            signs.appendChild(Dom.el("div", ""), Dom.el("div", ""), Dom.el("div", ""));
            for (String blank : List.of(who, "Signature", "Date")) {
                signs.appendChild(Dom.text("span", "", blank));
            }
        }
        return new Element[] {signs};
    }

    // What a person does.

    @Override
    public void typed(int index, Line.Column column, String stored) {
        inHand = index;
        history.take(draft().typed(index, column, stored), index + " " + column);
        refresh(false);
    }

    @Override
    public void leaves(int index, String from) {
        change(draft().from(index, from));
    }

    @Override
    public void removed(int index) {
        inHand = Math.max(0, index - 1);
        change(draft().without(index));
    }

    @Override
    public void inHand(int index) {
        inHand = index;
        history.endStep();
        lines.mark(draft(), inHand);
        showHand();
        showState();
    }

    private void pasted(String text) {
        paste.show(
                new PasteReader(units).read(text, draft().lines().size()),
                units,
                draft().lines().size());
    }

    private void takePasted(List<PastedLine> pasted) {
        inHand = draft().lines().size();
        change(draft().plus(pasted));
    }

    private void undo() {
        history.undo().ifPresent(d -> refresh());
    }

    private void redo() {
        history.redo().ifPresent(d -> refresh());
    }

    private void setUnits(UnitSystem system) {
        units = system;
        refresh();
    }

    // What the keeper brings.

    @Override
    public void kept(String text, Map<String, String> unsent, Optional<UnitSystem> keptUnits) {
        keptUnits.ifPresent(u -> units = u);
        if (!begun && !text.isEmpty()) {
            try {
                history.take(RunFile.read(text), "");
            } catch (RunFile.NotARun e) {
                Dom.retext(fileSaid, "What this browser had kept could not be opened: " + e.getMessage() + ".");
            }
        }
        begun = true;
        lines.show(draft(), units);
        unsent.forEach(this::typedBefore);
        refresh();
    }

    /** An entry typed while the program did not answer. */
    private void typedBefore(String place, String text) {
        String[] at = place.split(" ", 2);
        int index = Integer.parseInt(at[0]);
        if (index < lines.size()) {
            Line.Column column = Line.Column.valueOf(at[1]);
            history.take(draft().typed(index, column, lines.row(index).stored(column, text)), place);
            lines.show(draft(), units);
        }
    }

    @Override
    public void keptElsewhere(String text) {
        notice.removeAllChildren();
        Element take = Dom.button("act", "Take what the other window has");
        take.addEventListener("click", e -> {
            Dom.show(notice, false);
            open("the other window", text);
        });
        Element keep = Dom.button("act", "Keep what is here");
        keep.addEventListener("click", e -> {
            Dom.show(notice, false);
            keeper.keepAgain(draft().kept());
        });
        notice.appendChild(
                Dom.text(
                        "p",
                        "",
                        "This run was changed in another window of this browser. Here it stands as you left it."),
                Dom.el("div", "acts", take, keep));
        Dom.show(notice, true);
    }

    @Override
    public void opened(String name, String text, boolean tooLong) {
        if (tooLong) {
            Dom.retext(fileSaid, name + " was not opened: it is over 1 MiB, and no plan is. Nothing here was changed.");
        } else {
            open(name, text);
        }
    }

    private void open(String name, String text) {
        try {
            replace(RunFile.read(text), name + " is open; undo brings back what was here.");
        } catch (RunFile.NotARun e) {
            Dom.retext(fileSaid, name + " was not opened: " + e.getMessage() + ". Nothing here was changed.");
        }
    }

    // What the page shows.

    private void replace(RunDraft next, String said) {
        inHand = Math.max(0, Math.min(1, next.lines().size() - 1));
        answers.clear();
        change(next);
        Dom.retext(fileSaid, said);
    }

    private void change(RunDraft next) {
        history.take(next, "");
        refresh();
    }

    RunDraft draft() {
        return history.now();
    }

    LinesTable lines() {
        return lines;
    }

    AnswerPanel panel() {
        return panel;
    }

    private void refresh() {
        refresh(true);
    }

    /** @param write whether the fields are written; never after a key, since the person is typing in one */
    private void refresh(boolean write) {
        RunDraft draft = draft();
        inHand = Math.min(inHand, draft.lines().size());
        starts.setValue(draft.start());
        pipes.setValue(draft.pipe());
        fittings.setValue(draft.allowance());
        showUnits(units);
        Dom.show(startNote, draft.start() == Start.TWO_PSI);
        Dom.retext(
                startNote,
                "Line A carries 2 psi to the line regulator; the lines that leave it carry 11 in. w.c. Each of the two is sized alone.");
        Dom.show(offer, draft.lines().isEmpty());
        lines.show(draft, units);
        if (write) {
            lines.write(draft, units);
        }
        lines.mark(draft, inHand);
        Sizer.Result now = sizer.size(draft.plan());
        wrong = WrongEntries.show(draft, lines, now.errors());
        if (wrong.isEmpty()) {
            answers.clear();
            answers.putAll(now.others());
            answers.put(draft.allowance(), now.answer());
        }
        panel.findings(shown().findings(), draft);
        showHand();
        showState();
        canUndo(history.canUndo(), history.canRedo());
        if (begun) {
            keeper.keep(draft.kept(), lines.heard());
        }
    }

    private void showState() {
        RunDraft draft = draft();
        RunState state = RunState.of(draft, shown(), wrong, inHand);
        lines.answer(draft, shown(), units, state.unsized());
        panel.state(state.words(), state.because());
        panel.show(inHandLine(), inHandAnswer(), draft.pipe(), units, state.unsized());
        foot().show(
                        inHandLine().map(l -> "Line " + l.id()).orElse("Size"),
                        inHandAnswer()
                                .flatMap(RunAnswer.LineAnswer::cell)
                                .map(c -> named(c.size()))
                                .orElse(state.unsized()),
                        state.mustFix(),
                        state.questions());
        speak(Spoken.of(draft, shown(), state));
    }

    private RunAnswer shown() {
        return answers.getOrDefault(draft().allowance(), RunAnswer.NOTHING);
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
        Optional<RunAnswer.Sized> cell = own.flatMap(RunAnswer.LineAnswer::cell);
        Dom.retext(
                rowHeading,
                inHandLine()
                        .filter(l -> cell.isPresent())
                        .map(l -> "The row used, line " + l.id())
                        .orElse("The row used"));
        Dom.retext(rowUnit, units.cellUnit());
        Dom.show(rowEmpty, cell.isEmpty());
        Dom.show(row.element(), cell.isPresent());
        Dom.show(rowSource, cell.isPresent());
        cell.ifPresent(c -> showRow(c.row()));
        showFittings(own.flatMap(RunAnswer.LineAnswer::stage));
    }

    private void showRow(RunAnswer.TableRow t) {
        List<RowTable.Row> rows = t.rows().stream()
                .map(r -> new RowTable.Row(
                        units.row(r.run()),
                        r.used(),
                        r.capacities().stream()
                                .map(c -> c.map(units::cell).orElse("\u2013"))
                                .toList()))
                .toList();
        row.show(
                "Capacity, " + units.cellUnit(),
                "Run, " + units.lengthUnit().name(),
                t.sizes(),
                t.ods(),
                rows,
                t.hitColumn());
        Dom.retext(rowSource, t.source() + " " + t.held());
    }

    /** Each position of the fitting switch tells what it would add, and which row that takes. */
    private void showFittings(Optional<RunAnswer.StageRun> inHandRun) {
        String unit = " " + units.lengthUnit().name();
        for (Allowance a : Allowance.values()) {
            Optional<RunAnswer.StageRun> run = inHandLine()
                    .flatMap(l -> Optional.ofNullable(
                            answers.getOrDefault(a, RunAnswer.NOTHING).lines().get(l.id())))
                    .flatMap(RunAnswer.LineAnswer::stage);
            fittings.note(
                    a,
                    run.map(r -> (a == Allowance.NONE ? "" : "+")
                                    + units.length(r.added())
                                    + unit
                                    + r.row().map(f -> ", row " + units.row(f)).orElse(""))
                            .orElse(""));
        }
        Dom.retext(fittingNote, inHandRun.map(this::fittingEffect).orElse(""));
    }

    /** What the fitting switch does to the run, and to which sizes. */
    private String fittingEffect(RunAnswer.StageRun run) {
        String unit = " " + units.lengthUnit().name();
        String becomes = units.length(run.measured()) + unit + " measured becomes " + units.length(run.withFittings())
                + unit + ".";
        Map<String, RunAnswer.LineAnswer> without =
                answers.getOrDefault(Allowance.NONE, RunAnswer.NOTHING).lines();
        String changed = draft().lines().stream()
                .map(Line::id)
                .filter(id -> !size(without, id).equals(size(shown().lines(), id)))
                .filter(id -> !size(without, id).isEmpty()
                        && !size(shown().lines(), id).isEmpty())
                .map(id -> "line " + id + " would come to " + size(without, id) + "; with them it is "
                        + named(size(shown().lines(), id)))
                .findFirst()
                .map(s -> " Left out, " + s + (s.endsWith(".") ? "" : "."))
                .orElse(
                        draft().allowance() == Allowance.NONE
                                        || inHandAnswer()
                                                .flatMap(RunAnswer.LineAnswer::cell)
                                                .isEmpty()
                                ? ""
                                : " No size changes by it.");
        return becomes + changed;
    }

    private String named(String size) {
        return size + (draft().pipe() == Pipe.CSST ? "\u00a0EHD" : "\u00a0in.");
    }

    private static String size(Map<String, RunAnswer.LineAnswer> lines, String id) {
        return Optional.ofNullable(lines.get(id))
                .flatMap(RunAnswer.LineAnswer::cell)
                .map(RunAnswer.Sized::size)
                .orElse("");
    }
}
