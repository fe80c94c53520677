package longrun.pressure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.TreeMap;
import longrun.capacity.CapacityTable;
import longrun.capacity.CapacityTables;
import longrun.capacity.FlowForm;
import longrun.capacity.GasProperties;
import longrun.plan.choice.Material;
import longrun.quantity.Pressure;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/**
 * The drop is the capacity turned round: at what a cell of the 2018 IFGC tables 402.4(25) to (37) carries, over its row,
 * the table's own drop comes back, for every pressure class the code prints.
 */
class EquationBothWaysTest {

    private static final Offset<Double> FROZEN = within(1e-9);

    @Test
    void theUnroundedCapacityGivesTheDropBackInBothForms() {
        int cells = 0;
        for (CapacityTable t : CapacityTables.standard().all()) {
            for (int c = 0; c < t.sizes().size(); c++) {
                for (int r = 0; r < t.rowCount() && t.bore(c).isPresent(); r++) {
                    double bore = t.bore(c).orElseThrow().inches();
                    double capacity =
                            FlowForm.btuh(bore, t.inlet(), t.drop(), t.run(r).feet());
                    double drop =
                            FlowForm.dropPsi(bore, t.inlet(), capacity, t.run(r).feet());
                    assertThat(drop).isCloseTo(t.drop().psi(), FROZEN);
                    cells++;
                }
            }
        }
        assertThat(cells).isGreaterThan(3000);
    }

    @Test
    void thePrintedCapacityGivesTheDropBackWithinItsRounding() {
        TreeMap<String, Integer> classes = new TreeMap<>();
        for (CapacityTable t : CapacityTables.standard().all()) {
            if (t.use() == CapacityTable.Use.AS_PRINTED || t.material() == Material.CSST) {
                continue;
            }
            for (int c = 0; c < t.sizes().size(); c++) {
                for (int r = 0; r < t.rowCount(); r++) {
                    if (t.capacity(r, c).isEmpty()) {
                        continue;
                    }
                    double cell = t.capacity(r, c).get().btuh();
                    double drop = FlowForm.dropPsi(
                            t.bore(c).orElseThrow().inches(),
                            t.inlet(),
                            cell,
                            t.run(r).feet());
                    // a cell is rounded by at most half a step, one whole step where print differs by its last digit
                    double step = step(cell) / cell;
                    double slack = t.drop().psi() * (Math.pow(1 + step, 1 / 0.541) - 1) * 1.2;
                    assertThat(drop)
                            .as(
                                    "%s row %s size %s",
                                    t.id(), t.run(r).feet(), t.sizes().get(c))
                            .isCloseTo(t.drop().psi(), within(slack));
                    classes.merge(
                            t.inlet().psi() < 1.5
                                    ? "11 in"
                                    : t.inlet().psi() < 5 ? "2 psi" : t.drop().psi() > 2 ? "10 psi, 3" : "10 psi, 1",
                            1,
                            Integer::sum);
                }
            }
        }
        assertThat(classes.keySet()).containsExactly("10 psi, 1", "10 psi, 3", "11 in", "2 psi");
    }

    private static double step(double cell) {
        double step = 1000;
        while (cell / step >= 1000) {
            step *= 10;
        }
        return step;
    }

    @Test
    void theDiameterFormGivesHalfToOnePercentMore() {
        // 0.5 to 1.0 percent more than the flow form for 1/2 to 4 in.
        for (double bore : new double[] {0.622, 1.049, 2.067, 4.026}) {
            for (Pressure inlet : new Pressure[] {Pressure.ofInWc(11), Pressure.ofPsi(2), Pressure.ofPsi(10)}) {
                Pressure drop = inlet.psi() < 1.5 ? Pressure.ofInWc(0.5) : Pressure.ofPsi(1);
                double flow = FlowForm.btuh(bore, inlet, drop, 50);
                double diameter = FlowForm.byDiameter(GasProperties.PROPANE, bore, inlet, drop, 50);
                assertThat(diameter / flow).isBetween(1.003, 1.011);
            }
        }
    }

    @Test
    void aRunOfOneBoreLosesTheSameHoweverItIsCutUp() {
        for (Pressure inlet : new Pressure[] {Pressure.ofInWc(11), Pressure.ofPsi(2), Pressure.ofPsi(10)}) {
            double whole = FlowForm.dropPsi(0.622, inlet, 150_000, 90);
            double at = inlet.psi();
            for (int i = 0; i < 9; i++) {
                at -= FlowForm.dropPsi(0.622, inlet, Pressure.ofPsi(at), 150_000, 10);
            }
            assertThat(inlet.psi() - at).isCloseTo(whole, FROZEN);
        }
    }
}
