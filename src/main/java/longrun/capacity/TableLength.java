package longrun.capacity;

import java.util.Optional;
import longrun.quantity.HeatRate;
import longrun.quantity.Length;

/**
 * The length at which a capacity table carries exactly a load: how CSST, which has no bore, tells what it loses. Between
 * two rows the capacity is taken as a straight line on log-log paper, which the printed rows follow.
 */
public final class TableLength {

    private TableLength() {}

    /**
     * The length for a column and a load. Of equal rows the shorter, which loses more a foot; beyond the last row that
     * row's own length, again the greater loss; empty where the load is more than the first row carries.
     */
    public static Optional<Length> find(CapacityTable table, int column, HeatRate load) {
        int last = -1;
        for (int row = 0; row < table.rowCount() && !table.isBlank(row, column); row++) {
            if (table.btuh(row, column) <= load.btuh()) {
                return between(table, column, row, load.btuh());
            }
            last = row;
        }
        return last < 0 ? Optional.empty() : Optional.of(table.run(last));
    }

    private static Optional<Length> between(CapacityTable table, int column, int row, double loadBtuh) {
        double here = table.btuh(row, column);
        if (here == loadBtuh) {
            return Optional.of(table.run(row));
        }
        if (row == 0) {
            return Optional.empty();
        }
        double before = table.btuh(row - 1, column);
        double share = Math.log(before / loadBtuh) / Math.log(before / here);
        double feet = table.rowFt(row - 1) * Math.pow(table.rowFt(row) / table.rowFt(row - 1), share);
        return Optional.of(Length.ofFeet(feet));
    }
}
