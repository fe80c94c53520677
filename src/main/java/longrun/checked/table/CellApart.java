package longrun.checked.table;

/**
 * A cell of a capacity table beside another reading of the same cell.
 *
 * @param lengthFt its row
 * @param size its column
 * @param table what the table says, Btu/h
 * @param other what the other says, Btu/h
 * @param why they differ; blank where no reason is written down
 */
public record CellApart(double lengthFt, String size, double table, double other, String why) {

    /** How far the table is over the other, in hundredths of it; below 0 where it is under. */
    public double percentOver() {
        return 100 * (table - other) / other;
    }
}
