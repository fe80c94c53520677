package longrun.draft.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import longrun.draft.sections.MaterialWords;
import longrun.draft.sections.PastedTable;
import longrun.quantity.Measure;
import longrun.quantity.NotAQuantity;
import longrun.quantity.Typed;
import longrun.words.UnitSystem;

/**
 * Reads a list pasted from a spreadsheet as lines of a run. A heading names the columns and their units; without one the
 * first column of words is the name, the first of figures the length, the next the input.
 */
public final class RunPasteReader {

    private static final Pattern BARE = Pattern.compile("[0-9][0-9.,/\\- ]*");
    private static final Pattern LETTER = Pattern.compile("[A-Za-z]{1,2}\\d{0,2}");

    private static final int LENGTH = 0;
    private static final int INPUT = 1;
    private static final int FROM = 2;
    private static final int ID = 3;
    private static final int MATERIAL = 4;
    private static final int NAME = 5;

    /** Patterns of the headings, in the order of the numbers above; a heading that fits no other is the name. */
    private static final List<Pattern> HEADS = List.of(
            Pattern.compile(".*\\b(length|feet|foot|ft|run|metres?|meters?)\\b.*"),
            Pattern.compile(".*(input|btu|load|\\bkw\\b|\\bmbh\\b|heat rate).*"),
            Pattern.compile("from|leaves|after|upstream"),
            Pattern.compile("line|id|no\\.?|section|#"),
            Pattern.compile("material|pipe|kind of pipe|pipe material"),
            Pattern.compile(".+"));

    private final UnitSystem units;

    /** @param units the units of figures that have none */
    public RunPasteReader(UnitSystem units) {
        this.units = units;
    }

    /** The lines understood, and a sentence on the columns. */
    public record Understood(List<PastedLine> lines, String columns) {}

    /**
     * Reads a list.
     *
     * @param taken how many lines the run has already, so that the letters of the list refer to the right lines
     */
    public Understood read(String text, int taken) {
        PastedTable headed = PastedTable.of(text, true, HEADS, INPUT + 1);
        if (headed.isEmpty()) {
            return new Understood(List.of(), "The list is empty.");
        }
        PastedTable table = headed.isHeaded() ? headed : byContent(headed);
        List<String> ids = table.body().stream().map(r -> table.cell(r, ID)).toList();
        List<PastedLine> lines =
                table.body().stream().map(r -> line(r, table, ids, taken)).toList();
        return new Understood(lines, said(table));
    }

    private PastedLine line(List<String> row, PastedTable table, List<String> ids, int taken) {
        List<String> problems = new ArrayList<>();
        MaterialWords measured = MaterialWords.of(table.cell(row, LENGTH));
        String length = withUnit(measured.rest(), table.unit(LENGTH, lengthUnit()));
        String heat = withUnit(table.cell(row, INPUT), inputUnit(table));
        String input = heat.isEmpty() ? heat : Typed.quantity(heat, heatUnit());
        check(length, Measure.LENGTH, problems);
        check(input, Measure.HEAT_RATE, problems);
        String name = table.has(NAME) ? table.cell(row, NAME) : table.cell(row, ID);
        return new PastedLine(
                name,
                length,
                input,
                leaves(table.cell(row, FROM), ids, taken),
                pipe(table.cell(row, MATERIAL), measured, problems),
                List.copyOf(problems));
    }

    private static Optional<String> leaves(String from, List<String> ids, int taken) {
        int at = from.isEmpty() ? -1 : ids.indexOf(from);
        if (at >= 0) {
            return Optional.of(RunNames.letter(taken + at));
        }
        return from.toLowerCase(Locale.ROOT).contains("regulator")
                ? Optional.of(PressureStart.FIRST_REGULATOR)
                : Optional.empty();
    }

    private static Optional<Pipe> pipe(String written, MaterialWords measured, List<String> problems) {
        Optional<Pipe> pipe =
                MaterialWords.named(written).or(measured::material).flatMap(m -> Pipe.of(m.written()));
        if (pipe.isEmpty() && (!written.isBlank() || measured.material().isPresent())) {
            problems.add(
                    (written.isBlank() ? "polyethylene tubing" : written)
                            + " is not a material this page can size; the line is given the material of the line above; choose another under it");
        }
        return pipe;
    }

    private static void check(String text, Measure<?> measure, List<String> problems) {
        if (!text.isEmpty()) {
            try {
                measure.read(text);
            } catch (NotAQuantity e) {
                problems.add(String.valueOf(e.getMessage()));
            }
        }
    }

    private String inputUnit(PastedTable table) {
        String h = table.head(INPUT).toLowerCase(Locale.ROOT);
        if (h.contains("thousand")) {
            return "kBtu/h";
        }
        return table.unit(INPUT, h.matches(".*\\bmbh\\b.*") ? "MBH" : h.matches(".*\\bkw\\b.*") ? "kW" : heatUnit());
    }

    private String lengthUnit() {
        return units.lengthUnit().name();
    }

    private String heatUnit() {
        return units.heatUnit().name();
    }

    private static PastedTable byContent(PastedTable table) {
        int name = -1;
        int id = -1;
        int material = -1;
        List<Integer> figures = new ArrayList<>();
        for (int i = 0; i < table.width(); i++) {
            List<String> cells = table.filled(i);
            if (cells.isEmpty()) {
                continue;
            }
            if (cells.stream().allMatch(c -> MaterialWords.of(c).rest().matches("[0-9].*"))) {
                figures.add(i);
            } else if (material < 0
                    && cells.stream().allMatch(c -> MaterialWords.named(c).isPresent())) {
                material = i;
            } else if (id < 0
                    && i == 0
                    && table.width() > 1
                    && cells.stream().allMatch(c -> LETTER.matcher(c).matches())) {
                id = i;
            } else if (name < 0) {
                name = i;
            }
        }
        int length = figures.isEmpty() ? -1 : figures.get(0);
        int input = figures.size() < 2 ? -1 : figures.get(1);
        return table.with(length, input, -1, id, material, name);
    }

    private static String withUnit(String cell, String unit) {
        return BARE.matcher(cell).matches() ? cell.strip() + " " + unit : cell;
    }

    private String said(PastedTable table) {
        String columns = table.said(List.of(
                "length in " + table.unit(LENGTH, lengthUnit()),
                "input in " + inputUnit(table),
                "the line each leaves",
                "",
                "material",
                ""));
        String none = (table.has(LENGTH) ? "" : " No column of lengths was found.")
                + (table.has(INPUT) ? "" : " No column of inputs was found.");
        return columns + none;
    }
}
