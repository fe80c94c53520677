package longrun.draft.sections;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longrun.capacity.CapacityTable;
import longrun.capacity.OwnTable;
import longrun.capacity.OwnTableFaults;
import longrun.draft.entry.DraftValue;
import longrun.plan.choice.Material;
import longrun.quantity.Measure;
import longrun.quantity.NotAQuantity;
import longrun.quantity.Pressure;

/**
 * A tubing maker's capacity table as entered in a draft.
 *
 * @param table the table; empty where a cell cannot be read
 * @param faults each wrong cell as "file:row:column: what, write what"
 * @param missing what is still to be entered before it can size a line
 */
public record MakersTable(Optional<CapacityTable> table, List<String> faults, List<String> missing) {

    /** The table at an index of the draft. */
    public static MakersTable of(DraftValue draft, int index) {
        String at = TubingDraft.at(index);
        String name = TubingDraft.name(draft, index);
        String csv = draft.at(at + "/csv").text();
        Optional<Pressure> inlet = pressure(draft, at + "/inlet");
        Optional<Pressure> drop = pressure(draft, at + "/drop");
        List<String> missing = new ArrayList<>();
        if (name.isEmpty()) {
            missing.add("its name");
        }
        if (inlet.isEmpty()) {
            missing.add("the inlet pressure");
        }
        if (drop.isEmpty()) {
            missing.add("the drop it allows");
        }
        if (csv.isBlank()) {
            missing.add("its cells");
            return new MakersTable(Optional.empty(), List.of(), missing);
        }
        try {
            boolean both = inlet.isPresent() && drop.isPresent();
            CapacityTable table = OwnTable.ownTable(
                    name.isEmpty() ? "table" : name,
                    Material.CSST,
                    both ? inlet.get() : Pressure.ofInWc(11),
                    both ? drop.get() : Pressure.ofInWc(0.5),
                    csv);
            return new MakersTable(Optional.of(table), List.of(), missing);
        } catch (OwnTableFaults e) {
            return new MakersTable(Optional.empty(), e.faults(), missing);
        }
    }

    private static Optional<Pressure> pressure(DraftValue draft, String pointer) {
        try {
            return Optional.of(Measure.PRESSURE.read(draft.at(pointer).text()));
        } catch (NotAQuantity e) {
            return Optional.empty(); // reported at its own field
        }
    }
}
