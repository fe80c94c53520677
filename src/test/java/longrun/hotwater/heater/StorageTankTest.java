package longrun.hotwater.heater;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import longrun.checked.Ran;
import longrun.checked.SecondWay;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The tank against closed forms (one stirred tank, plug flow, stirred tanks in a row: textbook reactor theory), against an
 * integrator of differential equations, and its heat against the change of its water.
 */
class StorageTankTest {

    private static final SecondWay WAY = SecondWay.get("storage-tank");

    private static int compared;
    private static double worst;

    @AfterAll
    static void tellWhatTheIntegratorFound() {
        if (compared == WAY.count()) {
            Ran.told(WAY.id(), compared, 0, worst);
        }
    }

    private static final double C = 8.31; // Btu/(gal.degF), water near 78 degF
    private static final double LOSS = 4;

    private static StorageHeater heater(double gallons, double pumpBtuh, double elementBtuh) {
        return new StorageHeater(
                gallons, 140, pumpBtuh, 2.5, elementBtuh, LOSS, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
    }

    /** T' = -(q/V)(T - cold). */
    @Test
    void oneNodeFallsAsOneStirredTank() {
        StorageTank tank = new StorageTank(heater(80, 0, 0), 1, C);
        for (int i = 0; i < 40; i++) {
            tank.draw(2.5, 50);
        }
        assertThat(tank.outletF(0, 50)).isCloseTo(50 + 90 * Math.exp(-100.0 / 80), within(1e-9));
    }

    /** T' = -(q/V)(T - cold) + Q/(V c), its end cold + Q/(q c). */
    @Test
    void aHeatedNodeComesToRestWhereHeatAndDrawBalance() {
        StorageTank tank = new StorageTank(heater(40, 0, 60_000), 1, C);
        for (int i = 0; i < 60_000; i++) {
            tank.draw(0.02, 50);
            tank.heat(0.01, 50);
        }
        // 120 gal/h; the loss of 4 Btu/(h.degF) goes with the draw
        assertThat(tank.meanF()).isCloseTo(50 + 60_000 / (120 * C + LOSS), within(0.02));
    }

    /** The front through many stirred tanks has spread V / sqrt(N); plug flow is its limit. */
    @Test
    void manyNodesDeliverTheSetPointUntilNearlyTheWholeTankIsDrawn() {
        StorageTank tank = new StorageTank(heater(80, 0, 0), 400, C);
        double spread = 80 / Math.sqrt(400);
        for (double drawn = 0; drawn < 80 + 5 * spread; drawn++) {
            double out = tank.outletF(1, 50);
            if (drawn < 80 - 5 * spread - 1) {
                assertThat(out).isCloseTo(140, within(1e-3));
            }
            tank.draw(1, 50);
        }
        assertThat(tank.outletF(0, 50)).isCloseTo(50, within(1e-3));
        StorageTank half = new StorageTank(heater(80, 0, 0), 400, C);
        for (int i = 0; i < 40; i++) {
            half.draw(1, 50);
        }
        assertThat(half.meanF()).isCloseTo(95, within(1e-9));
    }

    @Test
    void moreNodesKeepTheOutletWarmLonger() {
        double before = 0;
        for (int nodes : new int[] {1, 2, 4, 12, 40}) {
            double out = new StorageTank(heater(80, 0, 0), nodes, C).outletF(56, 50);
            assertThat(out).isGreaterThan(before);
            before = out;
        }
    }

    /** Textbook: of stirred tanks in a row the last gives exp(-a) times the sum of a^j / j!. */
    @Test
    void twelveNodesFollowTheStirredTanksInARow() {
        StorageTank tank = new StorageTank(heater(80, 0, 0), 12, C);
        for (int i = 0; i < 7; i++) {
            tank.draw(10, 50);
        }
        double a = 70 / (80 / 12.0);
        double sum = 0;
        double term = 1;
        for (int j = 0; j < 12; j++) {
            sum += term;
            term *= a / (j + 1);
        }
        assertThat(tank.outletF(0, 50)).isCloseTo(50 + 90 * Math.exp(-a) * sum, within(1e-9));
    }

    @Test
    void whatLeavesAndWhatStaysSumToWhatWasThere() {
        Random random = new Random(7);
        for (int i = 0; i < 400; i++) {
            StorageTank tank = new StorageTank(
                    heater(20 + 100 * random.nextDouble(), 5000, random.nextBoolean() ? 15_000 : 0), 12, C);
            tank.fill(60 + 70 * random.nextDouble());
            for (int step = 0; step < 30; step++) {
                double cold = 34 + 50 * random.nextDouble();
                double gallons = random.nextInt(3) == 0 ? 0 : 6 * random.nextDouble();
                double mean = tank.outletF(gallons, cold);
                double heat = tank.heatBtu();
                double made = tank.pumpBtu() + tank.elementBtu();
                double lost = tank.lossBtu();
                tank.draw(gallons, cold);
                tank.heat(1 + 14 * random.nextDouble(), 40 + 40 * random.nextDouble());
                double in = gallons * C * cold;
                double change =
                        in - gallons * C * mean + tank.pumpBtu() + tank.elementBtu() - made - (tank.lossBtu() - lost);
                assertThat(tank.heatBtu() - heat).as("seed 7, tank " + i).isCloseTo(change, within(1e-9 * heat));
            }
        }
    }

    @Test
    void noNodeIsWarmerThanTheOneOverItNorThanTheSetPoint() {
        Random random = new Random(11);
        StorageTank tank = new StorageTank(heater(80, 5000, 15_000), 12, C);
        for (int step = 0; step < 4000; step++) {
            tank.draw(random.nextInt(4) == 0 ? 8 * random.nextDouble() : 0, 45);
            tank.heat(15 * random.nextDouble(), 68);
            double[] nodes = tank.nodesF();
            for (int n = 0; n < nodes.length; n++) {
                assertThat(nodes[n]).isLessThanOrEqualTo(140 + 1e-9);
                assertThat(n == 0 || nodes[n] >= nodes[n - 1] - 1e-9)
                        .as("seed 11, step " + step)
                        .isTrue();
            }
        }
    }

    /** One draw of 4 gal/min for 12 minutes with the standing loss, by a Dormand-Prince 8(5,3) integrator. */
    @ParameterizedTest
    @ValueSource(ints = {1, 3, 12})
    void anIntegratorAgreesOnOneDraw(int nodes) {
        double flow = 4.0 / 60; // gal/s
        double[] end = integrate(nodes, flow, 50, 68, 720);
        StorageTank tank = new StorageTank(heater(80, 0, 0), nodes, C);
        for (int second = 0; second < 720; second++) {
            tank.draw(flow, 50);
            tank.heat(1 / 60.0, 68);
        }
        assertThat(tank.nodesF()).containsExactly(end, within(WAY.within()));
        for (int n = 0; n < nodes; n++) {
            worst = Math.max(worst, Math.abs(tank.nodesF()[n] - end[n]));
        }
        compared++;
        StorageTank byMinute = new StorageTank(heater(80, 0, 0), nodes, C);
        for (int minute = 0; minute < 12; minute++) {
            byMinute.draw(4, 50);
            byMinute.heat(1, 68);
        }
        assertThat(byMinute.nodesF()).containsExactly(end, within(0.02));
    }

    @Test
    void anIntegratorAgreesOnACoolingTank() {
        double[] end = integrate(12, 0, 50, 68, 48 * 3600);
        StorageTank tank = new StorageTank(heater(80, 0, 0), 12, C);
        for (int quarter = 0; quarter < 192; quarter++) {
            tank.heat(15, 68);
        }
        assertThat(tank.nodesF()).containsExactly(end, within(1e-6));
        assertThat(tank.meanF()).isCloseTo(68 + 72 * Math.exp(-LOSS * 48 / (80 * C)), within(1e-9));
    }

    private static double[] integrate(int nodes, double galPerSecond, double coldF, double roomF, double seconds) {
        double nodeGal = 80.0 / nodes;
        OrdinaryDifferentialEquation cascade = new OrdinaryDifferentialEquation() {
            @Override
            public int getDimension() {
                return nodes;
            }

            @Override
            public double[] computeDerivatives(double t, double[] y) {
                double[] dy = new double[nodes];
                for (int i = 0; i < nodes; i++) {
                    double below = i == 0 ? coldF : y[i - 1];
                    dy[i] = galPerSecond / nodeGal * (below - y[i]) - LOSS / 3600 / (80 * C) * (y[i] - roomF);
                }
                return dy;
            }
        };
        double[] start = new double[nodes];
        java.util.Arrays.fill(start, 140);
        return new DormandPrince853Integrator(1e-3, 600, 1e-10, 1e-10)
                .integrate(cascade, new ODEState(0, start), seconds)
                .getPrimaryState();
    }

    @Test
    void aHeatPumpGivesLessInAColdRoomAndToHotWater() {
        assertThat(HeatPump.share(67.5, 125)).isEqualTo(1);
        double last = 1.0001;
        for (double room = 80; room >= 20; room -= 5) {
            assertThat(HeatPump.share(room, 130)).isLessThanOrEqualTo(last);
            last = HeatPump.share(room, 130);
        }
        assertThat(HeatPump.share(67.5, 140)).isLessThan(HeatPump.share(67.5, 130));
        assertThat(HeatPump.share(67.5, 30)).isEqualTo(1);
        assertThat(HeatPump.share(120, 30)).isEqualTo(1);
        assertThat(HeatPump.share(-40, 300)).isBetween(0.1, 0.5);
    }

    @Test
    void aLockedOutHeatPumpRestsAndTheElementTakesTheWholeTank() {
        StorageHeater plain = new StorageHeater(80, 140, 5000, 2.5, 15_354, LOSS, 45, Double.POSITIVE_INFINITY);
        StorageTank tank = new StorageTank(plain, 12, C);
        tank.fill(60);
        tank.heat(60, 40);
        assertThat(tank.pumpBtu()).isZero();
        assertThat(tank.elementBtu()).isCloseTo(15_354, within(1e-6));
        StorageTank warm = new StorageTank(plain, 12, C);
        warm.fill(60);
        warm.heat(60, 50);
        assertThat(warm.pumpBtu()).isPositive();
    }

    @Test
    void aHeatPumpStopsAtTheHottestWaterItCanMake() {
        StorageTank tank =
                new StorageTank(new StorageHeater(80, 140, 5000, 2.5, 0, LOSS, Double.NEGATIVE_INFINITY, 125), 12, C);
        tank.fill(60);
        for (int i = 0; i < 400; i++) {
            tank.heat(15, 68);
        }
        assertThat(tank.outletF(0, 50)).isBetween(114.0, 125.0);
    }

    /** Recovery: 4,500 Btu/h at a rise of 67 degF make 8.1 gal/h (common figure, derived: Btu/h / (8.3 x rise)). */
    @Test
    void recoveryIsHeatOverRise() {
        StorageTank tank = new StorageTank(
                new StorageHeater(8.1, 125, 4500, 2.5, 0, 0, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY),
                1,
                8.3);
        tank.fill(58);
        tank.heat(60, 67.5);
        assertThat(tank.meanF()).isCloseTo(125, within(0.1));
    }
}
