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
 * itself computed by that equation proves nothing and is counted apart.
 *
 * @param printed cells read in print
 * @param printedSame of them, those that are the equation to their last digit
 * @param computed cells made by the equation where no print was at hand
 * @param apart every cell that is not the equation to its last digit
 */
public record EquationCheck(CapacityTable table, int printed, int printedSame, int computed, List<CellApart> apart) {

    private static final KnownCells KNOWN = KnownCells.read("checked/cells-beside-equation.csv");

    private static final class Holder {
        static final List<EquationCheck> ALL = CapacityTables.standard().all().stream()
                .filter(t -> t.use() != Use.AS_PRINTED && t.bore(0).isPresent())
                .map(EquationCheck::of)
                .toList();
    }

    /** Every table whose sizes have a bore. */
    public static List<EquationCheck> listAll() {
        return Holder.ALL;
    }

    private static EquationCheck of(CapacityTable t) {
        int printed = 0;
        int same = 0;
        int computed = 0;
        List<CellApart> apart = new ArrayList<>();
        for (int r = 0; r < t.rowCount(); r++) {
            for (int c = 0; c < t.sizes().size(); c++) {
                Cell cell = t.cell(r, c);
                Optional<HeatRate> equation = FlowEquation.capacity(
                                t.bore(c).orElseThrow(), t.inlet(), t.drop(), cell.run())
                        .flatMap(PrintRounding::rounded);
                boolean equal = cell.capacity().equals(equation);
                if (!equal) {
                    String why = KNOWN.why(t.id(), cell.run().feet(), cell.size());
                    apart.add(new CellApart(cell.run(), cell.size(), cell.capacity(), equation, why));
                }
                if (cell.confidence() == Confidence.COMPUTED) {
                    computed++;
                } else {
                    printed++;
                    same += equal ? 1 : 0;
                }
            }
        }
        return new EquationCheck(t, printed, same, computed, List.copyOf(apart));
    }

    /** Whether every cell that differs has its reason. */
    public boolean holds() {
        return apart.stream().noneMatch(c -> c.why().isEmpty());
    }
}
