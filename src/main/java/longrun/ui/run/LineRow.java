package longrun.ui.run;

import com.vaadin.flow.dom.Element;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import longrun.draft.run.Line;
import longrun.draft.run.Pipe;
import longrun.draft.run.PressureStart;
import longrun.draft.run.RunAnswer;
import longrun.draft.run.RunNames;
import longrun.draft.sections.MaterialWords;
import longrun.finding.ListWords;
import longrun.plan.choice.Material;
import longrun.quantity.HeatRate;
import longrun.quantity.Length;
import longrun.quantity.Measure;
import longrun.ui.frame.Dom;
import longrun.ui.frame.Entry;
import longrun.ui.frame.QuantityText;
import longrun.ui.lines.LineBody;
import longrun.words.UnitSystem;

/** One line as it is typed: what it feeds, feet, Btu/h; and under the selected line what was understood. */
final class LineRow {

    /** What a person does in a line. */
    interface Actions {
        void typed(int index, Line.Column column, String stored);

        void leaves(int index, String from);

        void isOf(int index, Pipe pipe);

        void removed(int index);

        void inHand(int index);
    }

    private final int index;
    private final LineBody body = new LineBody(Dom.el("tbody", ""));
    private final Element tree = Dom.el("td", "tr").setAttribute("rowspan", "2").setAttribute("aria-hidden", "true");
    private final Entry name;
    private final Entry length;
    private final Entry input;
    private final Element inputCell;
    private final LineTools tools;
    private final Element material = Dom.text("td", "mat", "").setAttribute("data-l", "Material");
    private final Element of = Dom.text("span", "of", "");
    private UnitSystem units = UnitSystem.CUSTOMARY;
    private String drawn = "";

    LineRow(int index, Actions hand) {
        this.index = index;
        String letter = RunNames.letter(index);
        name = entry("name", "Line " + letter + ", what it feeds or where it branches", "in", hand, Line.Column.NAME);
        length = entry("length", "Line " + letter + ", length", "in r", hand, Line.Column.LENGTH);
        input = entry("input", "Line " + letter + ", input in Btu/h", "in r", hand, Line.Column.INPUT);
        name.getElement()
                .setAttribute(
                        "placeholder", index == 0 ? "to the first branch, or what it feeds" : "what does it feed?");
        inputCell = Dom.el("td", "ent inp", input.getElement(), of);
        tools = new LineTools(index, hand);
        body.element()
                .addEventListener("focusin", e -> hand.inHand(index))
                .setFilter("!element.classList.contains('on')");
        Element says = Dom.el(
                "div", "says", help("name"), help("length"), help("input"), name.said(), length.said(), input.said());
        Element main = Dom.el(
                "tr",
                "main",
                tree,
                body.id(),
                Dom.el("td", "nm", name.getElement()),
                material,
                Dom.el("td", "ent len", length.getElement()),
                inputCell);
        main.appendChild(body.figures());
        body.element()
                .appendChild(
                        main,
                        Dom.el(
                                "tr",
                                "under",
                                Dom.el("td", "", says, tools.element()).setAttribute("colspan", "8")));
    }

    private Entry entry(String column, String label, String classes, Actions hand, Line.Column which) {
        Entry[] made = new Entry[1];
        made[0] = new Entry(
                column + "-" + index, label, classes, typed -> hand.typed(index, which, stored(which, typed)));
        made[0].getElement().setAttribute("data-column", column).setAttribute("data-at", index + " " + which.name());
        if (which != Line.Column.NAME) {
            made[0].getElement().setAttribute("placeholder", " ");
        }
        return made[0];
    }

    private static Element help(String column) {
        String says = switch (column) {
            case "length" ->
                "Feet of pipe as measured: 22, 12.5, or 5' 6\". Another unit is written out: 3.4 m. Another material"
                        + " stands with it: csst 12.";
            case "input" -> "INPUT on the rating plate, propane line. Left blank, the line branches.";
            default -> "What it feeds, such as the range; or where it branches to the lines below.";
        };
        return Dom.text("p", "said help", says).setAttribute("data-for", column);
    }

    String stored(Line.Column column, String typed) {
        return switch (column) {
            case NAME -> typed;
            case LENGTH -> storedLength(typed);
            case INPUT -> inputs().stored(typed);
        };
    }

    /** A material named with the length stays with it. */
    private String storedLength(String typed) {
        MaterialWords words = MaterialWords.of(typed);
        return words.material()
                .map(m -> (m.label() + " " + lengths().stored(words.rest())).strip())
                .orElseGet(() -> lengths().stored(typed));
    }

    private QuantityText<Length> lengths() {
        return new QuantityText<>(
                Measure.LENGTH,
                units.lengthUnit(),
                l -> units.length(l) + " " + units.lengthUnit().name());
    }

    private QuantityText<HeatRate> inputs() {
        return new QuantityText<>(
                Measure.HEAT_RATE,
                units.heatUnit(),
                h -> units.heat(h) + " " + units.heatUnit().name());
    }

