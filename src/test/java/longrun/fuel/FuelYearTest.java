package longrun.fuel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import longrun.Samples;
import longrun.hotwater.Altitude;
import longrun.origin.Figure;
import longrun.origin.Months;
import longrun.origin.Origin;
import longrun.plan.Plan;
import longrun.plan.choice.Arrangement;
import longrun.tank.Houses;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/** The orchard house's year, one thing changed at a time. */
class FuelYearTest {

    private static FuelReport orchard() {
        return FuelYear.of(Houses.orchard());
    }

    private static FuelReport changed(String piece, String other) {
        return FuelYear.of(Houses.orchard(piece, other));
    }

    @Test
    void theOrchardHouseBurnsAThousandGallons() {
        assertThat(orchard().annualGal().number()).isCloseTo(1027, Percentage.withPercentage(0.5));
        assertThat(orchard().byUse().keySet()).containsExactly("heating", "hot-water", "range");
        assertThat(orchard().byUse().get("range").number()).isCloseTo(35, within(1e-9));
        assertThat(orchard().byUse().get("hot-water").number()).isCloseTo(106.3, within(0.5));
    }

    @Test
    void aFillLastsFortyDaysInJanuary() {
        assertThat(orchard().daysPerFill().coldestMonth().number()).isBetween(40.0, 41.0);
        assertThat(orchard().daysPerFill().warmestMonth().number()).isGreaterThan(300);
        assertThat(orchard().daysPerFill().mean().number())
                .isCloseTo(250 / (orchard().annualGal().number() / 365), within(1e-9));
    }

    @Test
    void deliveriesAreTheYearOverTheUsable() {
        assertThat(orchard().deliveriesPerYear().number())
                .isCloseTo(orchard().annualGal().number() / 250, within(1e-9));
    }

    @Test
    void theRefillGaugeIsReachedAtTheEndOfNovember() {
        assertThat(orchard().nextRefill()).hasValue(LocalDate.of(2026, 11, 25));
        assertThat(orchard().callBy()).hasValue(LocalDate.of(2026, 11, 18));
    }

    @Test
    void theTruckThatCannotComeInJanuaryLeavesTheTankAtTwentyPercent() {
        LevelYear year = orchard().level().orElseThrow();
        assertThat(year.noTruck()).singleElement().satisfies(n -> {
            assertThat(n.from()).isEqualTo(LocalDate.of(2027, 1, 4));
            assertThat(n.to()).isEqualTo(LocalDate.of(2027, 1, 17));
            assertThat(n.belowRefill()).isTrue();
            assertThat(n.endGal() / 500).isCloseTo(0.20, within(0.02));
        });
        assertThat(year.deliveries()).hasSize(4);
        assertThat(year.deliveries().get(1).date()).isEqualTo(LocalDate.of(2027, 1, 18));
        assertThat(year.dry()).isEmpty();
    }

    @Test
    void theLevelFallsByTheUseAndRisesByTheDeliveries() {
        FuelReport r = orchard();
        LevelYear year = r.level().orElseThrow();
        double delivered =
                year.deliveries().stream().mapToDouble(LevelYear.Drop::gallons).sum();
        assertThat(year.gallons()).hasSize(366);
        assertThat(year.gallons().get(0) + delivered - year.gallons().get(365))
                .isCloseTo(r.annualGal().number(), within(1e-6));
        assertThat(year.gallons()).allMatch(g -> g >= 0 && g <= 400 + 1e-9);
    }

    @Test
    void aColdTankIsNotFilledToEightyPercent() {
        LevelYear year = orchard().level().orElseThrow();
        assertThat(year.gallons().stream().mapToDouble(g -> g).max().orElseThrow())
                .isLessThanOrEqualTo(400);
        LevelYear.Drop january = year.deliveries().get(1);
        int day = (int) (january.date().toEpochDay() - LocalDate.of(2026, 10, 1).toEpochDay());
        assertThat(year.gallons().get(day + 1)).isLessThan(400).isGreaterThan(395);
    }

