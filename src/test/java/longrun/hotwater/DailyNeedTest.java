package longrun.hotwater;

import static longrun.hotwater.TwoHeaters.PUMP;
import static longrun.hotwater.TwoHeaters.TANK;
import static longrun.hotwater.TwoHeaters.entry;
import static longrun.hotwater.TwoHeaters.house;
import static longrun.hotwater.TwoHeaters.plan;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import longrun.origin.Missing;
import longrun.plan.Fact;
import longrun.plan.Plan;
import longrun.plan.PlannedHouse;
import longrun.plan.choice.Arrangement;
import longrun.quantity.Temperature;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a day asks for and in which arrangement, the gas it takes, and what a mixing valve needs. */
class DailyNeedTest {

    private static List<String> fields(List<Missing> missing) {
        return missing.stream().map(Missing::field).toList();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "'storage':{}| STORAGE_ONLY",
                "'onDemand':{}| ON_DEMAND_ONLY",
                "'storage':{},'onDemand':{}| ",
                "'comfortTemp':'102 degF'| ",
                "'storage':{},'onDemand':{},'arrangement':'series'| SERIES",
                "'storage':{},'arrangement':'on-demand-only'| ON_DEMAND_ONLY"
            })
    void theArrangementIsAsEnteredElseOfTheOneHeaterThereIs(String entries, Arrangement arrangement) {
        assertThat(DailyNeed.chosen(entry(plan(entries)))).isEqualTo(java.util.Optional.ofNullable(arrangement));
    }

    @Test
    void aTankWithoutPumpOrElementIsNotSaidToBurnNothing() {
        assertThat(fields(DailyNeed.electric(entry(plan("'storage':{" + TANK + "}")))
                        .missing()))
                .containsExactly("/use/hotWater/storage");
        assertThat(DailyNeed.electric(entry(plan())).isKnown()).isFalse();
        assertThat(DailyNeed.electric(entry(plan("'storage':{" + TANK + PUMP + "}")))
                        .values())
                .hasSize(12)
                .containsOnly(0.0);
        assertThat(DailyNeed.electric(entry(plan("'storage':{'element':'4.5 kW'}")))
                        .values())
                .containsOnly(0.0);
    }

    /** k of 78 degF water between the printed rows of 60 and 90 degF: 500.4 and 497.3 (IAPWS-97). */
    @Test
    void theTankMustFeedTheNeededHeatOverTheEfficiency() {
        Plan plan = plan("'onDemand':{'efficiency':'90 %'}");
        double k = 500.4 + 18 * (497.3 - 500.4) / 30;
        assertThat(DailyNeed.withoutStorageBtu(plan, entry(plan)).get(0))
                .isCloseTo(55.0 / 60 * k * 54 / 0.9, within(1e-6));
        Plan storage = plan("'storage':{" + TANK + PUMP + "}");
        assertThat(DailyNeed.withoutStorageBtu(storage, entry(storage)).values())
                .containsOnly(0.0);
        Plan neither = plan();
        assertThat(fields(DailyNeed.withoutStorageBtu(neither, entry(neither)).missing()))
                .containsExactly("/use/hotWater/arrangement");
        Plan efficiency = plan("'onDemand':{}");
        assertThat(fields(DailyNeed.withoutStorageBtu(efficiency, entry(efficiency))
                        .missing()))
                .containsExactly("/use/hotWater/onDemand/efficiency");
    }

    @Test
    void aDaysNeedNamesWhatItLacks() {
        Plan plan = PlannedHouse.empty().set("/use", "{'hotWater':{}}").plan();
        DailyNeed need = DailyNeed.of(plan, entry(plan));
        assertThat(fields(need.heat().missing()))
                .containsExactly(
                        "/site/coldWater/temp",
                        "/site/monthlyMeanTemp",
                        "/use/hotWater/dailyVolume",
                        "/use/hotWater/useTemp");
    }

    /** FSEC-PF-464-15 eq. 14: -4.84 + 18.6 each; a quarter of a person would use less than nothing. */
    @ParameterizedTest
    @CsvSource({"0.25, 0", "1, 13.76", "4, 69.56"})
    void peopleUseMixedWaterByTheirNumber(double people, double gallons) {
        assertThat(DailyNeed.byPeople(people)).isCloseTo(gallons, within(1e-9));
    }

    @Test
    void aSumOfDrawsComesBeforeThePeopleAndAnEnteredVolumeBeforeBoth() {
        String draws = "'draws':[{'lasts':'10 min','flow':'2 gal/min'},{'lasts':'5 min','flow':'3 gal/min'}]";
        PlannedHouse drawn = house(draws).set("/site/people", "4").without("/use/hotWater/dailyVolume");
        assertThat(DailyNeed.of(drawn.plan(), entry(drawn.plan())).daily().number())
                .isCloseTo(35, within(1e-9));
        assertThat(DailyNeed.of(plan(draws), entry(plan(draws))).daily().number())
                .isEqualTo(55);
        PlannedHouse unfinished = house("'draws':[{'lasts':'10 min','flow':'2 gal/min'},{'lasts':'5 min'}]")
                .set("/site/people", "4")
                .without("/use/hotWater/dailyVolume");
        assertThat(DailyNeed.of(unfinished.plan(), entry(unfinished.plan()))
                        .daily()
                        .number())
                .isCloseTo(69.56, within(1e-9));
    }

    /** A difference in degC is none of the scale's 32 degF: 5 degC are 9 degF. */
    @ParameterizedTest
    @CsvSource({"5 degC, 9", "5 c, 9", "9 degF, 9", "' 5 degC ', 9"})
    void aMixingValvesApproachIsADifference(String typed, double degF) {
        Temperature read = typed.strip().toLowerCase(java.util.Locale.ROOT).endsWith("c")
                ? Temperature.ofDegF(41)
                : Temperature.ofDegF(9);
        assertThat(SetPoints.approachF(Fact.known(read, typed))).isCloseTo(degF, within(1e-9));
    }

    /** Memory: a mixing valve needs some 10 degF more than it delivers. */
    @Test
    void withoutAnEntryAMixingValveNeedsTenDegreesMore() {
        assertThat(SetPoints.approachF(Fact.unknown())).isEqualTo(10);
        assertThat(SetPoints.approachF(Fact.none())).isZero();
    }
}
