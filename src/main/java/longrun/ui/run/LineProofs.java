package longrun.ui.run;

import com.vaadin.flow.dom.Element;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import longrun.draft.run.Line;
import longrun.draft.run.Pipe;
import longrun.draft.run.RunAnswer;
import longrun.draft.run.RunDraft;
import longrun.ui.frame.Dom;
import longrun.words.UnitSystem;

/**
 * On paper: how each line is proved. Its stage and that stage's longest run, the table, the row and the size read
 * there; below, each table by its name and each longest run added up in a sentence.
 */
final class LineProofs {

    private static final List<String> HEADS = List.of("Line", "Stage, behind", "Table", "Read at");

    private static final String RULE = "Every line takes the one longest run it lies behind, in the row of the same"
            + " length or the next longer, never between two.";

    private final Element box = Dom.el("section", "proofs paper-only");
    private Shown last = new Shown(List.of(), List.of(), List.of(), List.of());

    private record Shown(List<String> heads, List<List<String>> rows, List<String> tables, List<String> runs) {}

    Element element() {
        return box;
    }

    /** Writes the proofs of all lines that have a size or at least a longest run; the others say what they lack. */
    void show(RunDraft draft, RunAnswer answer, UnitSystem units) {
        Shown now = shown(draft, answer, units);
        if (!now.equals(last)) {
            last = now;
            write(now);
        }
    }

    private static Shown shown(RunDraft draft, RunAnswer answer, UnitSystem units) {
        String length = units.lengthUnit().name();
        Map<String, String> keys = new LinkedHashMap<>();
        Map<String, String> runs = new LinkedHashMap<>();
        List<List<String>> rows = new ArrayList<>();
        for (Line line : draft.lines()) {
            Optional<RunAnswer.LineAnswer> own =
                    Optional.ofNullable(answer.lines().get(line.id()));
            Optional<RunAnswer.StageRun> stage = own.flatMap(RunAnswer.LineAnswer::stage);
            Optional<RunAnswer.Sized> cell = own.flatMap(RunAnswer.LineAnswer::cell);
            cell.ifPresent(
                    c -> keys.putIfAbsent(c.readIn().table() + " " + c.readIn().held(), "T" + (keys.size() + 1)));
            String behind = stage.map(s -> draft.named(s.regulator())).orElse("");
            stage.ifPresent(s -> runs.putIfAbsent(behind, sentence(behind, s, units)));
            rows.add(List.of(
                    line.id(),
                    behind,
                    stage.map(s -> units.length(s.withFittings())).orElse("not known"),
                    cell.map(c -> keys.get(c.readIn().table() + " " + c.readIn().held()))
                            .orElse(""),
                    cell.map(c -> readAt(c, line.pipe(), units)).orElse("no size"),
                    own.flatMap(RunAnswer.LineAnswer::load).map(units::heat).orElse("not known"),
                    cell.map(c -> units.heat(c.capacity())).orElse("")));
        }
        List<String> heads = new ArrayList<>(HEADS);
        heads.add(2, "Longest run, " + length);
        heads.add("Load, " + units.heatUnit().name());
        heads.add("Carries, " + units.heatUnit().name());
        return new Shown(
                heads,
                rows,
                keys.entrySet().stream()
                        .map(t -> t.getValue() + ": " + t.getKey())
                        .toList(),
                List.copyOf(runs.values()));
    }

    private static String readAt(RunAnswer.Sized cell, Pipe pipe, UnitSystem units) {
        String row = units.row(cell.readIn().row().run());
        return "Row " + row + " " + units.lengthUnit().name() + ", size " + cell.size()
                + (pipe == Pipe.CSST ? " EHD" : "")
                + cell.od().map(od -> " (" + od + " OD)").orElse("");
    }

    /** "Behind the regulator: line A, measured, 22 + line B, measured, 12 + a tee 2.1 = longest run 36.1 ft." */
    private static String sentence(String behind, RunAnswer.StageRun stage, UnitSystem units) {
        List<RunAnswer.Term> sum = stage.gathered();
        RunAnswer.Term total = sum.get(sum.size() - 1);
        return "Behind " + behind + ": "
                + sum.subList(0, sum.size() - 1).stream()
                        .map(t -> t.what() + " " + units.length(t.length()))
                        .collect(Collectors.joining(" + "))
                + " = " + total.what() + " " + units.length(total.length()) + " "
                + units.lengthUnit().name() + ", to " + stage.to() + ".";
    }

    private void write(Shown now) {
        Element head = Dom.el("tr", "");
        now.heads().forEach(h -> head.appendChild(Dom.text("th", "", h).setAttribute("scope", "col")));
        Element body = Dom.el("tbody", "");
        for (List<String> row : now.rows()) {
            Element line = Dom.el("tr", "", Dom.text("th", "", row.get(0)).setAttribute("scope", "row"));
            row.subList(1, row.size()).forEach(cell -> line.appendChild(Dom.text("td", "", cell)));
            body.appendChild(line);
        }
        List<Element> all = new ArrayList<>();
        all.add(Dom.text("h2", "", "How each line is proved"));
        all.add(Dom.el("table", "", Dom.el("thead", "", head), body));
        now.tables().forEach(t -> all.add(Dom.text("p", "", t)));
        now.runs().forEach(r -> all.add(Dom.text("p", "", r)));
        if (!now.runs().isEmpty()) {
            all.add(Dom.text("p", "", RULE));
        }
        Dom.fill(box, all.toArray(Element[]::new));
    }
}
