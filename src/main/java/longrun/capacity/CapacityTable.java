package longrun.capacity;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import longrun.origin.Confidence;
import longrun.plan.choice.Material;
import longrun.plan.choice.Named;
import longrun.quantity.Length;
import longrun.quantity.Pressure;

/**
 * One capacity table: what each size carries at each length of run, for one inlet pressure and one drop. Rows are run
 * lengths in feet, shortest first; columns are sizes, smallest first. Immutable.
 */
public final class CapacityTable {

    /** What a table may be used for. */
    public enum Use implements Named {
        /** Sizes pipe. */
        SIZING,
        /** Held from memory throughout: sizes only when the person turns it on. */
        ON_REQUEST,
        /** Known to be wrong as printed: shown beside the corrected one, never sized with. */
        AS_PRINTED
    }

    private final TableHead head;
    private final List<Column> columns;
    private final List<String> sizes;
    private final double[] rowsFt;
    private final double[][] btuh;
    private final Confidence[][] confidence;

    /** The head of a table, apart from its cells. */
    record TableHead(
            String id,
            Material material,
            Pressure inlet,
            Pressure drop,
            String title,
            String source,
            String edition,
            List<String> notes,
            Use use,
            boolean computed) {
        TableHead {
            notes = List.copyOf(notes);
        }
    }

    /** A column: its size, its bore where it has one, its outside diameter where the trade names it so too. */
    record Column(String size, OptionalDouble boreIn, Optional<String> outsideDiameter) {}

    CapacityTable(TableHead head, List<Column> columns, double[] rowsFt, double[][] btuh, Confidence[][] confidence) {
        this.head = head;
        this.columns = List.copyOf(columns);
        this.sizes = columns.stream().map(Column::size).toList();
        this.rowsFt = rowsFt;
        this.btuh = btuh;
        this.confidence = confidence;
    }

    /** The file's name without ending; a computed table's ends in {@code -computed}, a person's begins with {@code own:}. */
    public String id() {
        return head.id();
    }

    public Material material() {
        return head.material();
    }

    /** Pressure at the start of the run. */
    public Pressure inlet() {
        return head.inlet();
    }

    /** Pressure the run may lose. */
    public Pressure drop() {
        return head.drop();
    }

    public String title() {
        return head.title();
    }

    /** Publication and table number, or the equation it is computed by. */
    public String source() {
        return head.source();
    }

    public String edition() {
        return head.edition();
    }

    /** Provenance, checks, known faults and notes, in the order of the file's head. */
    public List<String> notes() {
        return head.notes();
    }

    public Use use() {
        return head.use();
    }

    /** Whether every cell was computed here by the code's equation, no table being published. */
    public boolean computed() {
        return head.computed();
    }

    /** Size names, smallest first: nominal sizes, {@code "1/2 CTS"} for tubing, EHD numbers for CSST. */
    public List<String> sizes() {
        return sizes;
    }

    public int rowCount() {
        return rowsFt.length;
    }

    /** Length of run a row is for, in feet. */
    public double rowFt(int row) {
        return rowsFt[row];
    }

    /**
     * The row for a run: the equal length, compared to 0.001 ft, else the next longer; never between two. -1 when the
     * run is longer than the table. 2018 IFGC Appendix A, steps of the longest-length method.
     */
    public int findRow(Length run) {
        double feet = run.rounded().feet();
        for (int row = 0; row < rowsFt.length; row++) {
            if (rowsFt[row] >= feet) {
                return row;
            }
        }
        return -1;
    }

    /** The column of a size as {@link #sizes()} writes it; -1 when the table has none. */
    public int findColumn(String size) {
        return sizes.indexOf(size);
    }

    /** Capacity in Btu/h; NaN where the table is blank, which is no capacity at all. */
    public double capacityBtuh(int row, int column) {
        return btuh[row][column];
    }

    /** How sure one cell is. */
    public Confidence confidence(int row, int column) {
        return confidence[row][column];
    }

    /** Inside diameter in inches; empty for CSST, whose EHD is no bore. */
    public OptionalDouble boreIn(int column) {
        return columns.get(column).boreIn();
    }

    /** Outside diameter in inches by which the same copper tube is sold, {@code "5/8"} for 1/2 nominal. */
    public Optional<String> outsideDiameter(int column) {
        return columns.get(column).outsideDiameter();
    }

    List<Column> columns() {
        return columns;
    }

    @Override
    public String toString() {
        return id();
    }
}