    Element element() {
        return body.element();
    }

    Entry entry(Line.Column column) {
        return switch (column) {
            case NAME -> name;
            case LENGTH -> length;
            case INPUT -> input;
        };
    }

    /** Whether it is kept behind the next line, out of sight until a person types so far ahead. */
    void spare(boolean behind) {
        body.spare(behind);
    }

    /** The line with what is typed in it; empty for the next one, which is not begun. */
    void show(Optional<Line> line, UnitSystem system, Map<String, String> mayLeave) {
        units = system;
        body.name(line.map(Line::id).orElse(RunNames.letter(index)));
        String typedInput = line.map(Line::input).orElse("");
        tellLength(line);
        inputs().show(input, typedInput, "Input");
        boolean branches = line.map(Line::branches).orElse(false);
        if (branches && !typedInput.isBlank() && !input.isWrong()) {
            input.wrong(
                    "a line that branches has no appliance of its own: clear this, or give the appliance its own line");
        }
        Dom.show(input.getElement(), !branches || !typedInput.isBlank());
        Dom.show(of, branches && typedInput.isBlank());
        Dom.retext(of, line.map(l -> named(l.feeds())).orElse(""));
        body.notBegun(line.isEmpty());
        Dom.retext(material, line.map(l -> l.pipe().brief()).orElse(""));
        markWrong();
        tools.show(line, mayLeave);
    }

    private void tellLength(Optional<Line> line) {
        String stored = line.map(Line::length).orElse("");
        Optional<Material> named = MaterialWords.of(stored).material();
        if (named.filter(m -> Pipe.of(m.written()).isEmpty()).isPresent()) {
            length.wrong(named.get().label() + " is sized in a whole house: make a house of this run");
        } else if (named.isPresent()) {
            length.wrong("a length stands with its material: " + named.get().label() + " 12 ft");
        } else {
            boolean ofItsOwn = MaterialWords.of(length.text()).material().isPresent();
            lengths()
                    .show(
                            length,
                            stored,
                            line.filter(l -> ofItsOwn)
                                    .map(l -> l.pipe().title() + ", length")
                                    .orElse("Length"));
        }
    }

    /** Writes into the fields: after undo, a file, a paste, other units; never after a key. */
    void write(Optional<Line> line, UnitSystem system) {
        units = system;
        name.write(line.map(Line::name).orElse(""));
        lengths().write(length, line.map(Line::length).orElse(""));
        inputs().write(input, line.map(Line::input).orElse(""));
    }

    /** Column headings follow the units. */
    void label(String lengthHead, String inputHead, String loadHead) {
        entry(Line.Column.LENGTH).getElement().getParent().setAttribute("data-l", lengthHead);
        inputCell.setAttribute("data-l", inputHead);
        body.load().setAttribute("data-l", loadHead + " ");
    }

    void markWrong() {
        body.wrong(length.isWrong() || input.isWrong());
    }

    void markInHand(boolean inHand) {
        body.inHand(inHand);
    }

    private static String named(List<String> feeds) {
        if (feeds.equals(List.of(PressureStart.LINE_REGULATOR))) {
            return "line regulator";
        }
        if (feeds.size() > 3) {
            return feeds.size() + " lines";
        }
        return ListWords.all(feeds);
    }

    void draw(String svg, int width) {
        if (!svg.equals(drawn)) {
            drawn = svg;
            tree.setProperty("innerHTML", svg);
        }
        tree.getStyle().set("width", width + "px");
    }

    private static String note(Optional<RunAnswer.Sized> cell, boolean soFar) {
        String od = cell.flatMap(RunAnswer.Sized::od).map(o -> "(" + o + " OD)").orElse("");
        return soFar && cell.isPresent() ? (od.isEmpty() ? "so far" : "so far, " + od) : od;
    }

    /**
     * The answer of the line; empty while there is none.
     *
     * @param unit of the size, where the column's heading cannot tell it
     */
    void answer(Optional<RunAnswer.LineAnswer> answer, UnitSystem system, String unsized, String unit) {
        Optional<RunAnswer.Sized> cell = answer.flatMap(RunAnswer.LineAnswer::cell);
        body.answer(
                answer.flatMap(RunAnswer.LineAnswer::load).map(system::heat).orElse(""),
                cell.map(c -> OptionalLong.of(Math.round(c.sharePercent()))).orElse(OptionalLong.empty()),
                cell.map(RunAnswer.Sized::size)
                        .orElse(answer.map(a -> word(a.status(), unsized)).orElse(unsized)),
                cell.isPresent() ? unit : "",
                cell.isPresent(),
                note(cell, answer.map(RunAnswer.LineAnswer::soFar).orElse(false)));
    }

    private static String word(RunAnswer.Status status, String unsized) {
        return status == RunAnswer.Status.NO_SIZE ? "no size" : unsized;
    }
}
