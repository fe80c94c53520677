package longrun.hotwater;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import longrun.Samples;
import longrun.hotwater.draw.Draw;
import longrun.hotwater.draw.DrawDay;
import longrun.hotwater.draw.DrawEvent;
import longrun.hotwater.draw.DrawPatterns;
import longrun.hotwater.heater.Chain;
import longrun.hotwater.heater.ChainDay;
import longrun.hotwater.heater.DayTally;
import longrun.hotwater.heater.StorageHeater;
import longrun.hotwater.heater.StorageTank;
import longrun.origin.Months;
import longrun.plan.Plan;
import longrun.plan.Use;
import longrun.plan.choice.Arrangement;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The year of three arrangements: heat balances, ladders of one change at a time, a standard test's day. */
class HotWaterYearTest {

    /** A weak heat pump and long showers, so that the on-demand heater works in series too. */
    private static final String HARD = Samples.text("sample-plan.json")
            .replace("\"dailyVolume\": \"55 gal\"", "\"dailyVolume\": \"160 gal\"")
            .replace("\"5000 Btu/h\"", "\"2500 Btu/h\"");

    private static Plan hard(String... changes) {
        String text = HARD;
        for (int i = 0; i < changes.length; i += 2) {
            assertThat(text).contains(changes[i]);
            text = text.replace(changes[i], changes[i + 1]);
        }
        return Samples.plan(text);
    }

    private static HotWaterHouse house(Plan plan) {
        Use.HotWater entry = plan.use().flatMap(Use::hotWater).orElseThrow();
        return HotWaterHouse.of(plan, entry, DailyNeed.of(plan, entry)).orElseThrow();
    }

    private static double gas(Plan plan, Arrangement a) {
        return sum(HotWaterStudy.of(plan).orElseThrow().year(a).gasBtu());
    }

    private static double sum(Months months) {
        double sum = 0;
        for (int m = 0; m < 12; m++) {
            sum += months.get(m) * Months.days(m);
        }
        return sum;
    }

    private static double comfort(Plan plan, Arrangement a) {
        return HotWaterStudy.of(plan).orElseThrow().year(a).comfortMinutes().orElseThrow();
    }

    /** Heat at the fixtures is gallons x k / 60 x (use - cold) wherever comfort is kept. */
    @Test
    void heatAtTheFixturesIsTheSameInEveryArrangementThatKeepsComfort() {
        HotWaterHouse house = house(Samples.sample());
        double byHand = 55 * house.k() / 60 * (105 - 51) * 365;
        for (Arrangement a : Arrangement.values()) {
            YearRun run = YearRun.of(house, a, 1);
            double minutes = run.months().stream()
                    .mapToDouble(YearRun.Month::drawMinutes)
                    .sum();
            assertThat(minutes).isCloseTo(365 * 11, within(1e-6));
            assertThat(run.months().stream()
                            .mapToDouble(YearRun.Month::comfortMinutes)
                            .sum())
                    .isCloseTo(minutes, within(1e-6));
            assertThat(run.months().stream()
                            .mapToDouble(YearRun.Month::fixtureBtu)
                            .sum())
                    .isCloseTo(byHand, Percentage.withPercentage(1e-7));
        }
    }

    @Test
    void onDemandAloneBurnsTheNeededHeatOverItsEfficiency() {
        double byHand = 55 * WaterHeat.k(78) / 60 * 54 * 365 / 0.93;
        assertThat(gas(Samples.sample(), Arrangement.ON_DEMAND_ONLY)).isCloseTo(byHand, within(1.0));
    }

    @Test
    void seriesBurnsLessThanOnDemandAloneAndStorageAloneNothing() {
        double series = gas(hard(), Arrangement.SERIES);
        assertThat(series).isPositive().isLessThan(gas(hard(), Arrangement.ON_DEMAND_ONLY));
        assertThat(gas(hard(), Arrangement.STORAGE_ONLY)).isZero();
    }

    @ParameterizedTest
    @EnumSource(Arrangement.class)
    void halfTheStepChangesTheYearByLessThanHalfAPercent(Arrangement a) {
        HotWaterHouse house = house(hard());
        YearRun whole = YearRun.of(house, a, 1);
        YearRun half = YearRun.of(house, a, 0.5);
        assertThat(half.gasBtu()).isCloseTo(whole.gasBtu(), Percentage.withPercentage(0.5));
        assertThat(electric(half)).isCloseTo(electric(whole), Percentage.withPercentage(0.5));
    }

    private static double electric(YearRun run) {
        return run.months().stream().mapToDouble(YearRun.Month::electricBtu).sum();
    }

