package longrun.ui.run;

import com.vaadin.flow.dom.Element;
import java.util.List;
import java.util.Optional;
import longrun.finding.Finding;
import longrun.ui.frame.BigSize;
import longrun.ui.frame.Dom;
import longrun.ui.frame.FindingLine;
import longrun.ui.frame.UnitSystem;
import longrun.ui.frame.WhereFrom;

/** Beside the lines, always in view: the size of the line in hand, what it rests on, and what is open. */
final class AnswerPanel {

    private final Element whose = Dom.text("p", "whose", "");
    private final Element hand = Dom.el("div", "hand");
    private final Element state = Dom.text("p", "state", "");
    private final Element because = Dom.text("p", "q s because", "");
    private final Slot load = new Slot("Load");
    private final Slot share = new Slot("Share used");
    private final Slot row = new Slot("Row");
    private final Slot carries = new Slot("Carries");
    private final WhereFrom from = new WhereFrom();
    private final Element findings = Dom.el("div", "finds");
    private String handShown = "";
    private List<Finding> findingsShown = List.of();

    /** A fixed slot: it never moves, only its figure changes. */
    private static final class Slot {
        private final Element term = new Element("dt");
        private final Element figure = Dom.el("dd", "f").setAttribute("data-fig", "");
        private final Element note = Dom.text("dd", "w", "");
        private final Element slot = Dom.el("div", "slot", term, figure, note);
        private String shown = "\u0000";

        Slot(String name) {
            term.setText(name);
        }

        void show(Optional<String> value, String unit) {
            String now = value.orElse("") + unit;
            if (now.equals(shown)) {
                return;
            }
            shown = now;
            figure.removeAllChildren();
            Dom.setClass(figure, "none", value.isEmpty());
            figure.setText(value.map(v -> v + " ").orElse("not yet"));
            if (value.isPresent()) {
                figure.appendChild(Dom.text("small", "", unit));
            }
        }
    }

    AnswerPanel(Element panel) {
        carries.slot.removeChild(carries.note);
        load.slot.removeChild(load.note);
        share.slot.removeChild(share.note);
        carries.slot.appendChild(Dom.el("dd", "w", from.ask()));
        Element print = Dom.button("act main", "Print this run, one page").setAttribute("data-do", "print");
        panel.appendChild(
                whose,
                hand,
                state,
                because,
                Dom.el("dl", "slots", load.slot, share.slot, row.slot, carries.slot),
                from.list(),
                findings,
                Dom.el("p", "acts", print));
    }

    WhereFrom whereFrom() {
        return from;
    }

    void state(String words, String why) {
        Dom.retext(state, words);
        Dom.retext(because, why);
    }

    String stateShown() {
        return state.getText() + ": " + because.getText();
    }

    /** The line in hand, its answer as far as there is one, and the word to stand where no size can. */
    void show(Optional<Line> line, Optional<RunAnswer.LineAnswer> answer, Pipe pipe, UnitSystem units, String word) {
        Dom.retext(
                whose,
                line.map(l -> "Line " + l.id() + (l.name().isBlank() ? "" : ", " + l.name()))
                        .orElse("No line yet"));
        Optional<RunAnswer.Sized> cell = answer.flatMap(RunAnswer.LineAnswer::cell);
        String handNow = pipe
                + cell.map(c -> c.size() + c.od() + c.bore()).orElse(word + answer.map(RunAnswer.LineAnswer::status));
        if (!handNow.equals(handShown)) {
            handShown = handNow;
            hand.removeAllChildren();
            if (cell.isPresent()) {
                hand.appendChild(BigSize.of(cell.get().size(), beside(cell.get(), pipe)));
                cell.get()
                        .bore()
                        .ifPresent(b -> hand.appendChild(
                                Dom.drawing(PipeEnd.of(b.inches(), PipeEnd.outside(pipe, cell.get())))));
            } else {
                hand.appendChild(BigSize.word(
                        answer.map(a -> a.status() == RunAnswer.Status.NO_SIZE).orElse(false) ? "no size" : word));
            }
        }
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
                                + units.lengthUnit().name() + ", to " + s.to())
                        .orElse("set by the longest run"));
        Dom.retext(
                carries.term,
                cell.map(c -> c.size() + (pipe == Pipe.CSST ? " EHD" : " in.") + " carries")
                        .orElse("Carries"));
        carries.show(cell.map(c -> units.heat(c.capacity())), units.heatUnit().name());
        from.show(cell.map(c -> c.why().stream().map(w -> step(w, units)).toList())
                .orElse(List.of()));
    }

    private static String beside(RunAnswer.Sized cell, Pipe pipe) {
        return cell.od().map(od -> pipe.beside() + "\n(" + od + " OD)").orElse(pipe.beside());
    }

    private static WhereFrom.Step step(RunAnswer.WhyStep w, UnitSystem units) {
        List<List<String>> sum = w.sum().stream()
                .map(t -> List.of(t.what(), units.length(t.length())))
                .toList();
        return new WhereFrom.Step(w.title(), w.text(), sum);
    }

    void findings(List<Finding> all, RunDraft draft) {
        if (all.equals(findingsShown)) {
            return;
        }
        findingsShown = List.copyOf(all);
        findings.removeAllChildren();
        all.forEach(f -> findings.appendChild(FindingLine.of(
                f,
                draft.lineAt(f.field())
                        .or(() -> draft.lineOf(f.at()))
                        .map(i -> (f.field().endsWith("/input") ? "input-" : "length-") + i))));
    }
}
