package longrun.ui.run;

import com.vaadin.flow.dom.Element;
import java.util.List;
import java.util.function.Consumer;
import longrun.draft.run.Pipe;
import longrun.draft.run.PressureStart;
import longrun.draft.run.PressureStartPictures;
import longrun.draft.run.RunDraft;
import longrun.ui.frame.Dom;
import longrun.ui.frame.Scale;

/** What all lines rest on: where the pressure starts, and the material of every line that has none of its own. */
final class RunBasis {

    private static final String TWO_PSI = "Line A carries 2 psi to the line regulator; the lines that leave it carry 11"
            + " in. w.c. Each of the two is sized alone.";

    private static final String ONE_REGULATOR = " A run has one line regulator. Where there are two: ";

    private final Scale<PressureStart> starts;
    private final Scale<Pipe> pipes;
    private final Element twoPsi = Dom.el("p", "lede start-note", Dom.words(TWO_PSI));

    RunBasis(Consumer<PressureStart> start, Consumer<Pipe> pipe, Runnable makeHouse) {
        starts = new Scale<>(
                "start",
                "where",
                List.of(PressureStart.values()),
                s -> new Scale.Choice(s.title(), s.note(), java.util.Optional.of(PressureStartPictures.of(s))),
                start);
        pipes = new Scale<>(
                "pipe", "material", List.of(Pipe.values()), p -> Scale.Choice.of(p.title(), p.note()), pipe);
        Element make = Dom.button("ask", "make a house of it");
        make.addEventListener("click", e -> makeHouse.run());
        twoPsi.appendChild(Dom.el("span", "screen-only", Dom.words(ONE_REGULATOR), make));
    }

    Element[] start() {
        return new Element[] {starts.getElement(), twoPsi};
    }

    Element pipe() {
        return pipes.getElement();
    }

    void show(RunDraft draft) {
        starts.setValue(draft.start());
        pipes.setValue(draft.pipe());
        for (Pipe each : Pipe.values()) {
            List<String> lines = draft.linesOf(each);
            pipes.note(
                    each,
                    lines.isEmpty()
                            ? each.note()
                            : (lines.size() == 1 ? "line " : "lines ") + String.join(", ", lines));
        }
        Dom.show(twoPsi, draft.start() == PressureStart.TWO_PSI);
    }
}
