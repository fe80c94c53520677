package longrun.capacity;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longrun.capacity.CapacityTable.Use;
import longrun.origin.DataFile;
import longrun.origin.DataRow;
import longrun.plan.choice.Material;
import longrun.quantity.Pressure;

/** The capacity tables kept as data, and those the code's equation makes where none is published. */
public final class CapacityTables {

    private static final class Holder {
        static final CapacityTables STANDARD = load();
    }

    private final List<CapacityTable> all;
    private final ComputedTables computed;

    CapacityTables(List<CapacityTable> all, MakerChart chart) {
        this.all = List.copyOf(all);
        this.computed = new ComputedTables(this.all, chart);
    }

    /** The tables of the data folder, read once. */
    public static CapacityTables standard() {
        return Holder.STANDARD;
    }

    private static CapacityTables load() {
        List<CapacityTable> tables = new ArrayList<>();
        for (DataRow row : DataFile.read("tables/index.csv").rows()) {
            String id = row.text("id");
            tables.add(TableReader.read(id, DataFile.read("tables/" + id + ".csv"), row.choice("use", Use.class)));
        }
        return new CapacityTables(tables, MakerChart.load());
    }

    /**
     * Every published table in a stable order, for showing. It holds the as-printed one too: pick a table to size with
     * by {@link #published} or {@link #forStage}.
     */
    public List<CapacityTable> all() {
        return all;
    }

    /** A published table by its id, the as-printed one included. */
    public Optional<CapacityTable> find(String id) {
        return all.stream().filter(t -> t.id().equals(id)).findFirst();
    }

    /** The table as the code prints it where a corrected one stands in its place. */
    public Optional<CapacityTable> asPrinted(CapacityTable corrected) {
        return find(corrected.id() + "-asprinted");
    }

    /** The published table for a material whose pressures fit within a thousandth; none that is held from memory throughout. */
    public Optional<CapacityTable> published(Material material, Pressure inlet, Pressure drop) {
        return published(material, inlet, drop, false);
    }

    /**
     * As {@link #published(Material, Pressure, Pressure)}.
     *
     * @param memoryTables whether the person has turned on tables held from memory throughout (CSST at 5 psi)
     */
    public Optional<CapacityTable> published(Material material, Pressure inlet, Pressure drop, boolean memoryTables) {
        return all.stream()
                .filter(t -> t.use() == Use.SIZING || (memoryTables && t.use() == Use.ON_REQUEST))
                .filter(t -> t.material() == material && inlet.fits(t.inlet()) && drop.fits(t.drop()))
                .findFirst();
    }

    /**
     * The table a stage is sized with: the published one, else one computed by the code's equation from the bores of
     * that material's published sizes, else none: CSST has no bore, and a drop must be less than the inlet pressure.
     */
    public Optional<CapacityTable> forStage(Material material, Pressure inlet, Pressure drop) {
        return forStage(material, inlet, drop, false);
    }

    /**
     * As {@link #forStage(Material, Pressure, Pressure)}.
     *
     * @param memoryTables whether the person has turned on tables held from memory throughout (CSST at 5 psi)
     */
    public Optional<CapacityTable> forStage(Material material, Pressure inlet, Pressure drop, boolean memoryTables) {
        Optional<CapacityTable> published = published(material, inlet, drop, memoryTables);
        return published.isPresent() ? published : computed.find(material, inlet, drop);
    }
}
