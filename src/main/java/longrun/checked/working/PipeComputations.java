package longrun.checked.working;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import longrun.capacity.CapacityTable;
import longrun.capacity.CapacityTables;
import longrun.capacity.FittingLengths;
import longrun.capacity.FlowEquation;
import longrun.capacity.GasProperties;
import longrun.capacity.Turn;
import longrun.checked.published.CaseInput;
import longrun.plan.choice.Material;
import longrun.plan.choice.Named;
import longrun.quantity.Bore;
import longrun.quantity.HeatRate;
import longrun.quantity.Length;
import longrun.quantity.Measure;
import longrun.quantity.Pressure;

/** Pipe: trees sized by the longest length method, cells of tables, the code's equation, equivalent lengths of fittings. */
final class PipeComputations {

    private PipeComputations() {}

    static void addTo(Map<String, Computation> all) {
        all.put("tree-sizes", given -> PipeTree.of(given).sizes());
        all.put("tree-capacities", given -> PipeTree.of(given).capacities());
        all.put("tree-loads", given -> PipeTree.of(given).loads());
        all.put("gas-volume", PipeComputations::volume);
        all.put("row-sizes", PipeComputations::rowSizes);
        all.put("row-cells", PipeComputations::rowCells);
        all.put("natural-gas-sizes", PipeComputations::naturalSizes);
        all.put("equation", PipeComputations::equation);
        all.put("fitted-feet", PipeComputations::fittedFeet);
    }

    /** Loads as volumes of gas, ft3/h. */
    private static Answer volume(CaseInput given) {
        double btuPerFt3 = given.number("btu-per-ft3");
        return Answer.numbers(PipeTree.of(given).loads().numbers().stream()
                .map(k -> 1000 * k / btuPerFt3)
                .toList());
    }

    /** The smallest size of a published table that carries each load, read at the row of its own length. */
    private static Answer rowSizes(CaseInput given) {
        CapacityTable table = table(given);
        List<String> out = new ArrayList<>();
        for (String run : given.words("runs")) {
            OptionalInt row = table.findRow(Length.ofFeet(feet(given, run)));
            out.add(
                    row.isEmpty()
                            ? "none"
                            : smallest(given, table, c -> table.capacity(row.getAsInt(), c), load(given, run)));
        }
        return Answer.sizes(out);
    }

    private static Answer rowCells(CaseInput given) {
        CapacityTable table = table(given);
        int row = table.findRow(Length.ofFeet(given.number("feet"))).orElseThrow();
        return Answer.numbers(given.words("sizes").stream()
                .map(s -> table.capacity(row, table.findColumn(s).orElseThrow())
                                .orElseThrow()
                                .btuh()
                        / 1000)
                .toList());
    }

    /** Sizes for natural gas of 1,000 Btu a cubic foot by the code's equation, at the rows of its tables. */
    private static Answer naturalSizes(CaseInput given) {
        CapacityTable rows = CapacityTables.standard()
                .forStage(material(given), Pressure.ofInWc(11), Pressure.ofInWc(0.5))
                .orElseThrow();
        List<String> out = new ArrayList<>();
        for (String run : given.words("runs")) {
            Length row = rows.run(rows.findRow(Length.ofFeet(feet(given, run))).orElseThrow());
            out.add(smallest(
                    given,
                    rows,
                    c -> FlowEquation.capacity(
                            GasProperties.NATURAL,
                            rows.bore(c).orElseThrow(),
                            pressure(given, "inlet"),
                            pressure(given, "drop"),
                            row),
                    load(given, run)));
        }
        return Answer.sizes(out);
    }

    private interface Carries {
        Optional<HeatRate> capacity(int column);
    }

    private static String smallest(CaseInput given, CapacityTable table, Carries carries, double load) {
        for (int c = 0; c < table.sizes().size(); c++) {
            if (carries.capacity(c).filter(h -> h.btuh() >= load).isPresent()) {
                return given.find("named").filter("outside"::equals).isPresent()
                        ? table.outsideDiameter(c).orElseThrow()
                        : table.sizes().get(c);
            }
        }
        return "none";
    }

    /** Capacity of a bore by the code's equation, thousand Btu/h of propane. */
    private static Answer equation(CaseInput given) {
        return Answer.number(FlowEquation.capacity(
                                Bore.ofInches(given.number("bore")),
                                pressure(given, "inlet"),
                                pressure(given, "drop"),
                                Length.ofFeet(given.number("feet")))
                        .orElseThrow()
                        .btuh()
                / 1000);
    }

    /**
     * Length with the equivalent length of its screwed fittings, such as {@code parts=3xelbow-90@1 1xtee-branch@1}; in feet,
     * or in metres where the case gives metres.
     */
    private static Answer fittedFeet(CaseInput given) {
        boolean metric = given.find("metres").isPresent();
        double sum = metric ? 0 : given.number("feet");
        for (String part : given.words("parts")) {
            String[] p = part.split("[x@]", 3);
            Turn turn = p[1].equals("tee-branch") ? Turn.TEE_BRANCH : Turn.ELBOW_90; // a valve counts as an elbow
            sum += Integer.parseInt(p[0])
                    * FittingLengths.length(turn, Material.STEEL, p[2]).feet();
        }
        return Answer.number(
                metric ? given.number("metres") + Length.ofFeet(sum).metres() : sum);
    }

    private static double load(CaseInput given, String run) {
        return 1000 * Double.parseDouble(half(given, run, 0));
    }

    private static double feet(CaseInput given, String run) {
        return Double.parseDouble(half(given, run, 1));
    }

    private static String half(CaseInput given, String run, int which) {
        String[] halves = run.split("@");
        if (halves.length != 2) {
            throw given.fault("a run is written load@feet, not " + run);
        }
        return halves[which];
    }

    private static CapacityTable table(CaseInput given) {
        return CapacityTables.standard()
                .forStage(material(given), pressure(given, "inlet"), pressure(given, "drop"))
                .orElseThrow(() -> given.fault("there is no such table"));
    }

    private static Material material(CaseInput given) {
        return Named.find(Material.class, given.text("material"))
                .orElseThrow(() -> given.fault("there is no such material"));
    }

    private static Pressure pressure(CaseInput given, String name) {
        return Measure.PRESSURE.read(given.text(name));
    }
}