    @Test
    void moreLeastFireNeverGivesMoreComfort() {
        double last = Double.POSITIVE_INFINITY;
        for (String least : List.of("0 Btu/h", "8000 Btu/h", "15000 Btu/h", "30000 Btu/h", "60000 Btu/h")) {
            double now = comfort(hard("\"15000 Btu/h\"", "\"" + least + "\""), Arrangement.SERIES);
            assertThat(now).as(least).isLessThanOrEqualTo(last + 1e-6);
            last = now;
        }
    }

    @Test
    void aColderRoomNeverSavesMore() {
        double last = Double.POSITIVE_INFINITY;
        for (String room : List.of("85", "75", "68", "60", "50", "40")) {
            Plan plan = hard("\"room\": \"heated\"", "\"room\": \"unheated\", \"roomTemp\": \"" + room + " degF\"");
            double saved = gas(plan, Arrangement.ON_DEMAND_ONLY) - gas(plan, Arrangement.SERIES);
            assertThat(saved).as(room).isLessThanOrEqualTo(last * (1 + 1e-9));
            last = saved;
        }
    }

    @ParameterizedTest
    @CsvSource({
        "5 gal/min, 3 gal/min", // slower draws
        "\"cop\": 2.5, \"cop\": 3.5"
    })
    void whatChangesNoHeatChangesNoGasOnDemandAlone(String piece, String other) {
        assertThat(gas(hard(piece, other), Arrangement.ON_DEMAND_ONLY))
                .isCloseTo(gas(hard(), Arrangement.ON_DEMAND_ONLY), Percentage.withPercentage(1e-6));
    }

    @Test
    void aBetterCopDrawsLessCurrentAndTakesMoreFromTheRoom() {
        ArrangementYear plain = HotWaterStudy.of(hard()).orElseThrow().year(Arrangement.SERIES);
        ArrangementYear better = HotWaterStudy.of(hard("\"cop\": 2.5", "\"cop\": 3.5"))
                .orElseThrow()
                .year(Arrangement.SERIES);
        assertThat(better.kwh().number()).isCloseTo(plain.kwh().number() * 2.5 / 3.5, Percentage.withPercentage(1e-6));
        assertThat(sum(better.roomBtu())).isGreaterThan(sum(plain.roomBtu()));
        assertThat(sum(better.gasBtu())).isCloseTo(sum(plain.gasBtu()), Percentage.withPercentage(1e-9));
    }

    /** Of heat into and out of the tank through a year nothing is over but what the tank holds more or less. */
    @Test
    void theTanksYearBalances() {
        Plan plan = hard();
        HotWaterHouse house = house(plan);
        YearRun run = YearRun.of(house, Arrangement.STORAGE_ONLY, 1);
        double fixture =
                run.months().stream().mapToDouble(YearRun.Month::fixtureBtu).sum();
        double current = electric(run);
        double room = run.months().stream().mapToDouble(YearRun.Month::roomBtu).sum();
        // heat at the fixtures = current + what the pump took from the air - standing loss
        assertThat(current + room).isCloseTo(fixture, Percentage.withPercentage(0.5));
    }

    /**
     * A day of the US uniform test method, 10 CFR 430 subpart B appendix E (held from memory): inlet 58, delivery 125, room
     * 67.5 degF. Heat delivered is volume x density x heat capacity x 67 degF; energy in less delivered is the standing loss.
     */
    @ParameterizedTest
    @CsvSource({"low, 38", "medium, 55", "high, 84"})
    void aStandardTestsDayBalances(String pattern, double gallons) {
        assertThat(DrawPatterns.volume(pattern)).isCloseTo(gallons, within(1e-9));
        double k = WaterHeat.k((58 + 125) / 2.0);
        StorageTank tank = new StorageTank(
                new StorageHeater(80, 125, 6000, 3.5, 0, 3, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY),
                StorageHeater.NODES,
                k / 60);
        Chain chain = new Chain(tank, null, Double.POSITIVE_INFINITY, k);
        ChainDay days = new ChainDay(chain, tank, 1);
        DrawDay day = DrawDay.of(DrawPatterns.draws(pattern, 200)); // all water through the tank
        double start = tank.heatBtu();
        DayTally tally = new DayTally(k, 0);
        tally.begin(tank, 58);
        days.run(day, 58, 67.5, tally);
        tally.end(tank);
        double delivered = tally.fixtureBtu();
        assertThat(tally.pumpBtu()).isCloseTo(delivered + tally.lossBtu() + tank.heatBtu() - start, within(1e-6));
        assertThat(delivered).isLessThanOrEqualTo(gallons * k / 60 * 67 * (1 + 1e-9));
        assertThat(delivered).isGreaterThan(gallons * k / 60 * 67 * 0.85);
        assertThat(tally.lossBtu()).isBetween(24 * 3 * 35.0, 24 * 3 * 57.5);
    }

