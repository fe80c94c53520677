package longrun.draft.run;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import longrun.quantity.Measure;
import longrun.quantity.NotAQuantity;
import longrun.quantity.Typed;
import longrun.words.UnitSystem;

/**
 * Reads a list copied from a spreadsheet: a line a row, its cells parted by tabs (else semicolons). A heading row names
 * the columns and their units; without one the first words are the name, the first figures the length, the next the
 * input.
 */
public final class PasteReader {

    private static final int MOST_LINES = 200;
    private static final Pattern BARE = Pattern.compile("[0-9][0-9.,/\\- ]*");
    private static final Pattern HEAD_UNIT = Pattern.compile(".*?(?:[,(\\[]\\s*)([^)\\]]+)[)\\]]?\\s*");
    private static final Pattern LETTER = Pattern.compile("[A-Za-z]{1,2}\\d{0,2}");

    private final UnitSystem units;

    public PasteReader(UnitSystem units) {
        this.units = units;
    }

    /** Which cell of a row is what; -1 for none. */
    private record Columns(int name, int length, int input, int from, int id, String lengthUnit, String inputUnit) {}

    /** What was understood. */
    public record Understood(List<PastedLine> lines, String columns) {}

    /** @param taken how many lines there are already, so that a column of letters finds the lines it means */
    public Understood read(String text, int taken) {
        List<List<String>> rows = rows(text);
        if (rows.isEmpty()) {
            return new Understood(List.of(), "There was nothing in it.");
        }
        boolean headed = rows.get(0).stream().noneMatch(c -> c.matches(".*\\d.*"))
                && rows.size() > 1
                && rows.get(0).stream().anyMatch(c -> isLength(c) || isInput(c));
        Columns columns = headed ? byHeading(rows.get(0)) : byContent(rows);
        List<List<String>> body = headed ? rows.subList(1, rows.size()) : rows;
        List<String> ids = body.stream().map(r -> cell(r, columns.id())).toList();
        List<PastedLine> lines = new ArrayList<>();
        for (List<String> row : body) {
            lines.add(line(row, columns, ids, taken));
        }
        return new Understood(List.copyOf(lines), said(columns, headed));
    }

