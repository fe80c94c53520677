package longrun.sizing;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import longrun.capacity.CapacityTable;
import longrun.capacity.Cell;
import longrun.origin.Confidence;
import longrun.plan.choice.Material;
import longrun.quantity.Bore;
import longrun.quantity.HeatRate;
import longrun.quantity.Length;

/**
 * The size of one section.
 *
 * @param status what came of it
 * @param noSize why there is none
 * @param table the table used, where there is one
 * @param row its row for the stage's longest run
 * @param needed column of the size the table asks for
 * @param used column of the size in place, chosen or needed, whichever holds
 * @param load the load it was sized for
 */
public record SectionSize(
        SectionStatus status,
        Optional<NoSizeReason> noSize,
        Optional<CapacityTable> table,
        OptionalInt row,
        OptionalInt needed,
        OptionalInt used,
        Optional<HeatRate> load) {

    static SectionSize unknown() {
        return new SectionSize(
                SectionStatus.UNKNOWN,
                Optional.empty(),
                Optional.empty(),
                OptionalInt.empty(),
                OptionalInt.empty(),
                OptionalInt.empty(),
                Optional.empty());
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

    /** The length of run its row is for. */
    public Optional<Length> rowRun() {
        return row.isPresent() ? table.map(t -> t.run(row.getAsInt())) : Optional.empty();
    }

    /** The cell of the size in use. */
    public Optional<Cell> cell() {
        return row.isPresent() && used.isPresent()
                ? table.map(t -> t.cell(row.getAsInt(), used.getAsInt()))
                : Optional.empty();
    }

    /** What the size in use carries; empty where the cell is blank. */
    public Optional<HeatRate> capacity() {
        return cell().flatMap(Cell::capacity);
    }

    /** How sure the cell of the size in use is. */
    public Optional<Confidence> confidence() {
        return cell().map(Cell::confidence);
    }

    /** The share of its capacity that the load uses, 1 is all. */
    public OptionalDouble shareUsed() {
        Optional<HeatRate> capacity = capacity();
        return capacity.isPresent() && load.isPresent()
                ? OptionalDouble.of(load.get().btuh() / capacity.get().btuh())
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