    /** Common practice, no source: storage begun at 140 degF and fallen to about 100 is too cool for two showers. */
    @Test
    void storageFallenToAHundredDegreesIsTooCoolForTwoShowers() {
        StorageTank tank = new StorageTank(
                new StorageHeater(80, 140, 5000, 2.5, 0, 4, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY),
                12,
                500 / 60.0);
        tank.fill(100);
        Chain chain = new Chain(tank, null, 120, 500);
        chain.draw(5, 105, 51, 1);
        assertThat(chain.fixtureF()).isLessThan(102);
    }

    /** Common practice, no source: water to fixtures at most 120 degF. */
    @Test
    void behindAMixingValveAt120NoFixtureIsHotter() {
        HotWaterStudy study = HotWaterStudy.of(hard()).orElseThrow();
        assertThat(study.events()).allMatch(e -> e.hottestOutletF() <= 120 && e.hottestF() <= 120);
        HotWaterStudy bare = HotWaterStudy.of(hard("\"mixingValve\": \"120 degF\"", "\"mixingValve\": \"none\""))
                .orElseThrow();
        assertThat(events(bare, Arrangement.STORAGE_ONLY)).allMatch(e -> e.hottestOutletF() > 120);
    }

    @Test
    void setPointsAreTenOverTheValveAndStorageNeverUnder140() {
        HotWaterStudy study = HotWaterStudy.of(hard()).orElseThrow();
        assertThat(study.year(Arrangement.SERIES).setPoints().storageF()).hasValue(140);
        assertThat(study.year(Arrangement.SERIES).setPoints().onDemandF()).hasValue(130);
        assertThat(study.year(Arrangement.STORAGE_ONLY).setPoints().onDemandF()).isEmpty();
        HotWaterStudy celsius = HotWaterStudy.of(hard(
                        "\"mixingValve\": \"120 degF\"",
                        "\"mixingValve\": \"120 degF\", \"mixingValveApproach\": \"5 degC\""))
                .orElseThrow();
        assertThat(celsius.year(Arrangement.ON_DEMAND_ONLY)
                        .setPoints()
                        .onDemandF()
                        .orElseThrow())
                .isCloseTo(129, within(1e-9));
    }

    @Test
    void anEventHasAValueAMinuteAndTellsWhenTheStorageRunsCold() {
        HotWaterStudy study = HotWaterStudy.of(hard("\"20 min\"", "\"60 min\"")).orElseThrow();
        assertThat(study.events()).hasSize(3);
        DrawEvent storage = events(study, Arrangement.STORAGE_ONLY).get(0);
        DrawEvent alone = events(study, Arrangement.ON_DEMAND_ONLY).get(0);
        DrawEvent series = events(study, Arrangement.SERIES).get(0);
        assertThat(storage.fixtureF()).hasSize(60);
        assertThat(storage.minutesComfortable()).isBetween(8.0, 30.0);
        assertThat(storage.fixtureF().get(59)).isLessThan(70);
        assertThat(alone.minutesComfortable()).isCloseTo(60, within(1e-6));
        assertThat(series.gasBtu()).isPositive().isLessThan(alone.gasBtu());
        assertThat(alone.inputBtuh()).allMatch(b -> b > 140_000 && b < 150_000);
        assertThat(storage.inputBtuh()).allMatch(b -> b == 0);
    }

    @Test
    void drawsSetTheShapeAndTheVolumeTheDay() {
        HotWaterHouse house = house(hard());
        assertThat(house.draws().asEntered())
                .singleElement()
                .satisfies(d -> assertThat(d.minutes()).isEqualTo(20));
        assertThat(house.draws().ofTheYear().stream().mapToDouble(Draw::gallons).sum())
                .isCloseTo(160, within(1e-9));
        assertThat(house.draws().ofTheYear().get(0).gpm()).isEqualTo(5);
    }

    @Test
    void withoutDrawsTheNearestTestPatternStandsInAndSaysSo() {
        HotWaterStudy study = HotWaterStudy.of(Samples.plan(withoutDraws(Samples.text("data/demo/orchard-house.json"))))
                .orElseThrow();
        assertThat(study.pattern()).hasValue("medium");
        assertThat(study.standIns()).anyMatch(s -> s.value().contains("10 CFR 430"));
        assertThat(events(study, Arrangement.SERIES)).hasSize(12);
    }

