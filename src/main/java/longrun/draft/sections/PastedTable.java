package longrun.draft.sections;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A list copied from a spreadsheet, with cells separated by tabs, and the meaning of its columns. */
public final class PastedTable {

    private static final int MOST_ROWS = 200;
    private static final Pattern HEAD_UNIT = Pattern.compile(".*?(?:[,(\\[]\\s*)([^)\\]]+)[)\\]]?\\s*");

    private final List<List<String>> rows;
    private final int[] at;
    private final boolean headed;

    private PastedTable(List<List<String>> rows, int[] at, boolean headed) {
        this.rows = rows;
        this.at = at.clone();
        this.headed = headed;
    }

    /**
     * Reads a list. Its first row is a heading where it holds no figure and names at least one of the needed columns.
     *
     * @param semicolons whether semicolons separate cells where there is no tab
     * @param heads the pattern of each column's heading; a heading belongs to the first pattern that it fits
     * @param needed the number of needed columns, which come first
     */
    public static PastedTable of(String text, boolean semicolons, List<Pattern> heads, int needed) {
        List<List<String>> rows = rows(text, semicolons && text.indexOf('\t') < 0 ? ';' : '\t');
        int[] none = new int[heads.size()];
        Arrays.fill(none, -1);
        if (rows.size() < 2 || rows.get(0).stream().anyMatch(c -> c.matches(".*\\d.*"))) {
            return new PastedTable(rows, none, false);
        }
        int[] at = none.clone();
        for (int c = 0; c < rows.get(0).size(); c++) {
            String head = rows.get(0).get(c).toLowerCase(Locale.ROOT);
            for (int h = 0; h < at.length; h++) {
                if (at[h] < 0 && heads.get(h).matcher(head).matches()) {
                    at[h] = c;
                    break;
                }
            }
        }
        boolean headed = Arrays.stream(at, 0, needed).anyMatch(c -> c >= 0);
        return new PastedTable(rows, headed ? at : none, headed);
    }

    /** A spreadsheet quotes a cell that holds a quotation mark, such as {@code 5' 6"}, and doubles the mark. */
    private static List<List<String>> rows(String text, char separator) {
        List<List<String>> rows = new ArrayList<>();
        for (CsvRecord row : CsvReader.builder().fieldSeparator(separator).ofCsvRecord(text)) {
            List<String> cells = row.getFields().stream().map(String::strip).toList();
            if (cells.stream().anyMatch(c -> !c.isEmpty()) && rows.size() < MOST_ROWS) {
                rows.add(cells);
            }
        }
        return rows;
    }

    /** The same rows with other columns, by their index; -1 for a column that is not there. */
    public PastedTable with(int... columns) {
        return new PastedTable(rows, columns, headed);
    }

    /** Whether the list has no rows. */
    public boolean isEmpty() {
        return rows.isEmpty();
    }

    /** Whether the first row is a heading. */
    public boolean isHeaded() {
        return headed;
    }

    /** The rows below the heading. */
    public List<List<String>> body() {
        return headed ? rows.subList(1, rows.size()) : rows;
    }

    /** Whether a column is there. */
    public boolean has(int column) {
        return at[column] >= 0;
    }

    /** The cell of a row in a column; blank where there is none. */
    public String cell(List<String> row, int column) {
        return at[column] < 0 || at[column] >= row.size() ? "" : row.get(at[column]);
    }

    /** The cells at an index of every row that are not blank. */
    public List<String> filled(int place) {
        return body().stream()
                .map(r -> place < r.size() ? r.get(place) : "")
                .filter(c -> !c.isEmpty())
                .toList();
    }

    /** The number of cells in the longest row. */
    public int width() {
        return rows.stream().mapToInt(List::size).max().orElse(0);
    }

    /** The heading of a column; blank where it has none. */
    public String head(int column) {
        return headed ? cell(rows.get(0), column) : "";
    }

    /** The unit in a heading, after a comma or in brackets, as written; one that is not a unit is reported at each cell. */
    public String unit(int column, String otherwise) {
        String head = head(column);
        Matcher m = HEAD_UNIT.matcher(head);
        String unit = m.matches() ? m.group(1).strip() : head;
        return unit.matches("(?i)feet|foot|ft") ? "ft" : m.matches() ? unit : otherwise;
    }

    /** A sentence on what the columns were taken as. */
    public String said(List<String> names) {
        List<String> said = new ArrayList<>();
        said.add(headed ? "The first row was taken as the heading" : "No heading was found");
        for (int i = 0; i < at.length; i++) {
            if (at[i] >= 0 && !names.get(i).isEmpty()) {
                said.add("column " + (at[i] + 1) + " as " + names.get(i));
            }
        }
        return String.join("; ", said) + ".";
    }
}
