package longrun.checked.table;

import java.util.Optional;
import java.util.OptionalDouble;
import longrun.quantity.HeatRate;
import longrun.quantity.Length;

/**
 * A cell of a capacity table beside another reading of the same cell.
 *
 * @param run its row
 * @param size its column
 * @param table what the table says; empty where it is blank
 * @param other what the other says; empty where it is blank
 * @param why they differ; blank where no reason is written down
 */
public record CellApart(Length run, String size, Optional<HeatRate> table, Optional<HeatRate> other, String why) {

    /** How far the table is over the other, in hundredths of it; below 0 where it is under, empty where one is blank. */
    public OptionalDouble percentOver() {
        return table.isPresent() && other.isPresent()
                ? OptionalDouble.of(100
                        * (table.get().btuh() - other.get().btuh())
                        / other.get().btuh())
                : OptionalDouble.empty();
    }
}
