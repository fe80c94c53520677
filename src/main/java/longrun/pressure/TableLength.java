package longrun.pressure;

import java.util.OptionalDouble;
import longrun.capacity.CapacityTable;

/**
 * The length at which a capacity table carries exactly a load: how CSST, which has no bore, tells what it loses. Between
 * two rows the capacity is taken as a straight line on log-log paper, which the printed rows follow.
 */
final class TableLength {

    private TableLength() {}

    /**
     * The length in feet. Of equal rows the shorter, which loses more a foot; beyond the last row that row's own length,
     * again the greater loss; empty where the load is more than the first row carries.
     */
    static OptionalDouble feet(CapacityTable table, int column, double loadBtuh) {
        int last = -1;
        for (int row = 0; row < table.rowCount(); row++) {
            double here = table.capacityBtuh(row, column);
            if (Double.isNaN(here)) {
                break;
            }
            if (here <= loadBtuh) {
                return between(table, column, row, loadBtuh);
            }
            last = row;
        }
        return last < 0 ? OptionalDouble.empty() : OptionalDouble.of(table.rowFt(last));
    }

    private static OptionalDouble between(CapacityTable table, int column, int row, double loadBtuh) {
        double here = table.capacityBtuh(row, column);
        if (here == loadBtuh) {
            return OptionalDouble.of(table.rowFt(row));
        }
        if (row == 0) {
            return OptionalDouble.empty();
        }
        double before = table.capacityBtuh(row - 1, column);
        double share = Math.log(before / loadBtuh) / Math.log(before / here);
        double feet = table.rowFt(row - 1) * Math.pow(table.rowFt(row) / table.rowFt(row - 1), share);
        return OptionalDouble.of(feet);
    }
}
