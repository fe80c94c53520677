package longrun.hotwater.heater;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import longrun.hotwater.draw.Draw;
import longrun.hotwater.draw.DrawDay;
import longrun.hotwater.draw.DrawEvent;
import longrun.plan.choice.Arrangement;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a day's draws come to, step by step, with heat by hand: k of 500 Btu/h for each gal/min and degF. */
class TallyTest {

    private static final double K = 500;

    private static OnDemandHeater burner(double full) {
        return new OnDemandHeater(120, full, 15_000, 0.5, 0.9);
    }

    private static List<DrawEvent> events(double full, double stepMin, Draw... draws) {
        List<EventTally> tallies = new ArrayList<>();
        for (int i = 0; i < draws.length; i++) {
            tallies.add(new EventTally(i, draws[i], 102));
        }
        Chain chain = new Chain(null, burner(full), 120, K);
        new ChainDay(chain, null, stepMin)
                .run(
                        DrawDay.of(List.of(draws)),
                        50,
                        0,
                        (c, slice, minute, step) ->
                                slice.draws().forEach(i -> tallies.get(i).drawn(c, slice, minute, step)));
        return tallies.stream().map(t -> t.event(Arrangement.ON_DEMAND_ONLY)).toList();
    }

    /** 2 gal/min from 50 to 105 degF are 55,000 Btu/h, over 90 % 61,111; five minutes of it 5,093 Btu. */
    @Test
    void aDrawAloneBurnsItsHeatOverTheEfficiency() {
        DrawEvent e = events(200_000, 1 / 60.0, new Draw("a", 600, 5, 2, 105)).get(0);
        assertThat(e.gasBtu()).isCloseTo(55_000 / 0.9 * 5 / 60, within(1e-6));
        assertThat(e.inputBtuh()).hasSize(5).allSatisfy(b -> assertThat(b).isCloseTo(55_000 / 0.9, within(1e-6)));
        assertThat(e.outletF()).hasSize(5).allSatisfy(t -> assertThat(t).isCloseTo(120, within(1e-6)));
        assertThat(e.fixtureF()).hasSize(5).allSatisfy(t -> assertThat(t).isCloseTo(105, within(1e-6)));
        assertThat(e.minutesComfortable()).isCloseTo(5, within(1e-9));
        assertThat(e.keepsGpm()).isEqualTo(2);
        assertThat(e.hottestF()).isCloseTo(105, within(1e-6));
        assertThat(e.coldestF()).isCloseTo(105, within(1e-6));
        assertThat(e.hottestInletF()).isEqualTo(50);
        assertThat(e.hottestOutletF()).isEqualTo(120);
    }

    @Test
    void ofTwoDrawsAtOnceEachBurnsByItsShareOfTheFlow() {
        List<DrawEvent> two = events(200_000, 1, new Draw("a", 600, 6, 3, 105), new Draw("b", 600, 6, 1, 105));
        assertThat(two.get(0).gasBtu()).isCloseTo(3 * two.get(1).gasBtu(), within(1e-6));
        assertThat(two.get(0).gasBtu() + two.get(1).gasBtu()).isCloseTo(4 * 27_500 / 0.9 * 6 / 60, within(1e-6));
    }

    /** 100,000 Btu/h keep 3.636 gal/min from 50 to 105 degF: of 4 gal/min each draw keeps ten elevenths of its own. */
    @Test
    void overFullFireEachDrawKeepsItsShare() {
        List<DrawEvent> two = events(100_000, 1, new Draw("a", 600, 6, 3, 105), new Draw("b", 602, 2, 1, 105));
        assertThat(two.get(0).keepsGpm()).isCloseTo(3 * 100_000 / 27_500.0 / 4, within(1e-9));
        assertThat(two.get(1).keepsGpm()).isCloseTo(100_000 / 27_500.0 / 4, within(1e-9));
        assertThat(two.get(0).minutesComfortable()).isCloseTo(4, within(1e-9));
        assertThat(two.get(1).minutesComfortable()).isZero();
        assertThat(two.get(1).fixtureF()).allSatisfy(t -> assertThat(t).isCloseTo(100, within(1e-9)));
        assertThat(two.get(0).fixtureF().get(0)).isCloseTo(105, within(1e-9));
        assertThat(two.get(0).fixtureF().get(2)).isCloseTo(100, within(1e-9));
        assertThat(two.get(0).coldestF()).isCloseTo(100, within(1e-9));
    }

    /** Beside a hotter draw a cooler one is mixed at its own tap, no warmer than it is used. */
    @Test
    void ofTwoTemperaturesAtOnceNoneIsWarmerThanItsUse() {
        List<DrawEvent> two = events(200_000, 1, new Draw("a", 600, 6, 3, 110), new Draw("b", 600, 6, 1, 100));
        assertThat(two.get(0).fixtureF()).allSatisfy(t -> assertThat(t).isCloseTo(110, within(1e-9)));
        assertThat(two.get(1).fixtureF()).allSatisfy(t -> assertThat(t).isCloseTo(100, within(1e-9)));
        assertThat(two.get(1).coldestF()).isCloseTo(100, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"600, 10, 10", "1435, 10, 10", "600, 2.5, 3", "1439.5, 2, 2", "600, 0.4, 1"})
    void aDrawHasAValueForEachMinuteOverMidnightToo(double start, double minutes, int values) {
        DrawEvent e =
                events(200_000, 1 / 60.0, new Draw("a", start, minutes, 2, 105)).get(0);
        assertThat(e.fixtureF()).hasSize(values).allSatisfy(t -> assertThat(t).isCloseTo(105, within(1e-6)));
        assertThat(e.inputBtuh()).hasSize(values);
        assertThat(e.gasBtu()).isCloseTo(55_000 / 0.9 * minutes / 60, within(1e-6));
        assertThat(e.minutesComfortable()).isCloseTo(minutes, within(1e-9));
    }

