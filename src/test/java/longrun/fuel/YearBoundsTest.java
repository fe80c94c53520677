package longrun.fuel;

import static longrun.fuel.StorageSavingTest.DEMO;
import static longrun.fuel.StorageSavingTest.saving;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import longrun.Samples;
import longrun.origin.Confidence;
import longrun.origin.Missing;
import longrun.origin.Months;
import longrun.plan.Plan;
import longrun.plan.choice.Arrangement;
import longrun.tank.Houses;
import org.junit.jupiter.api.Test;

/** What holds of a year exactly at a bound, and what is said where nothing is known. */
class YearBoundsTest {

    @Test
    void whatSavesNothingDoesNotPayAndDrawsNoCurrentThatNeedsAPrice() {
        assertThat(saving(DEMO, Arrangement.ON_DEMAND_ONLY).pays()).hasValue(false);
        StorageSaving unpriced = saving(DEMO.replace(", \"pricePerKwh\": 0.14", ""), Arrangement.ON_DEMAND_ONLY);
        assertThat(unpriced.savedMoney().number()).isZero();
        assertThat(unpriced.pays()).hasValue(false);
    }

    @Test
    void currentThatIsNotKnownIsNotTakenForNone() {
        StorageSaving s = saving(DEMO.replace("\"cop\": 2.5, ", ""), Arrangement.SERIES);
        assertThat(s.kwh().isKnown()).isFalse();
        assertThat(s.cost().missing()).extracting(Missing::field).contains("/use/hotWater/storage/cop");
        assertThat(s.cost().from())
                .filteredOn(f -> f.name().equals("price of the current"))
                .singleElement()
                .satisfies(f -> assertThat(f.isKnown()).isFalse());
    }

    @Test
    void hotWaterCostsItsGallonsAndItsCurrent() {
        StorageSaving s = saving(DEMO, Arrangement.SERIES);
        assertThat(s.kwh().number()).isPositive();
        assertThat(s.cost().number())
                .isCloseTo(s.gal().number() * 2.85 + s.kwh().number() * 0.14, within(1e-9));
        StorageSaving alone = saving(DEMO, Arrangement.ON_DEMAND_ONLY);
        assertThat(alone.gal().number()).isPositive();
        assertThat(alone.cost().number()).isCloseTo(alone.gal().number() * 2.85, within(1e-9));
    }

    @Test
    void anArrangementWhoseHeatersAreNotKnownIsUnknownAndNotLeftOut() {
        String text =
                DEMO.replace("\"setTemp\": \"120 degF\", \"efficiency\": \"93 %\",", "\"setTemp\": \"120 degF\",");
        assertThat(text).isNotEqualTo(DEMO);
        assertThat(FuelYear.of(Samples.plan(text)).arrangements().values())
                .doesNotContainNull()
                .anySatisfy(f -> assertThat(f.missing()).isNotEmpty());
        assertThat(FuelYear.of(Samples.plan(text))
                        .arrangements()
                        .get(Arrangement.ON_DEMAND_ONLY)
                        .missing())
                .extracting(Missing::field)
                .containsExactly("/use/hotWater/onDemand/efficiency");
        assertThat(saving(text, Arrangement.ON_DEMAND_ONLY).gal().missing()).isNotEmpty();
        for (String piece : List.of(", \"efficiency\": \"93 %\" }", "\"people\": 4,", "\"dailyVolume\": \"55 gal\",")) {
            Plan plan = Houses.orchard(piece, piece.endsWith("}") ? " }" : "");
            assertThat(FuelYear.of(plan).arrangements().values()).as(piece).doesNotContainNull();
        }
    }

    /** A day at the design temperature also heats what the storage heater takes from its room. */
    @Test
    void inAColdSpellTheRoomOfTheStorageHeaterIsHeatedToo() {
        FuelReport heated = FuelYear.of(Samples.plan(DEMO));
        FuelReport ducted = FuelYear.of(
                Samples.plan(DEMO.replace("\"room\": \"heated\"", "\"room\": \"ducted\", \"roomTemp\": \"68 degF\"")));
        assertThat(heated.coldSpell().orElseThrow().galPerDay().number()
                        - ducted.coldSpell().orElseThrow().galPerDay().number())
                .isCloseTo(
                        januaryDay(heated, ducted, "heating") + januaryDay(heated, ducted, "hot-water"), within(1e-6));
        assertThat(heated.monthlyByUse().get("heating").how())
                .endsWith(", and what the storage heater takes from the house");
        assertThat(ducted.monthlyByUse().get("heating").how()).endsWith("heating value");
        assertThat(ducted.monthlyByUse().get("heating").from())
                .noneMatch(f -> f.name().contains("storage heater"));
    }

    private static double januaryDay(FuelReport a, FuelReport b, String use) {
        Months one = a.monthlyByUse().get(use);
        Months other = b.monthlyByUse().get(use);
        return (one.get(0) - other.get(0)) / Months.days(0);
    }

