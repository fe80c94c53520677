package longrun.checked.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import longrun.capacity.CapacityTable;
import longrun.capacity.CapacityTables;
import longrun.origin.DataFile;
import longrun.origin.DataRow;
import longrun.quantity.HeatRate;
import longrun.quantity.Length;

/**
 * A capacity table compared with a second keying of the same print.
 *
 * @param source the print
 * @param cells how many cells were keyed twice
 * @param differing the cells that differ
 */
public record SecondReading(CapacityTable table, String source, int cells, List<DifferingCell> differing) {

    private static final List<String> KEYED = DataFile.read("checked/second/index.csv").rows().stream()
            .map(r -> r.text("table"))
            .toList();
    private static final KnownDifferences KNOWN = KnownDifferences.read("checked/cells-beside-second-reading.csv");

    private static final class Holder {
        static final List<SecondReading> ALL =
                KEYED.stream().map(SecondReading::of).toList();
    }

    /** Every table that was keyed twice. */
    public static List<SecondReading> listAll() {
        return Holder.ALL;
    }

    /** The tables that were keyed only once and so cannot be compared. */
    public static List<CapacityTable> listKeyedOnce() {
        return CapacityTables.standard().all().stream()
                .filter(t -> !KEYED.contains(t.id()))
                .toList();
    }

    private static SecondReading of(String id) {
        CapacityTable table = CapacityTables.standard()
                .find(id)
                .orElseThrow(() -> new IllegalStateException("checked/second: there is no table " + id));
        DataFile file = DataFile.read("checked/second/" + id + ".csv");
        List<DifferingCell> differing = new ArrayList<>();
        int cells = 0;
        for (DataRow row : file.rows()) {
            double feet = row.number("length_ft");
            Length run = Length.ofFeet(feet);
            OptionalInt at = table.findRow(run);
            for (String size : file.headings().subList(1, file.headings().size())) {
                if (row.findNumber(size).isEmpty()) {
                    continue;
                }
                HeatRate second = HeatRate.ofBtuh(1000 * row.number(size));
                OptionalInt column = table.findColumn(size);
                Optional<HeatRate> first = at.isPresent()
                                && column.isPresent()
                                && table.run(at.getAsInt()).equals(run)
                        ? table.capacity(at.getAsInt(), column.getAsInt())
                        : Optional.empty();
                cells++;
                if (!first.equals(Optional.of(second))) {
                    differing.add(new DifferingCell(run, size, first, Optional.of(second), KNOWN.why(id, feet, size)));
                }
            }
        }
        return new SecondReading(table, file.source(), cells, List.copyOf(differing));
    }

    /** Whether there is a reason for every cell that differs. */
    public boolean holds() {
        return differing.stream().noneMatch(c -> c.why().isEmpty());
    }
}
