package longrun.capacity;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import longrun.origin.Confidence;
import longrun.plan.choice.Material;
import longrun.plan.choice.Named;
import longrun.quantity.Bore;
import longrun.quantity.HeatRate;
import longrun.quantity.Length;
import longrun.quantity.Pressure;
import longrun.quantity.Same;

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
    record Column(String size, Optional<Bore> bore, Optional<String> outsideDiameter) {}

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

    /** Length of run a row is for. */
    public Length run(int row) {
        return Length.ofFeet(rowsFt[row]);
    }

    double rowFt(int row) {
        return rowsFt[row];
    }

    /**
     * The row for a run: the equal length, compared to 0.001 ft, else the next longer; never between two. Empty
     * when the run is longer than the table. 2018 IFGC Appendix A, steps of the longest-length method.
     */
    public OptionalInt findRow(Length run) {
        double feet = run.rounded().feet();
        for (int row = 0; row < rowsFt.length; row++) {
            if (rowsFt[row] >= feet) {
                return OptionalInt.of(row);
            }
        }
        return OptionalInt.empty();
    }

    /** The column of a size as {@link #sizes()} writes it; empty when the table has none. */
    public OptionalInt findColumn(String size) {
        int column = sizes.indexOf(size);
        return column < 0 ? OptionalInt.empty() : OptionalInt.of(column);
    }

    public Cell cell(int row, int column) {
        return new Cell(run(row), sizes.get(column), capacity(row, column), confidence[row][column]);
    }

    /** What a cell says; empty where the table is blank, which is no capacity at all. */
    public Optional<HeatRate> capacity(int row, int column) {
        return isBlank(row, column) ? Optional.empty() : Optional.of(HeatRate.ofBtuh(btuh[row][column]));
    }

    /** Whether a cell carries a load: equal passes (2018 IFGC Appendix A), and a blank carries nothing. */
    public boolean carries(int row, int column, HeatRate load) {
        return Same.atLeast(btuh[row][column], load.btuh());
    }

    boolean isBlank(int row, int column) {
        return Double.isNaN(btuh[row][column]);
    }

    /** Of a cell that is not blank, Btu/h. */
    double btuh(int row, int column) {
        return btuh[row][column];
    }

    /** Inside diameter; empty for CSST, whose EHD is no bore. */
    public Optional<Bore> bore(int column) {
        return columns.get(column).bore();
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