    @Test
    void theLevelIsLookedAtForTenYearsAndNoDayMore() {
        LocalDate from = LocalDate.of(2026, 1, 1);
        assertThat(LevelYear.refillDay(from, 3650, 0, d -> 1)).contains(from.plusDays(3649));
        assertThat(LevelYear.refillDay(from, 3651, 0, d -> 1)).isEmpty();
    }

    @Test
    void ofTwoTanksTheOneWithoutADateIsNamedByItsNumber() {
        String tank = Houses.ORCHARD.substring(
                Houses.ORCHARD.indexOf("\"tank\": {") + 8, Houses.ORCHARD.indexOf("},\n  \"use\"") + 1);
        String undated = tank.replace("\"gaugeDate\": \"2026-10-01\", ", "");
        FuelReport r = FuelYear.of(Samples.plan(
                Houses.ORCHARD.replace("\"tank\": " + tank, "\"tanks\": [" + tank + ", " + undated + "]")));
        assertThat(r.dateMissing())
                .extracting(Missing::words)
                .contains("the date the gauge of tank 2 was read")
                .doesNotContain("the date the gauge of tank 1 was read");
    }

    /** Thirty days of 600 degree days, six thousandths of a degree day more and less: no two colds, so no base load. */
    @Test
    void fillsThatSawAlmostTheSameColdTellNoBaseLoadEither() {
        List<LocalDate> dates = List.of(
                LocalDate.of(2026, 1, 1),
                LocalDate.of(2026, 1, 31),
                LocalDate.of(2026, 3, 2),
                LocalDate.of(2026, 4, 1));
        Calibration c = Calibration.of(
                List.of(
                        new Calibration.Ticket(dates.get(0), 50),
                        new Calibration.Ticket(dates.get(1), 50),
                        new Calibration.Ticket(dates.get(2), 60),
                        new Calibration.Ticket(dates.get(3), 70)),
                (from, to) -> 600 + 0.006 * dates.indexOf(from),
                (from, to) -> 1);
        assertThat(c.intervals()).hasSize(3);
        assertThat(c.baseGalPerDay()).isEmpty();
        assertThat(c.galPerDegreeDay()).isEmpty();
    }

    @Test
    void aLineOfRemarksInAFileOfDaysIsNoDay() {
        DailyTemperatures t =
                DailyTemperatures.read("days.csv", "# from the airport\ndate,high,low\n2026-01-31,34,18\n");
        assertThat(t.errors()).isEmpty();
        assertThat(t.days()).containsExactly(new DailyTemperatures.Day(LocalDate.of(2026, 1, 31), 34, 18));
    }

    private static final List<Double> MEANS =
            List.of(29.0, 32.0, 40.0, 50.0, 59.0, 68.0, 72.0, 70.0, 63.0, 52.0, 42.0, 32.0);

    /** Erbs and others (1983): the days of a month share its degree days as the formula gives each at its own mean. */
    @Test
    void theDaysOfAMonthShareItsDegreeDaysByTheFormula() {
        DegreeDays days = new DegreeDays(MEANS, 62);
        AirYear air = new AirYear(MEANS);
        double mean = MEANS.stream().mapToDouble(t -> t).average().orElseThrow();
        double swing = Math.sqrt(MEANS.stream()
                .mapToDouble(t -> (t - mean) / 1.8)
                .map(c -> c * c)
                .average()
                .orElseThrow());
        // days 92 and 119 are the second and the last but one of April, whose mean is 50 degF
        double scatter = (1.45 - 0.029 * 10 + 0.0664 * swing) * Math.sqrt(30);
        assertThat(days.day(92) / days.day(118))
                .isCloseTo(share(air.degF(92), scatter) / share(air.degF(118), scatter), within(1e-9));
    }

    private static double share(double meanF, double scatterC) {
        double h = (62 - meanF) / 1.8 / scatterC;
        return h / 2 + Math.log(Math.cosh(1.698 * h)) / 3.396 + 0.2041;
    }

    @Test
    void aFileOfDaysTakesTheColdestAndTheHottestThereIsAndADayOfOneTemperature() {
        assertThat(DailyTemperatures.read("days.csv", "2026-01-01,150,-100\n2026-01-02,30,30\n")
                        .days())
                .hasSize(2);
        assertThat(DailyTemperatures.read("days.csv", "2026-01-01,150.1,-100.1\n")
                        .errors())
                .hasSize(2);
    }

    /** 734 days from the first of March 2027: two years, and of 2029 the last of February and four of March. */
    @Test
    void afterALeapYearTheDaysThatRemainAreThoseOfTheCalendar() {
        double year = 364 * 365 / 2.0;
        assertThat(Calendar.sum(LocalDate.of(2027, 3, 1), LocalDate.of(2029, 3, 4), d -> d))
                .isEqualTo(2 * year + 58 + 59 + 60 + 61);
    }

