package longrun.sizing;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import longrun.capacity.CapacityTable;
import longrun.capacity.CapacityTables;
import longrun.capacity.OwnTable;
import longrun.capacity.OwnTableFaults;
import longrun.plan.Plan;
import longrun.plan.Section;
import longrun.plan.SizeNames;
import longrun.plan.choice.Material;
import longrun.quantity.Pressure;

/** Which table sizes a section, and which of its sizes the person can get. */
final class TableChoice {

    /**
     * A table with the columns that may be chosen, smallest first; or the reason why there is none.
     *
     * @param columns of the table, limited to the available sizes
     */
    record Chosen(Optional<CapacityTable> table, int[] columns, Optional<NoSizeReason> reason) {

        private static Chosen none(NoSizeReason reason) {
            return new Chosen(Optional.empty(), new int[0], Optional.of(reason));
        }
    }

    private final Plan plan;
    private final CapacityTables tables;
    private final Map<List<Object>, Chosen> chosen = new ConcurrentHashMap<>();

    TableChoice(Plan plan, CapacityTables tables) {
        this.plan = plan;
        this.tables = tables;
    }

    Chosen choose(Section section, Material material, Pressure inlet, Pressure drop) {
        List<Object> key = List.of(material, section.table().findValue().orElse(""), inlet.psi(), drop.psi());
        return chosen.computeIfAbsent(key, k -> make(section, material, inlet, drop));
    }

    private Chosen make(Section section, Material material, Pressure inlet, Pressure drop) {
        Optional<String> own = section.table().findValue();
        if (own.isPresent()) {
            Optional<CapacityTable> table = plan.tubingTables().stream()
                    .filter(t -> t.name().is(own.get()))
                    .findFirst()
                    .flatMap(TableChoice::load)
                    .filter(t -> t.material() == material && inlet.fits(t.inlet()) && drop.fits(t.drop()));
            return table.map(this::limited).orElse(Chosen.none(NoSizeReason.OWN_TABLE_DOES_NOT_FIT));
        }
        boolean memory = plan.useMemoryTables().is(true);
        Optional<CapacityTable> table = tables.forStage(material, inlet, drop, memory);
        if (table.isPresent()) {
            return limited(table.get());
        }
        boolean onRequest = tables.published(material, inlet, drop, true).isPresent();
        return Chosen.none(onRequest ? NoSizeReason.MEMORY_TABLE : NoSizeReason.NO_TABLE);
    }

    /** The person's own table; the reader of plans has made sure that it can be read. */
    static Optional<CapacityTable> load(Plan.TubingTable t) {
        if (t.name().isKnown()
                && t.material().isKnown()
                && t.inlet().isKnown()
                && t.drop().isKnown()
                && t.csv().isKnown()) {
            try {
                return Optional.of(OwnTable.ownTable(
                        t.name().findValue().orElseThrow(),
                        t.material().findValue().orElseThrow(),
                        t.inlet().findValue().orElseThrow(),
                        t.drop().findValue().orElseThrow(),
                        t.csv().findValue().orElseThrow()));
            } catch (OwnTableFaults e) {
                return Optional.empty(); // told at the table's own entry when the plan is read
            }
        }
        return Optional.empty();
    }

    private Chosen limited(CapacityTable table) {
        List<String> names = plan.availableSizes().get(table.material());
        List<Integer> columns = new ArrayList<>();
        Set<String> available = new HashSet<>();
        if (names != null) {
            names.forEach(n -> available.add(SizeNames.read(table.material(), n, table.sizes())));
        }
        for (int c = 0; c < table.sizes().size(); c++) {
            if (names == null || available.contains(table.sizes().get(c))) {
                columns.add(c);
            }
        }
        return new Chosen(
                Optional.of(table), columns.stream().mapToInt(Integer::intValue).toArray(), Optional.empty());
    }
}
