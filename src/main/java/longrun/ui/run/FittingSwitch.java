package longrun.ui.run;

import com.vaadin.flow.dom.Element;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import longrun.draft.run.Line;
import longrun.draft.run.RunAnswer;
import longrun.draft.run.RunAnswers;
import longrun.draft.run.RunDraft;
import longrun.draft.sections.Allowance;
import longrun.draft.sections.AllowanceEffect;
import longrun.ui.frame.Dom;
import longrun.ui.lines.FittingScale;
import longrun.words.UnitSystem;

/** The one switch for fittings: what each position adds in feet, which row that takes, and which sizes hang on it. */
final class FittingSwitch {

    private final FittingScale positions;
    private final Element effect = Dom.text("p", "lede start-note", "").setAttribute("data-fig", "");

    FittingSwitch(Consumer<Allowance> chosen) {
        positions = new FittingScale("fittings", "fit", chosen);
    }

    Element[] content() {
        return new Element[] {positions.scale().getElement(), effect};
    }

    void choose(Allowance allowance) {
        positions.scale().setValue(allowance);
    }

    void show(RunDraft draft, Optional<Line> inHand, RunAnswers answers, UnitSystem units) {
        String unit = " " + units.lengthUnit().name();
        positions.show(
                a -> run(inHand, answers.at(a).lines()).map(r -> new AllowanceEffect(r.added(), r.row())), units);
        Map<String, RunAnswer.LineAnswer> now = answers.at(draft.allowance()).lines();
        Dom.retext(
                effect,
                run(inHand, now)
                        .map(r -> units.length(r.measured()) + unit + " measured becomes "
                                + units.length(r.withFittings()) + unit + "."
                                + changed(
                                        draft,
                                        inHand,
                                        now,
                                        answers.at(Allowance.NONE).lines()))
                        .orElse(""));
    }

    /** Which size would be smaller without fittings, the first of them in words. */
    private static String changed(
            RunDraft draft,
            Optional<Line> inHand,
            Map<String, RunAnswer.LineAnswer> now,
            Map<String, RunAnswer.LineAnswer> without) {
        boolean sized = inHand.map(l -> !size(now, l.id()).isEmpty()).orElse(false);
        return draft.lines().stream()
                .filter(l -> !size(without, l.id()).equals(size(now, l.id())))
                .filter(l ->
                        !size(without, l.id()).isEmpty() && !size(now, l.id()).isEmpty())
                .findFirst()
                .map(l -> " Left out, line " + l.id() + " would come to " + size(without, l.id()) + "; with them it is "
                        + size(now, l.id()) + l.pipe().sizeUnit())
                .map(s -> s.endsWith(".") ? s : s + ".")
                .orElse(draft.allowance() != Allowance.NONE && sized ? " No size changes by it." : "");
    }

    private static Optional<RunAnswer.StageRun> run(Optional<Line> line, Map<String, RunAnswer.LineAnswer> lines) {
        return line.flatMap(l -> Optional.ofNullable(lines.get(l.id()))).flatMap(RunAnswer.LineAnswer::stage);
    }

    private static String size(Map<String, RunAnswer.LineAnswer> lines, String id) {
        return Optional.ofNullable(lines.get(id))
                .flatMap(RunAnswer.LineAnswer::cell)
                .map(RunAnswer.Sized::size)
                .orElse("");
    }
}
