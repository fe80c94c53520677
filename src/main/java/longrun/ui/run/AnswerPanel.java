package longrun.ui.run;

import com.vaadin.flow.dom.Element;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import longrun.draft.run.Line;
import longrun.draft.run.Pipe;
import longrun.draft.run.PipeEnd;
import longrun.draft.run.RunAnswer;
import longrun.ui.frame.AnswerHead;
import longrun.ui.frame.BigSize;
import longrun.ui.frame.Dom;
import longrun.ui.frame.SlotFigure;
import longrun.ui.frame.WhereFrom;
import longrun.words.IsolatedName;
import longrun.words.UnitSystem;

/** Beside the lines, always in view: the size of the selected line, what it rests on, and what is open. */
final class AnswerPanel {

    private final AnswerHead head = new AnswerHead();
    private final Slot load = new Slot("Load");
    private final Slot share = new Slot("Share used");
    private final Slot row = new Slot("Row");
    private final Slot carries = new Slot("Carries");
    private final WhereFrom from = new WhereFrom("from");

    /** A fixed slot: it never moves, only its figure changes. */
    private static final class Slot {
        private final Element term = new Element("dt");
        private final SlotFigure figure = new SlotFigure();
        private final Element note = Dom.text("dd", "w", "");
        private final Element slot = Dom.el("div", "slot", term, figure.element(), note);

        Slot(String name) {
            term.setText(name);
        }

        void show(Optional<String> value, String unit) {
            figure.show(value.orElse("not yet"), value.isPresent() ? unit : "", value.isPresent());
        }
    }

    AnswerPanel(Element panel, RunFindings findings) {
        carries.slot.removeChild(carries.note);
        load.slot.removeChild(load.note);
        share.slot.removeChild(share.note);
        carries.slot.appendChild(Dom.el("dd", "w", from.ask()));
        Element print = Dom.button("act main", "Print this run, one page").setAttribute("data-do", "print");
        head.addTo(panel);
        panel.appendChild(
                Dom.el("dl", "slots", load.slot, share.slot, row.slot, carries.slot),
                from.list(),
                Dom.el("p", "acts", print));
        panel.insertChild(panel.getChildCount() - 1, findings.content());
    }

    void state(String words, String why) {
        head.state(words, why);
    }

    /**
     * The selected line, its answer as far as there is one, and the word to stand where no size can.
     *
     * @param ofRun the material while there is no line
     */
    void show(Optional<Line> line, Optional<RunAnswer.LineAnswer> answer, Pipe ofRun, UnitSystem units, String word) {
        Pipe pipe = line.map(Line::pipe).orElse(ofRun);
        head.title(line.map(l -> "Line " + l.id() + (l.name().isBlank() ? "" : ", " + IsolatedName.of(l.name())))
                .orElse("No line yet"));
        Optional<RunAnswer.Sized> cell = answer.flatMap(RunAnswer.LineAnswer::cell);
        boolean soFar = answer.map(RunAnswer.LineAnswer::soFar).orElse(false);
        String key = pipe
                + (soFar ? " so far" : "")
                + cell.map(c -> c.size() + c.od() + c.bore()).orElse(word + answer.map(RunAnswer.LineAnswer::status));
        head.selected(key, () -> hand(cell, answer, pipe, soFar, word));
        load.show(
                answer.flatMap(RunAnswer.LineAnswer::load).map(units::heat),
                units.heatUnit().name());
        share.show(cell.map(c -> String.valueOf(Math.round(c.sharePercent()))), "%");
        Optional<RunAnswer.StageRun> stage = answer.flatMap(RunAnswer.LineAnswer::stage);
        row.show(
                stage.flatMap(RunAnswer.StageRun::row).map(units::row),
                units.lengthUnit().name());
        Dom.retext(
                row.note,
                stage.map(s -> "longest run " + units.length(s.withFittings()) + " "
                                + units.lengthUnit().name() + ", to " + s.to()
                                + s.enteredParts()
                                        .map(b -> withoutAssumed(b, cell, units))
                                        .orElse(""))
                        .orElse("set by the longest run"));
        Dom.retext(
                carries.term,
                cell.map(c -> c.size() + (pipe == Pipe.CSST ? " EHD" : " in.") + " carries")
                        .orElse("Carries"));
        carries.show(cell.map(c -> units.heat(c.capacity())), units.heatUnit().name());
        from.show(cell.map(c -> c.why().stream().map(w -> step(w, units)).toList())
                .orElse(List.of()));
    }

    private static Element[] hand(
            Optional<RunAnswer.Sized> cell,
            Optional<RunAnswer.LineAnswer> answer,
            Pipe pipe,
            boolean soFar,
            String word) {
        boolean none = answer.map(a -> a.status() == RunAnswer.Status.NO_SIZE).orElse(false);
        Element size = cell.map(c -> BigSize.of(c.size(), beside(c, pipe, soFar)))
                .orElseGet(() -> BigSize.word(none ? "no size" : word));
        Optional<Element> bore =
                cell.flatMap(c -> c.bore().map(b -> Dom.drawing(PipeEnd.of(b.inches(), PipeEnd.outside(pipe, c)))));
        return Stream.concat(Stream.of(size), bore.stream()).toArray(Element[]::new);
    }

    /** Both figures where parts are counted that nobody has entered. */
    private static String withoutAssumed(
            RunAnswer.EnteredParts entered, Optional<RunAnswer.Sized> cell, UnitSystem units) {
        Optional<String> other =
                entered.size().filter(s -> !cell.map(RunAnswer.Sized::size).equals(Optional.of(s)));
        return ", with a shutoff at its end and a sediment trap where the rules ask for one; without them "
                + units.length(entered.run()) + " " + units.lengthUnit().name()
                + other.map(s -> ", size " + s).orElse("");
    }

    private static String beside(RunAnswer.Sized cell, Pipe pipe, boolean soFar) {
        return cell.od().map(od -> pipe.beside() + "\n(" + od + " OD)").orElse(pipe.beside())
                + (soFar ? "\nso far" : "");
    }

    private static WhereFrom.Step step(RunAnswer.WhyStep w, UnitSystem units) {
        List<List<String>> sum = w.sum().stream()
                .map(t -> List.of(t.what(), units.length(t.length())))
                .toList();
        return new WhereFrom.Step(w.title(), w.text(), sum);
    }
}