    @Test
    void theMinutesAreInTheOrderOfTheDrawOverMidnight() {
        // a second draw from 1:00 to 3:00 past midnight takes the heat of those two minutes
        DrawEvent e = events(100_000, 1, new Draw("a", 1438, 6, 3, 105), new Draw("b", 1, 2, 1, 105))
                .get(0);
        assertThat(e.fixtureF()).hasSize(6);
        for (int i = 0; i < 6; i++) {
            assertThat(e.fixtureF().get(i)).as("minute " + i).isCloseTo(i == 3 || i == 4 ? 100 : 105, within(1e-9));
        }
    }

    @ParameterizedTest
    @CsvSource({"101.9, false", "102, true", "102.1, true"})
    void aFixtureAtTheComfortTemperatureIsComfortable(double fixtureF, boolean comfort) {
        assertThat(DayTally.isComfort(fixtureF, 102)).isEqualTo(comfort);
    }

    /** Energy balance of the room: output less current less the standing loss given back, never below nothing. */
    @Test
    void aDaysTallyIsWhatTheTankDidThatDayAlone() {
        StorageTank tank = new StorageTank(
                new StorageHeater(80, 140, 5000, 2.5, 0, 4, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY),
                12,
                K / 60);
        tank.fill(100);
        tank.heat(60, 67.5);
        DayTally tally = new DayTally(K, 102);
        double pump = tank.pumpBtu();
        double current = tank.pumpElectricBtu();
        double lost = tank.lossBtu();
        assertThat(pump).isPositive();
        tally.begin(tank, 50);
        tank.heat(120, 67.5);
        tally.end(tank);
        assertThat(tally.pumpBtu()).isCloseTo(tank.pumpBtu() - pump, within(1e-9));
        assertThat(tally.electricBtu()).isCloseTo(tank.pumpElectricBtu() - current, within(1e-9));
        assertThat(tally.lossBtu()).isPositive().isCloseTo(tank.lossBtu() - lost, within(1e-9));
        assertThat(tally.roomBtu())
                .isPositive()
                .isCloseTo(tally.pumpBtu() - tally.electricBtu() - tally.lossBtu(), within(1e-9));
        DayTally rest = new DayTally(K, 102);
        StorageTank still = new StorageTank(
                new StorageHeater(80, 140, 0, 1, 0, 4, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY), 12, K / 60);
        rest.begin(still, 50);
        still.heat(60, 68);
        rest.end(still);
        assertThat(rest.lossBtu()).isPositive();
        assertThat(rest.roomBtu()).isZero();
    }

    /** Pump and element both draw current: 5,000 Btu/h over a COP of 2.5 and 4.5 kW, an hour of each. */
    @Test
    void theCurrentOfADayIsThatOfPumpAndElement() {
        StorageTank tank = new StorageTank(
                new StorageHeater(90, 140, 5000, 2.5, 15_354, 0, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY),
                9,
                K / 60);
        tank.fill(60);
        DayTally tally = new DayTally(K, 102);
        tally.begin(tank, 50);
        tank.heat(60, 67.5);
        tally.end(tank);
        assertThat(tally.pumpBtu()).isCloseTo(5000, within(1e-9));
        assertThat(tally.electricBtu()).isCloseTo(2000 + 15_354, within(1e-6));
    }

    @Test
    void aDaysDrawsAreSummed() {
        DayTally tally = new DayTally(K, 102);
        tally.begin(null, 50);
        Chain chain = new Chain(null, burner(100_000), 120, K);
        new ChainDay(chain, null, 1)
                .run(DrawDay.of(List.of(new Draw("a", 600, 6, 2, 105), new Draw("b", 700, 3, 5, 105))), 50, 0, tally);
        tally.end(null);
        assertThat(tally.drawMinutes()).isCloseTo(9, within(1e-9));
        assertThat(tally.comfortMinutes()).isCloseTo(6, within(1e-9));
        assertThat(tally.gasBtu()).isCloseTo((55_000 * 0.1 + 100_000 * 0.05) / 0.9, within(1e-6));
        assertThat(tally.fixtureBtu()).isCloseTo(55_000 * 0.1 + 100_000 * 0.05, within(1e-6));
        assertThat(tally.hottestF()).isCloseTo(105, within(1e-9));
        assertThat(tally.coldestF()).isCloseTo(50 + 100_000 / 2500.0, within(1e-9));
        assertThat(tally.pumpBtu()).isZero();
    }

    /** A step is no longer than wanted, and of equal length: 2.5 minutes by the minute are three steps of 50 seconds. */
    @ParameterizedTest
    @CsvSource({"2.5, 1, 3", "3, 1, 3", "3.001, 1, 4", "0.2, 1, 1", "2, 0.5, 4"})
    void aDrawIsCutInEqualStepsNoLongerThanWanted(double minutes, double stepMin, int steps) {
        List<Double> began = new ArrayList<>();
        List<Double> lasted = new ArrayList<>();
        new ChainDay(new Chain(null, burner(200_000), 120, K), null, stepMin)
                .run(DrawDay.of(List.of(new Draw("a", 600, minutes, 2, 105))), 50, 0, (c, slice, minute, step) -> {
                    began.add(minute);
                    lasted.add(step);
                });
        assertThat(began).hasSize(steps).startsWith(0.0);
        assertThat(began.get(steps - 1)).isCloseTo(minutes - minutes / steps, within(1e-9));
        assertThat(lasted).allSatisfy(s -> assertThat(s).isCloseTo(minutes / steps, within(1e-9)));
    }
}