    @Test
    void monthsSumToTheYearAndDaysToTheMonths() {
        FuelReport r = orchard();
        int day = 0;
        double year = 0;
        for (int m = 0; m < 12; m++) {
            double sum = 0;
            for (int d = 0; d < Months.days(m); d++) {
                sum += r.dailyGal().get(day++);
            }
            assertThat(sum).isCloseTo(r.monthlyGal().get(m), within(1e-9));
            year += sum;
        }
        assertThat(year).isCloseTo(r.annualGal().number(), within(1e-8));
        assertThat(r.byUse().values().stream().mapToDouble(Figure::number).sum())
                .isCloseTo(r.annualGal().number(), within(1e-8));
    }

    @Test
    void heatingIsDegreeDaysToTheBalancePointTimesTheLoss() {
        FuelReport r = orchard();
        double days = new DegreeDays(
                        List.of(29.0, 32.0, 40.0, 50.0, 59.0, 68.0, 72.0, 70.0, 63.0, 52.0, 42.0, 32.0), 62)
                .year();
        assertThat(r.byUse().get("heating").number())
                .isCloseTo(24 * 38000 / 60.0 * days / 0.95 / 91502, Percentage.withPercentage(1e-9));
    }

    @Test
    void colderMoreLoadAndPoorerHeaterEachBurnMore() {
        double base = orchard().annualGal().number();
        assertThat(changed("\"29 degF\"", "\"24 degF\"").annualGal().number()).isGreaterThan(base);
        assertThat(changed("38000", "42000").annualGal().number()).isGreaterThan(base);
        assertThat(changed("\"95 %\"", "\"80 %\"").annualGal().number()).isGreaterThan(base);
        assertThat(changed("\"dailyVolume\": \"55 gal\"", "\"dailyVolume\": \"70 gal\"")
                        .annualGal()
                        .number())
                .isGreaterThan(base);
        assertThat(changed("\"35 gal\"", "\"60 gal\"").annualGal().number()).isCloseTo(base + 25, within(1e-6));
    }

    @Test
    void anEmptierTankIsRefilledSooner() {
        assertThat(changed("\"62 %\"", "\"52 %\"").nextRefill().orElseThrow())
                .isBefore(orchard().nextRefill().orElseThrow());
        assertThat(changed("\"62 %\"", "\"30 %\"").nextRefill()).hasValue(LocalDate.of(2026, 10, 1));
    }

    @Test
    void aColdSpellBurnsMoreAndDrainsSooner() {
        FuelReport.ColdSpell spell = orchard().coldSpell().orElseThrow();
        double expected = (24 * 38000 / 60.0 * 54 / 0.95) / 91502 + 106.26 / 365 + 35 / 365.0;
        assertThat(spell.galPerDay().number()).isCloseTo(expected, Percentage.withPercentage(0.1));
        assertThat(spell.daysPerFill().number())
                .isLessThan(orchard().daysPerFill().coldestMonth().number());
        LevelYear plain = orchard().level().orElseThrow();
        LevelYear cold = spell.level().orElseThrow();
        assertThat(cold.noTruck().get(0).endGal())
                .isLessThan(plain.noTruck().get(0).endGal());
    }

    @Test
    void oneHeatingValueRulesGallonsCostAndCarbon() {
        FuelReport base = orchard();
        FuelReport lower = changed("91502 Btu/gal", "90502 Btu/gal");
        double burnt = base.byUse().get("heating").number();
        assertThat(lower.byUse().get("heating").number()).isCloseTo(burnt * 91502 / 90502, within(1e-6));
        assertThat(base.cost().number()).isCloseTo(2.85 * base.annualGal().number(), within(1e-9));
        assertThat(base.co2Lb().number()).isCloseTo(12.70 * base.annualGal().number(), within(1e-9));
        assertThat(base.doubts().get(0).figure().number())
                .isCloseTo(lower.annualGal().number(), within(1e-9));
    }

    @Test
    void anIncompleteUseMakesTheYearUnknownAndTheOthersStay() {
        FuelReport r = changed("\"designLoad\": \"38000 Btu/h\", ", "");
        assertThat(r.annualGal().isKnown()).isFalse();
        assertThat(r.byUse().get("heating").isKnown()).isFalse();
        assertThat(r.byUse().get("range").number()).isCloseTo(35, within(1e-9));
        assertThat(r.missing()).anyMatch(m -> m.field().equals("/use/heating/0/designLoad"));
        assertThat(r.nextRefill()).isEmpty();
        assertThat(r.dailyGal()).isEmpty();
    }