    private static String withoutDraws(String plan) {
        return plan.replaceFirst("(?s),\\s*\"draws\": \\[.*?\\]", "");
    }

    /** FSEC-PF-464-15 eq. 14: -4.84 + 18.6 for each person, gallons a day of mixed water. */
    @Test
    void thePeopleInTheHouseSetTheVolumeWhenNothingIsEntered() {
        Plan plan = Samples.plan(withoutDraws(Samples.text("data/demo/orchard-house.json"))
                .replace(", \"dailyVolume\": \"55 gal\"", ""));
        HotWaterHouse house = house(plan);
        assertThat(house.need().daily().number()).isCloseTo(69.56, within(1e-9));
        assertThat(house.standIns()).anyMatch(s -> s.field().equals("/use/hotWater/dailyVolume"));
    }

    @Test
    void drawsAtOnceAreOneDrawOfTheirSum() {
        DrawDay day = DrawDay.of(List.of(
                new Draw("shower", 1430, 20, 2.5, 105),
                new Draw("basin", 1435, 2, 1, 105),
                new Draw("morning", 420, 5, 2, 100)));
        assertThat(day.slices().stream().mapToDouble(DrawDay.Slice::minutes).sum())
                .isCloseTo(1440, within(1e-9));
        assertThat(day.slices().stream().mapToDouble(s -> s.minutes() * s.gpm()).sum())
                .isCloseTo(62, within(1e-9));
        assertThat(day.slices().get(0).gpm()).as("past midnight").isEqualTo(2.5);
        assertThat(day.slices()).anyMatch(s -> s.gpm() == 3.5);
    }

    @Test
    void aMissingEntryLeavesOnlyWhatNeedsItUnknown() {
        HotWaterStudy volume =
                HotWaterStudy.of(hard("\"volume\": \"80 gal\", ", "")).orElseThrow();
        assertThat(volume.year(Arrangement.SERIES).gasBtu().missing())
                .anyMatch(m -> m.field().equals("/use/hotWater/storage/volume"));
        assertThat(volume.year(Arrangement.ON_DEMAND_ONLY).gasBtu().isKnown()).isTrue();
        HotWaterStudy input =
                HotWaterStudy.of(hard("\"input\": \"180000 Btu/h\", ", "")).orElseThrow();
        assertThat(input.year(Arrangement.SERIES).gasBtu().isKnown()).isTrue();
        assertThat(input.year(Arrangement.SERIES).comfortMinutes()).isEmpty();
        assertThat(events(input, Arrangement.SERIES)).isEmpty();
        assertThat(input.maxFlowGpm().missing()).anyMatch(m -> m.field().endsWith("/input"));
        HotWaterStudy cop = HotWaterStudy.of(hard("\"cop\": 2.5, ", "")).orElseThrow();
        assertThat(cop.year(Arrangement.SERIES).gasBtu().isKnown()).isTrue();
        assertThat(cop.year(Arrangement.SERIES).kwh().isKnown()).isFalse();
    }

    @Test
    void largestFlowsAreFullFireOverTheRise() {
        HotWaterStudy study = HotWaterStudy.of(hard()).orElseThrow();
        assertThat(study.maxFlowGpm().get(0)).isCloseTo(180_000 * 0.93 / (WaterHeat.k(85.5) * 69), within(1e-9));
        assertThat(study.maxFixtureGpm().get(0)).isCloseTo(180_000 * 0.93 / (WaterHeat.k(78) * 54), within(1e-9));
        assertThat(study.maxFlowGpm().how()).contains("set point - cold");
        assertThat(study.maxFixtureGpm().how()).contains("use - cold");
    }

    /** At 5,000 ft the lower of two readings leaves 80 % of the input (NFPA 54 11.1.2). */
    @Test
    void altitudeTakesFromTheLargestFlowUnlessTheLabelCoversIt() {
        String high = "\"elevation\": \"5000 ft\"";
        Plan plan = hard("\"elevation\": \"1450 ft\"", high);
        double low = HotWaterStudy.of(hard()).orElseThrow().maxFlowGpm().get(0);
        assertThat(HotWaterStudy.of(plan).orElseThrow().maxFlowGpm().get(0)).isCloseTo(0.8 * low, within(1e-9));
    }

    private static List<DrawEvent> events(HotWaterStudy study, Arrangement arrangement) {
        return study.events().stream()
                .filter(e -> e.arrangement() == arrangement)
                .toList();
    }
}
