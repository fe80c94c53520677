package longrun.ui.run;

import com.vaadin.flow.dom.Element;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import longrun.draft.run.BranchDrawing;
import longrun.draft.run.Line;
import longrun.draft.run.PressureStart;
import longrun.draft.run.RunAnswer;
import longrun.draft.run.RunDraft;
import longrun.ui.frame.Dom;
import longrun.words.UnitSystem;

/**
 * The lines of the run, one more that is not begun, and a few after it that the page brings out by itself, so that a
 * person may type on while the program has yet to answer.
 */
final class LinesTable {

    /** How many lines a person may be ahead of the program's answer. */
    private static final int AHEAD = 6;

    private final Element table = Dom.el("table", "lines");
    private final Element lengthHead = Dom.text("th", "", "Length, ft").setAttribute("scope", "col");
    private final Element inputHead = Dom.text("th", "", "Input, Btu/h").setAttribute("scope", "col");
    private final Element sizeHead = Dom.text("th", "", "Size, in.").setAttribute("scope", "col");
    private final List<LineRow> rows = new ArrayList<>();
    private final LineRow.Actions hand;

    LinesTable(LineRow.Actions hand, Consumer<String> pasted) {
        this.hand = hand;
        table.addEventListener("pasted", e -> pasted.accept(e.getEventData().getString("event.detail")))
                .addEventData("event.detail");
        Element tree = Dom.el("td", "tr").setAttribute("aria-hidden", "true");
        Element heads = Dom.el(
                "tr",
                "",
                tree,
                Dom.text("th", "tl", "Line").setAttribute("colspan", "2").setAttribute("scope", "col"),
                Dom.text("th", "mat", "Material").setAttribute("scope", "col"),
                lengthHead,
                inputHead,
                Dom.text("th", "loadh", "Load").setAttribute("scope", "col"),
                Dom.text("th", "", "Used").setAttribute("scope", "col"),
                sizeHead);
        table.appendChild(Dom.text("caption", "vh", "The lines of the run"), Dom.el("thead", "", heads));
    }

    Element element() {
        return table;
    }

    LineRow row(int index) {
        return rows.get(index);
    }

    int size() {
        return rows.size();
    }

    void show(RunDraft draft, UnitSystem units) {
        List<Line> lines = draft.lines();
        int wanted = lines.size() + 1 + AHEAD;
        while (rows.size() > wanted) {
            rows.remove(rows.size() - 1).element().removeFromParent();
        }
        while (rows.size() < wanted) {
            LineRow row = new LineRow(rows.size(), hand);
            rows.add(row);
            table.appendChild(row.element());
        }
        String length = "Length, " + units.lengthUnit().name();
        String input = "Input, " + units.heatUnit().name();
        Dom.retext(lengthHead, length);
        Dom.retext(inputHead, input);
        Dom.setClass(table, "mixed", draft.isMixed());
        Dom.retext(sizeHead, draft.isMixed() ? "Size" : draft.pipe().sizeHeading());
        for (int i = 0; i < rows.size(); i++) {
            Optional<Line> line = i < lines.size() ? Optional.of(lines.get(i)) : Optional.empty();
            rows.get(i).spare(i > lines.size());
            rows.get(i).label(length, input, "Load, " + units.heatUnit().name());
            rows.get(i)
                    .show(line, units, line.map(l -> mayLeave(draft, lines, l)).orElse(Map.of()));
        }
    }

    /** Marks the selected line, in the list and in the drawing. */
    void mark(RunDraft draft, int inHand) {
        List<Line> lines = draft.lines();
        BranchDrawing drawing = new BranchDrawing(lines);
        for (int i = 0; i < rows.size(); i++) {
            rows.get(i).markInHand(i == inHand);
            rows.get(i).draw(i < lines.size() ? drawing.beside(i, i == inHand) : "", drawing.width());
        }
    }

    /** Writes the draft into the fields. */
    void write(RunDraft draft, UnitSystem units) {
        List<Line> lines = draft.lines();
        for (int i = 0; i < rows.size(); i++) {
            rows.get(i).write(i < lines.size() ? Optional.of(lines.get(i)) : Optional.empty(), units);
        }
    }

    void answer(RunDraft draft, RunAnswer answer, UnitSystem units, String unsized) {
        List<Line> lines = draft.lines();
        for (int i = 0; i < rows.size(); i++) {
            Optional<RunAnswer.LineAnswer> own = i < lines.size()
                    ? Optional.ofNullable(answer.lines().get(lines.get(i).id()))
                    : Optional.empty();
            String unit =
                    draft.isMixed() && i < lines.size() ? lines.get(i).pipe().unit() : "";
            rows.get(i).answer(own, units, i < lines.size() ? unsized : "", unit);
        }
    }

    /** What each entry holds as far as the page has heard, by the place the browser knows it by. */
    Map<String, String> heard() {
        Map<String, String> heard = new LinkedHashMap<>();
        for (int i = 0; i < rows.size(); i++) {
            for (Line.Column column : Line.Column.values()) {
                heard.put(i + " " + column.name(), rows.get(i).entry(column).text());
            }
        }
        return heard;
    }

    /** What a line may leave: a regulator, or any line that it does not feed itself. */
    private static Map<String, String> mayLeave(RunDraft draft, List<Line> lines, Line line) {
        Map<String, String> may = new LinkedHashMap<>();
        boolean two = draft.start() == PressureStart.TWO_PSI;
        may.put(PressureStart.FIRST_REGULATOR, draft.named(PressureStart.FIRST_REGULATOR));
        if (two && !line.feeds().contains(PressureStart.LINE_REGULATOR)) {
            may.put(PressureStart.LINE_REGULATOR, draft.named(PressureStart.LINE_REGULATOR));
        }
        for (Line other : lines) {
            boolean endsAtRegulator = other.feeds().contains(PressureStart.LINE_REGULATOR);
            if (!endsAtRegulator && !isFedBy(lines, other, line.id(), 0)) {
                may.put(other.id(), "line " + other.id());
            }
        }
        return may;
    }

    private static boolean isFedBy(List<Line> lines, Line line, String source, int steps) {
        if (line.id().equals(source)) {
            return true;
        }
        for (Line other : lines) {
            boolean before = other.id().equals(line.from())
                    || line.from().equals(PressureStart.LINE_REGULATOR)
                            && other.feeds().contains(PressureStart.LINE_REGULATOR);
            if (before && steps < lines.size()) {
                return isFedBy(lines, other, source, steps + 1);
            }
        }
        return false;
    }
}
