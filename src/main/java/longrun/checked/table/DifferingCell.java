package longrun.checked.table;

import java.util.Optional;
import java.util.OptionalDouble;
import longrun.quantity.HeatRate;
import longrun.quantity.Length;

/**
 * A cell of a capacity table whose capacity differs from another source of the same cell.
 *
 * @param run the length of its row
 * @param size the pipe size of its column
 * @param table the capacity in the table; empty where the cell is blank
 * @param other the capacity by the other source; empty where it is blank
 * @param why why they differ; blank where no reason is recorded
 */
public record DifferingCell(Length run, String size, Optional<HeatRate> table, Optional<HeatRate> other, String why) {

    /** By how much the table is over the other, in percent of the other; negative where under, empty where one is blank. */
    public OptionalDouble percentOver() {
        return table.isPresent() && other.isPresent()
                ? OptionalDouble.of(100
                        * (table.get().btuh() - other.get().btuh())
                        / other.get().btuh())
                : OptionalDouble.empty();
    }
}
