package longrun.capacity;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import longrun.capacity.CapacityTable.Column;
import longrun.capacity.CapacityTable.TableHead;
import longrun.capacity.CapacityTable.Use;
import longrun.origin.Confidence;
import longrun.plan.choice.Material;
import longrun.quantity.HeatRate;
import longrun.quantity.Length;
import longrun.quantity.Pressure;

/** Tables made by the code's equation, flow form, where none is published; rounded and laid out like print. */
final class ComputedTables {

    private static final int KEPT = 64;
    private static final double[] ROWS_FT = rowsFt();

    private record Key(Material material, Pressure inlet, Pressure drop) {}

    private final List<CapacityTable> published;
    private final MakerChart chart;
    private final Map<Key, CapacityTable> kept = new LinkedHashMap<>();

    ComputedTables(List<CapacityTable> published, MakerChart chart) {
        this.published = List.copyOf(published);
        this.chart = chart;
    }

    private static double[] rowsFt() {
        IntStream byTen = IntStream.rangeClosed(1, 10).map(n -> 10 * n);
        IntStream by25 = IntStream.rangeClosed(5, 8).map(n -> 25 * n);
        IntStream by50 = IntStream.rangeClosed(5, 20).map(n -> 50 * n);
        IntStream by100 = IntStream.rangeClosed(11, 20).map(n -> 100 * n);
        return IntStream.concat(IntStream.concat(byTen, by25), IntStream.concat(by50, by100))
                .asDoubleStream()
                .toArray();
    }

    /** The computed table; empty where the material has no bore or the drop takes the whole inlet pressure. */
    Optional<CapacityTable> find(Material material, Pressure inlet, Pressure drop) {
        Optional<List<Column>> columns = columns(material);
        if (columns.isEmpty() || !(drop.psi() > 0) || drop.compareTo(inlet) >= 0) {
            return Optional.empty();
        }
        return Optional.of(keep(new Key(material, inlet, drop), columns.get()));
    }

    /** The same table every time, the oldest forgotten; it only spares time. */
    private synchronized CapacityTable keep(Key key, List<Column> columns) {
        CapacityTable known = kept.get(key);
        if (known != null) {
            return known;
        }
        if (kept.size() >= KEPT) {
            kept.remove(kept.keySet().iterator().next());
        }
        CapacityTable made = table(key, columns);
        kept.put(key, made);
        return made;
    }

    /** Sizes and bores of the material's first published table. */
    private Optional<List<Column>> columns(Material material) {
        return published.stream()
                .filter(t -> t.material() == material && t.use() == Use.SIZING)
                .map(CapacityTable::columns)
                .filter(c -> c.get(0).bore().isPresent())
                .findFirst();
    }

    private CapacityTable table(Key key, List<Column> columns) {
        boolean byChart = key.material().isPlastic() && MakerChart.caps(key.inlet(), key.drop());
        double[][] btuh = new double[ROWS_FT.length][columns.size()];
        Confidence[][] confidence = new Confidence[ROWS_FT.length][columns.size()];
        boolean heldDown = false;
        for (int r = 0; r < ROWS_FT.length; r++) {
            Arrays.fill(confidence[r], Confidence.COMPUTED);
            for (int c = 0; c < columns.size(); c++) {
                double equation = equation(key, columns.get(c), ROWS_FT[r]);
                double held = byChart ? held(key, columns.get(c), ROWS_FT[r], equation) : equation;
                btuh[r][c] = PrintRounding.btuh(held);
                heldDown |= held < equation;
            }
        }
        return new CapacityTable(head(key, columns, heldDown), columns, ROWS_FT, btuh, confidence);
    }

    private static double equation(Key key, Column column, double lengthFt) {
        return FlowEquation.capacity(column.bore().orElseThrow(), key.inlet(), key.drop(), Length.ofFeet(lengthFt))
                .map(HeatRate::btuh)
                .orElse(Double.NaN);
    }

    private double held(Key key, Column column, double lengthFt, double equation) {
        return Math.min(
                equation, chart.btuh(key.material(), column.size(), lengthFt).orElse(equation));
    }

    private static TableHead head(Key key, List<Column> columns, boolean heldDown) {
        Pressure inlet = key.inlet();
        Pressure drop = key.drop();
        String material = key.material() == Material.STEEL
                ? "steel-sch40"
                : key.material().written();
        String id = material + "-" + PressureText.compact(inlet) + "-" + PressureText.compact(drop) + "-computed";
        String title = key.material().label() + ", propane, " + PressureText.spaced(inlet) + ", drop "
                + PressureText.spaced(drop) + ", computed";
        String form = FlowEquation.isHigh(inlet) ? "high pressure" : "low pressure";
        List<String> notes = new ArrayList<>(List.of(
                "computed by the code's " + form + " equation, flow form; no table is published for these pressures",
                "undiluted propane: Cr 1.2462, Y 0.9910, 2,488 Btu per cubic foot; atmosphere 14.73 psia; 27.7 in w.c."
                        + " per psi",
                "rounded like print: three significant digits, blank below 10 thousand Btu/h",
                "inside diameters in inches: " + bores(columns)));
        if (heldDown) {
            notes.add("no capacity is above a fitting maker's chart for this pipe (secondary), read at the equal or"
                    + " next longer row, beyond its last row by that row; a size the chart does not have is by the"
                    + " equation alone");
        }
        return new TableHead(
                id,
                key.material(),
                inlet,
                drop,
                title,
                "2018 International Fuel Gas Code, 402.4 (NFPA 54 section 6.4), " + form + " equation",
                "2018",
                notes,
                Use.SIZING,
                true);
    }

    private static String bores(List<Column> columns) {
        return String.join(
                ", ",
                columns.stream()
                        .map(c -> c.size() + " " + c.bore().orElseThrow().inches())
                        .toList());
    }
}