    private PastedLine line(List<String> row, Columns columns, List<String> ids, int taken) {
        List<String> problems = new ArrayList<>();
        String length = withUnit(cell(row, columns.length()), columns.lengthUnit());
        String heat = withUnit(cell(row, columns.input()), columns.inputUnit());
        String input =
                heat.isEmpty() ? heat : Typed.quantity(heat, units.heatUnit().name());
        check(length, Measure.LENGTH, problems);
        check(input, Measure.HEAT_RATE, problems);
        String from = cell(row, columns.from());
        int at = from.isEmpty() ? -1 : ids.indexOf(from);
        Optional<String> leaves = Optional.empty();
        if (at >= 0) {
            leaves = Optional.of(RunNames.letter(taken + at));
        } else if (from.toLowerCase(Locale.ROOT).contains("regulator")) {
            leaves = Optional.of(Start.FIRST);
        }
        return new PastedLine(cell(row, columns.name()), length, input, leaves, List.copyOf(problems));
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

    private static List<List<String>> rows(String text) {
        List<List<String>> rows = new ArrayList<>();
        String separator = text.contains("\t") ? "\t" : ";";
        for (String line : text.split("\\R")) {
            List<String> cells = Arrays.stream(line.split(separator, -1))
                    .map(PasteReader::unquoted)
                    .toList();
            if (cells.stream().anyMatch(c -> !c.isEmpty()) && rows.size() < MOST_LINES) {
                rows.add(cells);
            }
        }
        return rows;
    }

    /** A spreadsheet quotes a cell that holds a quotation mark, such as {@code 5' 6"}, and doubles the mark. */
    private static String unquoted(String cell) {
        String c = cell.strip();
        return c.length() > 1 && c.startsWith("\"") && c.endsWith("\"")
                ? c.substring(1, c.length() - 1).replace("\"\"", "\"").strip()
                : c;
    }

    private static boolean isLength(String head) {
        return head.toLowerCase(Locale.ROOT).matches(".*\\b(length|feet|foot|ft|run|metres?|meters?)\\b.*");
    }

    private static boolean isInput(String head) {
        return head.toLowerCase(Locale.ROOT).matches(".*(input|btu|load|\\bkw\\b|\\bmbh\\b|heat rate).*");
    }

    private Columns byHeading(List<String> heads) {
        int name = -1;
        int length = -1;
        int input = -1;
        int from = -1;
        int id = -1;
        for (int i = 0; i < heads.size(); i++) {
            String h = heads.get(i).toLowerCase(Locale.ROOT);
            if (length < 0 && isLength(h)) {
                length = i;
            } else if (input < 0 && isInput(h)) {
                input = i;
            } else if (from < 0 && h.matches("from|leaves|after|upstream")) {
                from = i;
            } else if (id < 0 && h.matches("line|id|no\\.?|section|#")) {
                id = i;
            } else if (name < 0 && !h.isEmpty()) {
                name = i;
            }
        }
        if (name < 0) {
            name = id;
        }
        return new Columns(
                name, length, input, from, id, headUnit(heads, length, lengthUnit()), inputUnit(heads, input));
    }

    private String inputUnit(List<String> heads, int input) {
        if (input < 0) {
            return units.heatUnit().name();
        }
        String h = heads.get(input).toLowerCase(Locale.ROOT);
        if (h.contains("thousand")) {
            return "kBtu/h";
        }
        return headUnit(
                heads,
                input,
                h.matches(".*\\bmbh\\b.*")
                        ? "MBH"
                        : h.matches(".*\\bkw\\b.*") ? "kW" : units.heatUnit().name());
    }

    private String lengthUnit() {
        return units.lengthUnit().name();
    }

    /** The unit a heading names after a comma or in brackets, as written: one that is none then shows at each cell. */
    private static String headUnit(List<String> heads, int column, String otherwise) {
        if (column < 0) {
            return otherwise;
        }
        Matcher m = HEAD_UNIT.matcher(heads.get(column));
        return m.matches() ? m.group(1).strip() : heads.get(column).matches("(?i)feet|ft|foot") ? "ft" : otherwise;
    }

    private Columns byContent(List<List<String>> rows) {
        int name = -1;
        int id = -1;
        List<Integer> figures = new ArrayList<>();
        int width = rows.stream().mapToInt(List::size).max().orElse(0);
        for (int i = 0; i < width; i++) {
            int column = i;
            List<String> cells = rows.stream()
                    .map(r -> cell(r, column))
                    .filter(c -> !c.isEmpty())
                    .toList();
            if (cells.isEmpty()) {
                continue;
            }
            if (cells.stream().allMatch(c -> c.matches("[0-9].*"))) {
                figures.add(i);
            } else if (id < 0
                    && i == 0
                    && width > 1
                    && cells.stream().allMatch(c -> LETTER.matcher(c).matches())) {
                id = i;
            } else if (name < 0) {
                name = i;
            }
        }
        int length = figures.isEmpty() ? -1 : figures.get(0);
        int input = figures.size() < 2 ? -1 : figures.get(1);
        return new Columns(
                name < 0 ? id : name,
                length,
                input,
                -1,
                id,
                lengthUnit(),
                units.heatUnit().name());
    }

    private static String withUnit(String cell, String unit) {
        return BARE.matcher(cell).matches() ? cell.strip() + " " + unit : cell;
    }

    private static String cell(List<String> row, int column) {
        return column < 0 || column >= row.size() ? "" : row.get(column);
    }

    private String said(Columns c, boolean headed) {
        List<String> said = new ArrayList<>();
        said.add(headed ? "The first row was taken as the heading" : "No heading was found");
        said.add(
                c.length() < 0
                        ? "no column of lengths"
                        : "column " + (c.length() + 1) + " as length in " + c.lengthUnit());
        said.add(c.input() < 0 ? "no column of inputs" : "column " + (c.input() + 1) + " as input in " + c.inputUnit());
        if (c.from() >= 0) {
            said.add("column " + (c.from() + 1) + " as the line each leaves");
        }
        return String.join("; ", said) + ".";
    }
}
