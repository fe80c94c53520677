package longrun.sizing;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import longrun.capacity.CapacityTable;
import longrun.origin.Confidence;
import longrun.plan.choice.Material;

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
                ? OptionalDouble.of(table.get().rowFt(row.getAsInt()))
                : OptionalDouble.empty();
    }

    /** What the size in use carries, Btu/h; empty where the cell is blank. */
    public OptionalDouble capacityBtuh() {
        if (table.isEmpty() || row.isEmpty() || used.isEmpty()) {
            return OptionalDouble.empty();
        }
        double capacity = table.get().capacityBtuh(row.getAsInt(), used.getAsInt());
        return Double.isNaN(capacity) ? OptionalDouble.empty() : OptionalDouble.of(capacity);
    }

    /** How sure the cell of the size in use is. */
    public Optional<Confidence> confidence() {
        return row.isPresent() && used.isPresent()
                ? table.map(t -> t.confidence(row.getAsInt(), used.getAsInt()))
                : Optional.empty();
    }

    /** The share of its capacity that the load uses, 1 is all. */
    public OptionalDouble shareUsed() {
        return capacityBtuh().isPresent() && loadBtuh.isPresent()
                ? OptionalDouble.of(loadBtuh.getAsDouble() / capacityBtuh().getAsDouble())
                : OptionalDouble.empty();
    }

    /** Bore of the size in use, inches; CSST has none. */
    public OptionalDouble boreIn() {
        return used.isPresent() && table.isPresent() ? table.get().boreIn(used.getAsInt()) : OptionalDouble.empty();
    }

    /** The outside diameter by which copper is also named. */
    public Optional<String> sizeOd() {
        return table.filter(t -> t.material() == Material.COPPER && used.isPresent())
                .flatMap(t -> t.outsideDiameter(used.getAsInt()));
    }
}
