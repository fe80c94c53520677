package longrun.sizing;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import longrun.capacity.CapacityTable;
import longrun.capacity.Cell;
import longrun.origin.Confidence;
import longrun.plan.choice.Material;
import longrun.quantity.Bore;

/**
 * The size of one section.
 *
 * @param status what came of it
 * @param noSize why there is none
 * @param table the table used, where there is one
 * @param row its row for the stage's longest run
 * @param needed column of the size the table asks for
 * @param used column of the size in place, chosen or needed, whichever holds
 * @param loadBtuh the load it was sized for
 */
public record SectionSize(
        SectionStatus status,
        Optional<NoSizeReason> noSize,
        Optional<CapacityTable> table,
        OptionalInt row,
        OptionalInt needed,
        OptionalInt used,
        OptionalDouble loadBtuh) {

    static SectionSize unknown() {
        return new SectionSize(
                SectionStatus.UNKNOWN,
                Optional.empty(),
                Optional.empty(),
                OptionalInt.empty(),
                OptionalInt.empty(),
                OptionalInt.empty(),
                OptionalDouble.empty());
    }

    /** The size in use, as its table writes it. */
    public Optional<String> size() {
        return name(used);
    }

    /** The size the table asks for. */
    public Optional<String> neededSize() {
        return name(needed);
    }

    private Optional<String> name(OptionalInt column) {
        return column.isPresent() ? table.map(t -> t.sizes().get(column.getAsInt())) : Optional.empty();
    }

    public OptionalDouble rowFt() {
        return table.isPresent() && row.isPresent()
                ? OptionalDouble.of(table.get().run(row.getAsInt()).feet())
                : OptionalDouble.empty();
    }

    /** The cell of the size in use. */
    public Optional<Cell> cell() {
        return row.isPresent() && used.isPresent()
                ? table.map(t -> t.cell(row.getAsInt(), used.getAsInt()))
                : Optional.empty();
    }

    /** What the size in use carries, Btu/h; empty where the cell is blank. */
    public OptionalDouble capacityBtuh() {
        return cell().flatMap(Cell::capacity)
                .map(c -> OptionalDouble.of(c.btuh()))
                .orElse(OptionalDouble.empty());
    }

    /** How sure the cell of the size in use is. */
    public Optional<Confidence> confidence() {
        return cell().map(Cell::confidence);
    }

    /** The share of its capacity that the load uses, 1 is all. */
    public OptionalDouble shareUsed() {
        return capacityBtuh().isPresent() && loadBtuh.isPresent()
                ? OptionalDouble.of(loadBtuh.getAsDouble() / capacityBtuh().getAsDouble())
                : OptionalDouble.empty();
    }

    /** Bore of the size in use; CSST has none. */
    public Optional<Bore> bore() {
        return used.isPresent() ? table.flatMap(t -> t.bore(used.getAsInt())) : Optional.empty();
    }

    /** The outside diameter by which copper is also named. */
    public Optional<String> sizeOd() {
        return table.filter(t -> t.material() == Material.COPPER && used.isPresent())
                .flatMap(t -> t.outsideDiameter(used.getAsInt()));
    }
}
