package longrun.hotwater;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import longrun.Samples;
import longrun.finding.Finding;
import longrun.origin.Missing;
import longrun.plan.Plan;
import longrun.plan.choice.Arrangement;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a study asks, what stands in it, and which arrangement it is about. */
class HotWaterQuestionsTest {

    private static final String SAMPLE = Samples.text("sample-plan.json");

    private static Plan with(String... changes) {
        String text = SAMPLE;
        for (int i = 0; i < changes.length; i += 2) {
            assertThat(text).contains(changes[i]);
            text = text.replace(changes[i], changes[i + 1]);
        }
        return Samples.plan(text);
    }

    private static HotWaterStudy study(String... changes) {
        return HotWaterStudy.of(with(changes)).orElseThrow();
    }

    private static List<String> fields(HotWaterStudy study) {
        return HotWaterQuestions.of(study).stream().map(Finding::field).toList();
    }

    @Test
    void theSampleHouseLeavesNothingToAsk() {
        assertThat(HotWaterQuestions.of(study())).isEmpty();
        assertThat(study().standIns()).isEmpty();
        assertThat(study().pattern()).isEmpty();
    }

    @Test
    void aStartingValueOfTheBurnerIsAskedOnlyWhereABurnerIsAtWork() {
        String activation = "\"activation\": \"0.5 gal/min\", ";
        assertThat(fields(study(activation, ""))).containsExactly("/use/hotWater/onDemand/activation");
        assertThat(fields(study(activation, "", "\"series\"", "\"storage-only\"")))
                .isEmpty();
        String comfort = "\"comfortTemp\": \"102 degF\", ";
        assertThat(fields(study(comfort, "", "\"series\"", "\"storage-only\"")))
                .containsExactly("/use/hotWater/comfortTemp");
    }

    @Test
    void aDrawWithoutALengthIsNotCountedAndSaidSo() {
        HotWaterStudy study = study("\"lasts\": \"20 min\", ", "");
        assertThat(fields(study)).contains("/use/hotWater/draws/0");
        assertThat(HotWaterQuestions.of(study))
                .filteredOn(f -> f.field().equals("/use/hotWater/draws/0"))
                .singleElement()
                .satisfies(f -> {
                    assertThat(f.found()).startsWith("Draw 1 is not counted");
                    assertThat(f.ask().orElseThrow()).startsWith("How long is draw 1");
                    assertThat(f.remedy()).isEqualTo("Enter flow and length of each draw.");
                });
    }

    /** Common practice: three degrees under the use temperature a shower is no longer comfortable. */
    @Test
    void withoutAComfortTemperatureThreeDegreesUnderTheUseStandIn() {
        HotWaterStudy study = study("\"comfortTemp\": \"102 degF\", ", "\"comfortTemp\": \"none\", ");
        assertThat(study.standIns()).isEmpty();
        assertThat(study.evening().orElseThrow().comfortF()).isEqualTo(102);
        HotWaterStudy other = study("\"comfortTemp\": \"102 degF\", ", "\"comfortTemp\": \"95 degF\", ");
        assertThat(other.evening().orElseThrow().comfortF()).isEqualTo(95);
    }

    @Test
    void aVolumeThatStandsInIsToldWithWhereItIsFrom() {
        HotWaterStudy people = study(", \"dailyVolume\": \"55 gal\"", "", "\"lasts\": \"20 min\", ", "");
        assertThat(people.standIns())
                .filteredOn(s -> s.field().equals("/use/hotWater/dailyVolume"))
                .singleElement()
                .satisfies(s -> assertThat(s.value()).contains("69.6 gal").contains("FSEC-PF-464-15"));
        HotWaterStudy draws = study(", \"dailyVolume\": \"55 gal\"", "");
        assertThat(draws.standIns()).isEmpty();
    }

