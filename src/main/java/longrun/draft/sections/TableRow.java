package longrun.draft.sections;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longrun.capacity.CapacityTable;
import longrun.quantity.HeatRate;
import longrun.quantity.Length;

/**
 * The row of a table in which a size was read, with the row before and the row after.
 *
 * @param sizes the headings of the columns
 * @param ods the outside diameter of each size; empty where it has none
 * @param column the index of the column used
 */
public record TableRow(List<String> sizes, List<Optional<String>> ods, List<Cells> rows, int column) {

    public TableRow {
        sizes = List.copyOf(sizes);
        ods = List.copyOf(ods);
        rows = List.copyOf(rows);
    }

    /** The cells of one row; a blank cell of the print is empty. */
    public record Cells(Length run, boolean used, List<Optional<HeatRate>> capacities) {}

    /** The row at an index of a table, with its neighbours. */
    public static TableRow of(CapacityTable table, int row, int column) {
        List<Cells> rows = new ArrayList<>();
        for (int r = Math.max(0, row - 1); r <= Math.min(table.rowCount() - 1, row + 1); r++) {
            List<Optional<HeatRate>> cells = new ArrayList<>();
            for (int c = 0; c < table.sizes().size(); c++) {
                cells.add(table.capacity(r, c));
            }
            rows.add(new Cells(table.run(r), r == row, List.copyOf(cells)));
        }
        List<Optional<String>> ods = new ArrayList<>();
        for (int c = 0; c < table.sizes().size(); c++) {
            ods.add(table.outsideDiameter(c).map(od -> od + " OD"));
        }
        return new TableRow(table.sizes(), ods, rows, column);
    }

    /** The same rows with other headings. */
    public TableRow headed(List<String> names) {
        return new TableRow(names, ods, rows, column);
    }

    /** The length of the row used. */
    public Length run() {
        return rows.stream().filter(Cells::used).findFirst().orElseThrow().run();
    }
}
