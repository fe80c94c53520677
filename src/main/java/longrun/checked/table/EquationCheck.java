package longrun.checked.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longrun.capacity.CapacityTable;
import longrun.capacity.CapacityTable.Use;
import longrun.capacity.CapacityTables;
import longrun.capacity.Cell;
import longrun.capacity.FlowEquation;
import longrun.capacity.PrintRounding;
import longrun.origin.Confidence;
import longrun.quantity.HeatRate;

/**
 * A capacity table against the code's equation in flow form (2018 IFGC 402.4), rounded as the code prints. A cell that was
 * itself computed by that equation proves nothing and is counted separately.
 *
 * @param printed the number of cells read in print
 * @param printedSame how many of them agree with the equation to the last digit
 * @param computed the number of cells made by the equation, because no print was available
 * @param differing every cell that does not agree with the equation to the last digit
 */
public record EquationCheck(
        CapacityTable table, int printed, int printedSame, int computed, List<DifferingCell> differing) {

    private static final KnownDifferences KNOWN = KnownDifferences.read("checked/cells-beside-equation.csv");

    private static final class Holder {
        static final List<EquationCheck> ALL = CapacityTables.standard().all().stream()
                .filter(t -> t.use() != Use.AS_PRINTED && t.bore(0).isPresent())
                .map(EquationCheck::of)
                .toList();
    }

    /** The check of every table whose sizes have a bore. */
    public static List<EquationCheck> listAll() {
        return Holder.ALL;
    }

    private static EquationCheck of(CapacityTable t) {
        int printed = 0;
        int same = 0;
        int computed = 0;
        List<DifferingCell> differing = new ArrayList<>();
        for (int r = 0; r < t.rowCount(); r++) {
            for (int c = 0; c < t.sizes().size(); c++) {
                Cell cell = t.cell(r, c);
                Optional<HeatRate> equation = FlowEquation.capacity(
                                t.bore(c).orElseThrow(), t.inlet(), t.drop(), cell.run())
                        .flatMap(PrintRounding::rounded);
                boolean equal = cell.capacity().equals(equation);
                if (!equal) {
                    String why = KNOWN.why(t.id(), cell.run().feet(), cell.size());
                    differing.add(new DifferingCell(cell.run(), cell.size(), cell.capacity(), equation, why));
                }
                if (cell.confidence() == Confidence.COMPUTED) {
                    computed++;
                } else {
                    printed++;
                    same += equal ? 1 : 0;
                }
            }
        }
        return new EquationCheck(t, printed, same, computed, List.copyOf(differing));
    }

    /** Whether there is a reason for every cell that differs. */
    public boolean holds() {
        return differing.stream().noneMatch(c -> c.why().isEmpty());
    }
}