    /** Public health guidance, memory: water between 68 and 122 degF on end lets Legionella multiply. */
    @Test
    void aTankHeldAtAHundredAndTenStandsLukewarmAllYear() {
        HotWaterStudy study = study("\"setTemp\": \"140 degF\"", "\"setTemp\": \"110 degF\"");
        assertThat(study.year(Arrangement.STORAGE_ONLY).lukewarmHours()).isCloseTo(370 * 24, within(1e-6));
        assertThat(study.year(Arrangement.SERIES).lukewarmHours()).isCloseTo(370 * 24, within(1e-6));
        assertThat(study.year(Arrangement.ON_DEMAND_ONLY).lukewarmHours()).isZero();
        assertThat(HotWaterQuestions.of(study)).singleElement().satisfies(f -> {
            assertThat(f.found()).contains("for 365 days on end");
            assertThat(f.field()).isEqualTo("/use/hotWater/storage/elementOn");
        });
        assertThat(HotWaterQuestions.of(study(
                        "\"setTemp\": \"140 degF\"", "\"setTemp\": \"110 degF\"", "\"series\"", "\"on-demand-only\"")))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"120, 140, 130", "135, 145, 145"})
    void storageIsSetNoLowerThanTheValveNeeds(String valve, double storage, double onDemand) {
        SetPoints set = study("\"mixingValve\": \"120 degF\"", "\"mixingValve\": \"" + valve + " degF\"")
                .year(Arrangement.SERIES)
                .setPoints();
        assertThat(set.storageF()).hasValue(storage);
        assertThat(set.onDemandF()).hasValue(onDemand);
    }

    @Test
    void withoutAValveTheBurnerIsSetToTheUseTemperature() {
        HotWaterStudy study = study("\"mixingValve\": \"120 degF\"", "\"mixingValve\": \"none\"");
        assertThat(study.year(Arrangement.SERIES).setPoints().onDemandF()).hasValue(105);
        assertThat(study.year(Arrangement.SERIES).setPoints().storageF()).hasValue(140);
        assertThat(study.year(Arrangement.ON_DEMAND_ONLY).setPoints().storageF())
                .isEmpty();
        assertThat(study.evening().orElseThrow().mixF()).isEmpty();
        assertThat(study().evening().orElseThrow().mixF()).hasValue(120);
    }

    @Test
    void anEveningHasTheCoolestMonthsColdWaterOrWhatItIsPlayedWith() {
        Plan plan = with("\"source\": \"well\", \"temp\": \"51 degF\"", "\"source\": \"mains\"");
        Shower.Evening evening = Shower.TWO_FOR_AN_HOUR.run(plan).orElseThrow();
        double january = HotWaterStudy.of(plan).orElseThrow().cold().get(0);
        assertThat(evening.coldF()).isEqualTo(january);
        assertThat(evening.useF()).isEqualTo(105);
        Shower played = new Shower(60, 5, OptionalDouble.of(120), OptionalDouble.of(40));
        Shower.Evening other = played.run(plan).orElseThrow();
        assertThat(other.coldF()).isEqualTo(40);
        assertThat(other.find(Arrangement.STORAGE_ONLY).orElseThrow().minutesComfortable())
                .isLessThan(evening.find(Arrangement.STORAGE_ONLY).orElseThrow().minutesComfortable());
        assertThat(other.find(Arrangement.STORAGE_ONLY).orElseThrow().hottestOutletF())
                .isLessThanOrEqualTo(120);
        assertThat(evening.find(Arrangement.ON_DEMAND_ONLY).orElseThrow().draw().startMin())
                .isEqualTo(19 * 60);
        assertThat(Shower.TWO_FOR_AN_HOUR.run(Samples.plan("{\"format\":\"longrun-plan/1\"}")))
                .isEmpty();
        assertThat(Shower.TWO_FOR_AN_HOUR.run(with("\"useTemp\": \"105 degF\", \"mix", "\"mix")))
                .isEmpty();
    }

    @Test
    void withoutAnInputABurnersEveningIsNotRunAndStorageAloneIs() {
        Shower.Evening evening =
                study("\"input\": \"180000 Btu/h\", ", "").evening().orElseThrow();
        assertThat(evening.find(Arrangement.SERIES)).isEmpty();
        assertThat(evening.find(Arrangement.STORAGE_ONLY)).isPresent();
        Shower.Evening noTank = study("\"volume\": \"80 gal\", ", "").evening().orElseThrow();
        assertThat(noTank.find(Arrangement.SERIES)).isEmpty();
        assertThat(noTank.find(Arrangement.STORAGE_ONLY)).isEmpty();
        assertThat(noTank.find(Arrangement.ON_DEMAND_ONLY)).isPresent();
    }

    /** One kilowatt-hour carries 3,412.14 Btu. */
    @Test
    void theYearsCurrentIsItsHeatOverThreeThousandFourHundredAndTwelve() {
        ArrangementYear year = study().year(Arrangement.STORAGE_ONLY);
        double btu = 0;
        int[] days = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
        for (int m = 0; m < 12; m++) {
            btu += year.electricBtu().get(m) * days[m];
        }
        assertThat(year.kwh().number()).isPositive().isCloseTo(btu / 3412.14163, within(1e-9));
        assertThat(study("\"cop\": 2.5, ", "")
                        .year(Arrangement.STORAGE_ONLY)
                        .kwh()
                        .missing())
                .extracting(Missing::field)
                .containsExactly("/use/hotWater/storage/cop");
    }

    @Test
    void aYearIsOfTheDaysItHas() {
        ArrangementYear year = study().year(Arrangement.ON_DEMAND_ONLY);
        assertThat(year.drawMinutes().orElseThrow()).isCloseTo(11 * 365, within(1e-6));
        assertThat(year.gasBtu().get(1)).isCloseTo(year.gasBtu().get(0), within(1e-6));
        assertThat(year.hottestF().orElseThrow()).isCloseTo(105, within(1e-6));
        assertThat(year.coldestF().orElseThrow()).isCloseTo(105, within(1e-6));
        assertThat(year.roomBtu().values()).containsOnly(0.0);
        ArrangementYear none = study("\"dailyVolume\": \"55 gal\"", "\"dailyVolume\": \"0 gal\"")
                .year(Arrangement.ON_DEMAND_ONLY);
        assertThat(none.drawMinutes()).hasValue(0);
        assertThat(none.comfortMinutes()).isEmpty();
        assertThat(none.hottestF()).isEmpty();
        assertThat(none.coldestF()).isEmpty();
    }

    @Test
    void aTankOutsideTheHeatedHouseTakesNoneOfItsHeat() {
        assertThat(study("\"room\": \"heated\"", "\"room\": \"unheated\", \"roomTemp\": \"60 degF\"")
                        .year(Arrangement.SERIES)
                        .roomBtu()
                        .values())
                .containsOnly(0.0);
        assertThat(study().year(Arrangement.STORAGE_ONLY).roomBtu().get(0)).isPositive();
        assertThat(study("\"cop\": 2.5, ", "")
                        .year(Arrangement.SERIES)
                        .roomBtu()
                        .isKnown())
                .isFalse();
        assertThat(study("\"volume\": \"80 gal\", ", "")
                        .year(Arrangement.ON_DEMAND_ONLY)
                        .roomBtu()
                        .values())
                .containsOnly(0.0);
        assertThat(study("\"volume\": \"80 gal\", ", "")
                        .year(Arrangement.SERIES)
                        .roomBtu()
                        .isKnown())
                .isFalse();
    }

    @Test
    void theHousesOwnUseIsThatOfItsArrangement() {
        HotWaterStudy series = study();
        assertThat(series.use().chosenBtu())
                .isEqualTo(series.year(Arrangement.SERIES).gasBtu());
        assertThat(series.use().missing()).isEmpty();
        assertThat(series.use().roomHeatBtu())
                .isEqualTo(series.year(Arrangement.SERIES).roomBtu());
        HotWaterStudy alone = study("\"series\"", "\"on-demand-only\"");
        assertThat(alone.use().roomHeatBtu().values()).containsOnly(0.0);
        HotWaterStudy open = study("\"arrangement\": \"series\",", "");
        assertThat(open.chosen()).isEmpty();
        assertThat(open.use().chosenBtu().missing())
                .extracting(Missing::field)
                .containsExactly("/use/hotWater/arrangement");
        assertThat(open.use().roomHeatBtu())
                .isEqualTo(open.year(Arrangement.SERIES).roomBtu());
        assertThat(fields(open)).isEmpty();
    }

    @Test
    void noHeaterWarmsWaterThatComesAsWarmAsItIsWanted() {
        HotWaterStudy study = study("\"temp\": \"51 degF\"", "\"temp\": \"105 degF\"");
        assertThat(study.maxFixtureGpm().missing()).hasSize(1);
        assertThat(study.maxFixtureGpm().missing().get(0).words()).contains("as warm as what is wanted");
        assertThat(study.maxFlowGpm().isKnown()).isTrue();
        assertThat(study("\"temp\": \"51 degF\"", "\"temp\": \"104.9 degF\"")
                        .maxFixtureGpm()
                        .isKnown())
                .isTrue();
    }

    @Test
    void theEventsAreOfTheColdestMonthOfTheSouthToo() {
        assertThat(HotWaterStudy.coldMonth(with())).isZero();
        String months = "\"29 degF\", \"32 degF\", \"40 degF\", \"50 degF\", \"59 degF\", \"68 degF\", \"72 degF\","
                + " \"70 degF\", \"63 degF\", \"52 degF\", \"42 degF\", \"32 degF\"";
        String turned = "\"72 degF\", \"70 degF\", \"63 degF\", \"52 degF\", \"42 degF\", \"32 degF\", \"29 degF\","
                + " \"32 degF\", \"40 degF\", \"50 degF\", \"59 degF\", \"68 degF\"";
        String flat = SAMPLE.replaceAll("\\s+", " ");
        assertThat(flat).contains(months);
        assertThat(HotWaterStudy.coldMonth(Samples.plan(flat.replace(months, turned))))
                .isEqualTo(6);
    }
}
