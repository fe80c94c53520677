package longrun.ui.run;

import com.vaadin.flow.dom.Element;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import longrun.draft.run.RunAnswer;
import longrun.draft.run.RunDraft;
import longrun.finding.Finding;
import longrun.finding.Severity;
import longrun.ui.frame.Dom;
import longrun.ui.frame.FindingLine;

/** What was found in the run, line by line; what only a whole house can answer leads to one. */
final class RunFindings {

    private final Element findings = Dom.el("div", "finds");
    private final Element alsoSays = Dom.text("summary", "", "");
    private final Element alsoAsked = Dom.el("div", "finds");
    private final Element also = Dom.el("details", "more screen-only", alsoSays, alsoAsked);
    private final Element house = Dom.el("p", "s q screen-only to-house");
    private RunAnswer shown = RunAnswer.NOTHING;

    RunFindings(Runnable makeHouse) {
        Element make = Dom.button("ask", "Make a house of it");
        make.addEventListener("click", e -> makeHouse.run());
        house.appendChild(Dom.words("Regulators, brands and where a line lies are entered in a whole house. "), make);
        Dom.show(also, false);
        Dom.show(house, false);
    }

    Element[] content() {
        return new Element[] {findings, also, house};
    }

    void show(RunAnswer answer, RunDraft draft) {
        if (answer.findings().equals(shown.findings()) && answer.alsoAsked().equals(shown.alsoAsked())) {
            return;
        }
        shown = answer;
        fill(findings, answer.findings(), draft);
        Dom.retext(
                alsoSays,
                "What else is asked before gas flows: " + answer.alsoAsked().size());
        Dom.show(also, !answer.alsoAsked().isEmpty());
        fill(alsoAsked, answer.alsoAsked(), draft);
        Dom.show(
                house,
                Stream.concat(answer.findings().stream(), answer.alsoAsked().stream())
                        .anyMatch(f -> field(f, draft).isEmpty()));
    }

    private static void fill(Element place, List<Finding> all, RunDraft draft) {
        Dom.fill(
                place,
                all.stream()
                        .map(f -> FindingLine.of(entered(f), where(f, draft), field(f, draft)))
                        .toArray(Element[]::new));
    }

    /** Which line it is said of; nothing where the sentence names that line, or it is of the whole run. */
    private static String where(Finding f, RunDraft draft) {
        return draft.lineOf(f.at())
                .map(i -> draft.lines().get(i).id())
                .filter(id -> !(f.named() && id.equals(f.at())))
                .map(id -> "Line " + id + ": ")
                .orElse("");
    }

    /** The field on this page that mends it; what only a house holds has none here. */
    private static Optional<String> field(Finding f, RunDraft draft) {
        Optional<Integer> line = draft.lineAt(f.field());
        if (f.field().endsWith("/input")) {
            return line.map(i -> "input-" + i);
        }
        if (f.field().endsWith("/material") || f.field().endsWith("/setting")) {
            return line.map(i -> "material-" + i);
        }
        return f.field().startsWith("/sections/") ? line.map(i -> "length-" + i) : Optional.empty();
    }

    /** What mends it, said so that it can be done from here. */
    private static Finding entered(Finding f) {
        boolean lacking = f.severity() != Severity.MUST_FIX && f.ask().isPresent();
        return f.field().startsWith("/regulators/") && lacking
                ? f.withRemedy("Make a house of this run, and there "
                        + f.remedy().substring(0, 1).toLowerCase(Locale.ROOT)
                        + f.remedy().substring(1))
                : f;
    }
}
