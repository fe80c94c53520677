package longrun.hotwater.heater;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** When heat comes on and goes off in a storage heater, how much of it, and how long its water stands lukewarm. */
class TankHeatTest {

    private static final double C = 8.31; // Btu/(gal.degF), water near 78 degF

    private static StorageHeater heater(double gallons, double pumpBtuh, double elementBtuh) {
        return new StorageHeater(
                gallons, 140, pumpBtuh, 2.5, elementBtuh, 4, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
    }

    /** Public health guidance, memory: Legionella multiplies in lukewarm water, here from 68 to 122 degF. */
    @ParameterizedTest
    @CsvSource({"67.9, 0", "68, 0", "68.1, 120", "121.9, 120", "122, 0", "122.1, 0"})
    void aTankIsLukewarmBetweenSixtyEightAndAHundredAndTwentyTwo(double degF, double minutes) {
        StorageTank tank = new StorageTank(still(), 12, C);
        tank.fill(degF);
        tank.heat(30, 60);
        tank.heat(90, 60);
        assertThat(tank.longestLukewarm()).isEqualTo(minutes);
    }

    @Test
    void aTankOnceHotBeginsItsLukewarmTimeAnew() {
        StorageTank tank = new StorageTank(still(), 12, C);
        tank.fill(100);
        tank.heat(100, 60);
        tank.fill(140);
        tank.heat(10, 60);
        tank.fill(100);
        tank.heat(70, 60);
        assertThat(tank.longestLukewarm()).isEqualTo(100);
        tank.heat(70, 60);
        assertThat(tank.longestLukewarm()).isEqualTo(140);
    }

    @ParameterizedTest
    @CsvSource({"1439, 1439", "1440, 5760", "1441, 5761"})
    void daysThatGoOnAlikeAreLukewarmWhereTheWholeDayWas(double minutes, double longest) {
        StorageTank tank = new StorageTank(still(), 12, C);
        tank.fill(100);
        tank.heat(minutes, 60);
        tank.goesOnLike(3);
        assertThat(tank.longestLukewarm()).isEqualTo(longest);
    }

    private static StorageHeater still() {
        return new StorageHeater(80, 140, 0, 1, 0, 0, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
    }

    /** Memory: water falls 10 degF under the set point before heat comes on. */
    @ParameterizedTest
    @CsvSource({"130.1, false", "130, false", "129.9, true"})
    void heatComesOnTenDegreesUnderTheSetPoint(double degF, boolean on) {
        for (StorageHeater heater : List.of(heater(80, 5000, 0), heater(80, 0, 15_354), heater(80, 5000, 15_354))) {
            StorageTank tank = new StorageTank(noLoss(heater), 12, C);
            tank.fill(degF);
            tank.heat(1, 70);
            assertThat(tank.pumpBtu() + tank.elementBtu() > 0).isEqualTo(on);
            assertThat(tank.pumpIsOn() || tank.elementIsOn()).isEqualTo(on);
        }
    }

    private static StorageHeater noLoss(StorageHeater h) {
        return new StorageHeater(
                h.gallons(), h.setF(), h.pumpBtuh(), h.cop(), h.elementBtuh(), 0, h.lockoutF(), h.pumpMaxF());
    }

    @Test
    void heatOnceOnGoesOnUntilTheSetPointAndNoFurther() {
        StorageTank tank = new StorageTank(noLoss(heater(80, 0, 15_354)), 12, C);
        tank.fill(120);
        tank.heat(30, 70);
        assertThat(tank.elementBtu()).isCloseTo(7677, within(1e-6));
        assertThat(tank.elementIsOn()).isTrue();
        assertThat(tank.meanF()).isCloseTo(120 + 7677 / (80 * C), within(1e-9));
        tank.heat(60, 70);
        assertThat(tank.elementBtu()).isCloseTo(20 * 80 * C, within(1e-6));
        assertThat(tank.elementIsOn()).isFalse();
        assertThat(tank.meanF()).isCloseTo(140, within(1e-9));
    }

    /** Beside a heat pump the element keeps the top third of the water. */
    @Test
    void besideAHeatPumpTheElementWarmsTheTopThird() {
        StorageTank tank = new StorageTank(noLoss(heater(90, 1, 50_000)), 9, C);
        tank.fill(100);
        tank.heat(60, 70);
        double[] nodes = tank.nodesF();
        assertThat(nodes[5]).isCloseTo(100, within(0.1));
        assertThat(nodes[6]).isCloseTo(140, within(1e-9));
        assertThat(nodes[8]).isCloseTo(140, within(1e-9));
        assertThat(tank.elementBtu()).isCloseTo(30 * C * 40, within(1.0));
        assertThat(tank.elementIsOn()).isFalse();
    }

    @ParameterizedTest
    @CsvSource({"44.9, false", "45, true", "45.1, true"})
    void aHeatPumpRunsFromItsLockoutTemperatureUp(double roomF, boolean runs) {
        StorageHeater h = new StorageHeater(80, 140, 5000, 2.5, 0, 4, 45, Double.POSITIVE_INFINITY);
        assertThat(h.pumpRuns(roomF)).isEqualTo(runs);
        assertThat(heater(80, 0, 4000).pumpRuns(roomF)).isFalse();
        assertThat(h.withSetF(120))
                .isEqualTo(new StorageHeater(80, 120, 5000, 2.5, 0, 4, 45, Double.POSITIVE_INFINITY));
    }

    /** A heat pump as rated, 67.5 degF air and 125 degF water: its current is its output over its COP. */
    @Test
    void aHeatPumpsCurrentIsItsOutputOverItsCop() {
        StorageTank tank = new StorageTank(noLoss(heater(80, 5000, 0)), 1, C);
        tank.fill(125);
        tank.heat(6, 67.5);
        assertThat(tank.pumpBtu()).isCloseTo(500, within(1e-9));
        assertThat(tank.pumpElectricBtu()).isCloseTo(200, within(1e-9));
        StorageTank cold = new StorageTank(
                new StorageHeater(80, 140, 5000, 1.1, 0, 0, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY), 1, C);
        cold.fill(129);
        cold.heat(6, 0);
        assertThat(cold.pumpElectricBtu()).isEqualTo(cold.pumpBtu()).isLessThan(500);
    }

    /** Ideal COP, textbook: hot over hot less cold, on the absolute scale, 10 degF across each coil. */
    @ParameterizedTest
    @CsvSource({"67.5, 140, 140", "50, 125, 125", "20, 100, 100"})
    void aHeatPumpsShareIsThatOfTheIdealCop(double roomF, double waterF, double same) {
        double ideal = (same + 10 + 459.67) / (waterF - roomF + 20);
        double rated = (125 + 10 + 459.67) / (125 - 67.5 + 20);
        assertThat(HeatPump.share(roomF, waterF)).isCloseTo(ideal / rated, within(1e-12));
    }

    @Test
    void aTankThatStandsAlikeStandsAlikeInEveryNode() {
        StorageTank tank = new StorageTank(heater(80, 5000, 0), 3, C);
        assertThat(tank.standsLike(new double[] {140, 140, 140}, false, false)).isTrue();
        assertThat(tank.standsLike(new double[] {140, 140, 140}, true, false)).isFalse();
        assertThat(tank.standsLike(new double[] {140, 140, 140}, false, true)).isFalse();
        assertThat(tank.standsLike(new double[] {140, 140, 140.001}, false, false))
                .isFalse();
        assertThat(tank.standsLike(new double[] {139.999, 140, 140}, false, false))
                .isFalse();
    }

    @Test
    void aTankThatDrawsNothingStaysAsItWas() {
        StorageTank tank = new StorageTank(heater(80, 0, 0), 12, C);
        tank.draw(0, 50);
        assertThat(tank.nodesF()).containsOnly(140);
        assertThat(tank.outletF(0, 50)).isEqualTo(140);
        assertThat(tank.heatBtu()).isCloseTo(80 * C * 140, within(1e-6));
    }

    /** Cold water that comes in warmer than what lies there rises: from 60 under 100 all mix by volume. */
    @Test
    void warmWaterUnderColdMixesWithIt() {
        StorageTank tank = new StorageTank(heater(80, 0, 0), 4, C);
        tank.fill(60);
        tank.draw(20, 100);
        double[] nodes = tank.nodesF();
        assertThat(nodes[0]).isCloseTo(nodes[3], within(1e-9));
        assertThat(tank.meanF()).isBetween(60.0, 70.0);
    }

    @Test
    void anElementThatIsOffNeverComesOn() {
        StorageTank tank = new StorageTank(heater(80, 0, 0), 12, C);
        tank.fill(60);
        tank.heat(60, 70);
        assertThat(tank.elementIsOn()).isFalse();
        assertThat(tank.pumpIsOn()).isFalse();
        assertThat(tank.heatBtu()).isLessThan(80 * C * 60.5);
    }

    /** Heat from below warms the coldest water first, up to the warmth of what lies over it, then both: buoyancy. */
    @ParameterizedTest
    @CsvSource({"1", "3", "6", "12", "20", "30"})
    void heatWarmsTheColdestWaterFirst(double minutes) {
        StorageTank tank = new StorageTank(noLoss(heater(30, 0, 10_000)), 3, C);
        tank.draw(12, 50);
        double[] before = tank.nodesF();
        tank.heat(minutes, 70);
        double[] after = tank.nodesF();
        double given = 0;
        for (int n = 0; n < 3; n++) {
            assertThat(after[n]).isCloseTo(Math.max(before[n], after[0]), within(1e-9));
            given += (after[n] - before[n]) * 10 * C;
        }
        assertThat(given).isCloseTo(10_000 * minutes / 60, within(1e-6));
        assertThat(tank.elementBtu()).isCloseTo(given, within(1e-6));
    }
}