    private static final String LOAD = "\"designLoad\": \"38000 Btu/h\", ";

    @Test
    void whatTheYearLacksIsAskedOnceAtItsFieldUnlessSomethingElseAsksForIt() {
        Plan plan = Houses.orchard(LOAD, "");
        FuelReport year = FuelYear.of(plan);
        assertThat(YearQuestions.of(plan, year, Set.of())).singleElement().satisfies(f -> {
            assertThat(f.field()).isEqualTo("/use/heating/0/designLoad");
            assertThat(f.at()).isEqualTo("plan");
            assertThat(f.found()).startsWith("The gallons of the year are not known. Still to be entered: ");
        });
        assertThat(YearQuestions.of(plan, year, Set.of("/use/heating/0/designLoad")))
                .isEmpty();
        assertThat(year.missing()).extracting(Missing::field).contains("/use/heating/0/designLoad");
        Plan cold = Houses.orchard("\"winterDesignTemp\": \"8 degF\", ", "");
        assertThat(YearQuestions.of(cold, FuelYear.of(cold), Set.of()))
                .filteredOn(f -> f.field().equals("/site/winterDesignTemp"))
                .singleElement()
                .satisfies(f -> assertThat(f.at()).isEqualTo("site"));
    }

    @Test
    void aPriceThatIsNotEnteredIsLackingToo() {
        assertThat(FuelYear.of(Houses.orchard(", \"pricePerGal\": 2.85", "")).missing())
                .extracting(Missing::field)
                .contains("/use/pricePerGal");
    }

    @Test
    void everyFigureOfAYearHasItsOrigin() {
        Plan generator = Houses.orchard(
                "{ \"id\": \"range\", ",
                "{ \"id\": \"gen\", \"kind\": \"standby-generator\", \"input\": \"200000 Btu/h\" }, { \"id\": \"range\", ");
        FuelReport year = FuelYear.of(generator);
        assertThat(year.origins())
                .contains(year.monthlyByUse().get("heating").origin())
                .contains(year.arrangements().get(Arrangement.SERIES).origin())
                .contains(year.generators().get(0).galPerHour().origin())
                .contains(year.generators().get(0).fromRefill().origin());
        FuelReport heated = FuelYear.of(Samples.plan(DEMO));
        assertThat(heated.origins()).contains(heated.roomHeatGal().origin());
    }

    @Test
    void whatTheRoomTakesIsUnknownWhereTheHeatingIs() {
        FuelReport lacking = FuelYear.of(Houses.orchard(LOAD, ""));
        assertThat(lacking.roomHeatGal().isKnown()).isFalse();
        assertThat(lacking.origins()).doesNotContain(lacking.roomHeatGal().origin());
        assertThat(FuelYear.of(Houses.orchard()).roomHeatGal().number()).isZero();
        String heating = Houses.ORCHARD.substring(
                Houses.ORCHARD.indexOf("\"heating\": {"), Houses.ORCHARD.indexOf("\"indoorTemp\""));
        assertThat(FuelYear.of(Houses.orchard(heating, "")).roomHeatGal().number())
                .isZero();
    }

    @Test
    void aRoomIsHeatedByAHeaterThatIsKnown() {
        Months none = Months.known(
                "taken", Collections.nCopies(12, 0.0), "Btu/day", "no storage", Confidence.COMPUTED, List.of());
        Months some = Months.known(
                "taken", Collections.nCopies(12, 9000.0), "Btu/day", "storage", Confidence.COMPUTED, List.of());
        Months unknown = Months.unknown("taken", "Btu/day", List.of(new Missing("/use/hotWater", "the storage")));
        Plan lacking = Houses.orchard(LOAD, "");
        assertThat(RoomGallons.of(lacking, none).number()).isZero();
        assertThat(RoomGallons.of(lacking, some).missing())
                .extracting(Missing::field)
                .containsExactly("/use/heating/0/designLoad");
        assertThat(RoomGallons.of(Houses.orchard(), unknown).isKnown()).isFalse();
        assertThat(RoomGallons.of(Houses.orchard(), unknown).missing())
                .extracting(Missing::field)
                .containsExactly("/use/hotWater");
        assertThat(RoomGallons.of(Houses.orchard(), some).number()).isPositive();
    }

    /** Degree days are published to a base of 65 degF. */
    @Test
    void pastFillsAreHeldAgainstDegreeDaysToSixtyFive() {
        Plan plan = Houses.orchard(
                "\"use\": {",
                "\"deliveries\": [ {\"date\":\"2026-01-01\",\"volume\":\"200 gal\"},"
                        + " {\"date\":\"2026-02-01\",\"volume\":\"210 gal\"} ], \"use\": {");
        Calibration c = FuelYear.of(plan).calibration().orElseThrow();
        assertThat(c.intervals().get(0).degreeDays()).isCloseTo(new DegreeDays(MEANS, 65).month(0), within(1e-6));
    }
}