    @Test
    void aFurnaceWithoutAnEntryIsNotTakenAsUnused() {
        FuelReport r = changed(
                "\"heating\": { \"appliance\": \"furnace\", \"designLoad\": \"38000 Btu/h\", \"efficiency\": \"95 %\","
                        + " \"balanceTemp\": \"62 degF\" },",
                "");
        assertThat(r.annualGal().isKnown()).isFalse();
        assertThat(r.annualGal().missing()).anyMatch(m -> m.field().equals("/use/heating"));
    }

    @Test
    void aRangeOrAGeneratorWithoutAnEntryIsNotTakenAsUnused() {
        FuelReport range = changed("{ \"appliance\": \"range\", \"volumePerYear\": \"35 gal\" }", "");
        assertThat(range.annualGal().isKnown()).isFalse();
        assertThat(range.annualGal().missing()).anyMatch(m -> m.field().equals("/use/others"));
        String gen = "{ \"id\": \"gen\", \"kind\": \"standby-generator\", \"input\": \"180000 Btu/h\" }, { \"id\":"
                + " \"range\"";
        FuelReport generator = changed("{ \"id\": \"range\"", gen);
        assertThat(generator.annualGal().isKnown()).isFalse();
        assertThat(generator.annualGal().missing())
                .anyMatch(m -> m.field().equals("/use/others") && m.words().contains("gen"));
        assertThat(generator.notCounted()).containsExactly("gen");
        FuelReport idle = FuelYear.of(Samples.plan(Houses.ORCHARD
                .replace("{ \"id\": \"range\"", gen)
                .replace("\"others\": [", "\"others\": [ { \"appliance\": \"gen\", \"hoursPerDay\": 0 },")));
        assertThat(idle.annualGal().number()).isEqualTo(orchard().annualGal().number());
    }

    @Test
    void aSecondHeaterWithoutAUseLeavesTheYearOpen() {
        FuelReport water = changed(
                "{ \"id\": \"range\"",
                "{ \"id\": \"attic\", \"kind\": \"on-demand-water-heater\", \"input\": \"120000 Btu/h\" }, { \"id\":"
                        + " \"range\"");
        assertThat(water.annualGal().isKnown()).isFalse();
        assertThat(water.annualGal().missing()).anyMatch(m -> m.words().contains("the on-demand water heater attic"));
        FuelReport heating = FuelYear.of(Samples.plan(Houses.ORCHARD
                .replace("\"appliance\": \"furnace\", ", "")
                .replace(
                        "{ \"id\": \"range\"",
                        "{ \"id\": \"parlour\", \"kind\": \"space-heater\", \"input\": \"30000 Btu/h\""
                                + " }, { \"id\": \"range\"")));
        assertThat(heating.annualGal().isKnown()).isFalse();
        assertThat(heating.annualGal().missing()).anyMatch(m -> m.words().contains("the space heater"));
        assertThat(changed("\"appliance\": \"furnace\", ", "").annualGal().number())
                .as("the only furnace is the one meant")
                .isEqualTo(orchard().annualGal().number());
    }

    @Test
    void hoursADayBurnByTheInput() {
        Plan plan = Samples.plan(Houses.ORCHARD
                .replace(
                        "{ \"id\": \"range\"",
                        "{ \"id\": \"gen\", \"kind\": \"standby-generator\", \"input\": \"183004 Btu/h\" }, {"
                                + " \"id\": \"range\"")
                .replace(
                        "\"others\": [",
                        "\"others\": [ { \"appliance\": \"gen\", \"hoursPerDay\": 2, \"months\": [1, 2],"
                                + " \"load\": \"50 %\" },"));
        FuelReport r = FuelYear.of(plan);
        assertThat(r.byUse().get("gen").number()).isCloseTo(59 * 2 * 2 * 0.5, within(1e-9));
        assertThat(r.generators()).singleElement().satisfies(g -> {
            assertThat(g.galPerHour().number()).isCloseTo(2, within(1e-9));
            assertThat(g.fromRefill().number()).isCloseTo(75, within(1e-9));
            assertThat(g.fromNow().number()).isCloseTo(155, within(1e-9));
        });
    }

    @Test
    void seriesBurnsWhatStorageLacksMinuteByMinute() {
        FuelReport r = FuelYear.of(Samples.sample());
        double alone = r.arrangements().get(Arrangement.ON_DEMAND_ONLY).number();
        double series = r.arrangements().get(Arrangement.SERIES).number();
        assertThat(alone).isCloseTo(106.3, within(0.5));
        assertThat(series).isLessThan(alone);
        assertThat(r.arrangements().get(Arrangement.STORAGE_ONLY).number()).isZero();
        assertThat(r.byUse().get("hot-water").number()).isEqualTo(series);
        assertThat(r.annualGal().isKnown()).isTrue();
        Plan weak = Samples.plan(Samples.text("sample-plan.json").replace("5000 Btu/h", "700 Btu/h"));
        assertThat(FuelYear.of(weak).arrangements().get(Arrangement.SERIES).number())
                .isGreaterThan(series)
                .isLessThan(alone);
    }

    @Test
    void theSamplePlansJanuaryIsItsMostExpensiveMonth() {
        FuelReport r = orchard();
        double january = r.monthlyGal().get(0);
        for (int m = 1; m < 12; m++) {
            assertThat(r.monthlyGal().get(m)).isLessThan(january);
        }
        assertThat(r.degreeDays65().values()).hasSize(12);
    }

    @Test
    void everyNumberSaysWhereItIsFrom() {
        Deque<Origin> open = new ArrayDeque<>(orchard().origins());
        while (!open.isEmpty()) {
            Origin o = open.pop();
            assertThat(o.figure()).isNotBlank();
            assertThat(o.how()).isNotBlank();
            open.addAll(o.inputs());
        }
    }

    @Test
    void withNothingEnteredNothingIsKnownAndNothingIsZero() {
        for (String text : List.of(
                "{\"format\":\"longrun-plan/1\"}",
                "{\"format\":\"longrun-plan/1\",\"tank\":{},\"use\":{},\"site\":{}}",
                "{\"format\":\"longrun-plan/1\",\"site\":{\"monthlyMeanTemp\":null,\"unreachable\":[{}]},\"use\":{\"hotWater\":{\"storage\":{},\"onDemand\":{},\"draws\":[{}]},\"heating\":[{}],\"others\":[{}]},\"deliveries\":[{},{}],\"appliances\":[{\"id\":\"g\",\"kind\":\"standby-generator\"}]}")) {
            Plan plan = Samples.plan(text);
            FuelReport r = FuelYear.of(plan);
            assertThat(r.annualGal().isKnown()).isFalse();
            assertThat(r.annualGal().missing()).isNotEmpty();
            assertThat(r.degreeDays65().isKnown()).isFalse();
            assertThat(r.byUse().values()).noneMatch(Figure::isKnown);
            assertThat(r.arrangements().values()).noneMatch(Figure::isKnown);
            assertThat(r.cost().isKnown()).isFalse();
            assertThat(r.co2Lb().isKnown()).isFalse();
            assertThat(r.deliveriesPerYear().isKnown()).isFalse();
            assertThat(r.nextRefill()).isEmpty();
            assertThat(r.level()).isEmpty();
            Altitude.findings(plan);
        }
    }

    @Test
    void eachEntryLeftOutNeverThrowsAndNeverTurnsTheYearToNothing() {
        String plan = Houses.ORCHARD;
        for (String piece : List.of(
                "\"winterDesignTemp\": \"8 degF\", ",
                "\"waterCapacity\": \"500 gal\", ",
                "\"placement\": \"above-ground\", ",
                "\"gauge\": \"62 %\", ",
                "\"gaugeDate\": \"2026-10-01\", ",
                "\"leadDays\": 7,",
                "\"useTemp\": \"105 degF\", ",
                "\"efficiency\": \"95 %\", ",
                ", \"efficiency\": \"93 %\"",
                "\"arrangement\": \"on-demand-only\", ",
                ", \"volumePerYear\": \"35 gal\"",
                "\"indoorTemp\": \"68 degF\",")) {
            assertThat(plan).contains(piece);
            String without = plan.replace(piece, piece.startsWith("\"leadDays") ? "\"snowDepth\": \"1 ft\"," : "");
            FuelReport r = FuelYear.of(Samples.plan(without));
            assertThat(r.annualGal().value().orElse(1000)).as(piece).isGreaterThan(900);
        }
    }

    private static String demo() {
        return Samples.text("data/demo/orchard-house.json");
    }

    @Test
    void whatTheStorageHeaterTakesFromAHeatedRoomIsHeatedAgain() {
        // by hand: 55 gal from 51 to 105 degF 24,700 Btu a day, standing loss 24 x 4 x some 69 = 6,600; at about 2.45,
        // the
        // COP of 2.5 at 125 degF less what hotter water takes, 31,300 x (1 - 1/2.45) - 6,600 = 12,000 Btu a day; / 0.95
        // /
        // 91,502 = 0.138 gal on each of some 245 days under 62 degF
        FuelReport r = FuelYear.of(Samples.plan(demo()));
        assertThat(r.roomHeatGal().number()).isCloseTo(33.8, within(0.7));
        FuelReport without = FuelYear.of(Samples.plan(
                demo().replace("\"room\": \"heated\"", "\"room\": \"ducted\", \"roomTemp\": \"68 degF\"")));
        assertThat(without.roomHeatGal().number()).isZero();
        assertThat(r.byUse().get("heating").number()
                        - without.byUse().get("heating").number())
                .isCloseTo(r.roomHeatGal().number(), within(1e-9));
        assertThat(r.byUse().get("heating").from()).anyMatch(f -> f.name().contains("storage heater"));
        assertThat(r.monthlyGal().get(6)).isEqualTo(without.monthlyGal().get(6));
        assertThat(r.dailyGal().stream().mapToDouble(d -> d).sum())
                .isCloseTo(r.annualGal().number(), within(1e-6));
        assertThat(r.coldSpell().orElseThrow().galPerDay().number())
                .isGreaterThan(without.coldSpell().orElseThrow().galPerDay().number() + 0.1);
    }

    @Test
    void aStorageHeaterWithoutCopOrRoomLeavesTheYearOpen() {
        FuelReport cop = FuelYear.of(Samples.plan(demo().replace("\"cop\": 2.5, ", "")));
        assertThat(cop.annualGal().isKnown()).isFalse();
        assertThat(cop.annualGal().missing()).anyMatch(m -> m.field().equals("/use/hotWater/storage/cop"));
        FuelReport room =
                FuelYear.of(Samples.plan(demo().replace("\"room\": \"heated\"", "\"roomTemp\": \"68 degF\"")));
        assertThat(room.annualGal().missing()).anyMatch(m -> m.field().equals("/use/hotWater/storage/room"));
    }

    @Test
    void aTankThatWarmsTheRoomIsNoHeating() {
        FuelReport r = FuelYear.of(Samples.plan(demo().replace("\"cop\": 2.5", "\"cop\": 1")));
        assertThat(r.roomHeatGal().number()).isZero();
    }

    @Test
    void datesOfSeveralTanksCountFromTheEarliestReading() {
        String tank = Houses.ORCHARD.substring(
                Houses.ORCHARD.indexOf("\"tank\": {") + 8, Houses.ORCHARD.indexOf("},\n  \"use\"") + 1);
        String later = tank.replace("2026-10-01", "2026-10-20");
        for (String two : List.of(tank + ", " + later, later + ", " + tank)) {
            FuelReport r =
                    FuelYear.of(Samples.plan(Houses.ORCHARD.replace("\"tank\": " + tank, "\"tanks\": [" + two + "]")));
            assertThat(r.level().orElseThrow().from()).isEqualTo(LocalDate.of(2026, 10, 1));
        }
        String undated = tank.replace("\"gaugeDate\": \"2026-10-01\", ", "");
        FuelReport r = FuelYear.of(Samples.plan(
                Houses.ORCHARD.replace("\"tank\": " + tank, "\"tanks\": [" + tank + ", " + undated + "]")));
        assertThat(r.nextRefill()).isEmpty();
        assertThat(r.dateMissing()).anyMatch(m -> m.field().equals("/tanks/1/gaugeDate"));
    }
}
