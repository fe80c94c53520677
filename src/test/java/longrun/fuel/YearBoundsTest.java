package longrun.fuel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import longrun.Samples;
import longrun.hotwater.HotWaterStudy;
import longrun.origin.Missing;
import longrun.origin.Months;
import longrun.plan.Plan;
import longrun.plan.choice.Arrangement;
import longrun.tank.Houses;
import org.junit.jupiter.api.Test;

/** What holds of a year exactly at a bound, and what is said where nothing is known. */
class YearBoundsTest {

    private static final String DEMO = Samples.text("data/demo/orchard-house.json");

    private static StorageSaving saving(String text, Arrangement a) {
        Plan plan = Samples.plan(text);
        return StorageSaving.of(plan, HotWaterStudy.of(plan).orElseThrow()).stream()
                .filter(s -> s.arrangement() == a)
                .findFirst()
                .orElseThrow();
    }

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
    }

    @Test
    void anArrangementWhoseHeatersAreNotKnownIsUnknownAndNotLeftOut() {
        String text =
                DEMO.replace("\"setTemp\": \"120 degF\", \"efficiency\": \"93 %\",", "\"setTemp\": \"120 degF\",");
        assertThat(text).isNotEqualTo(DEMO);
        assertThat(FuelYear.of(Samples.plan(text)).arrangements().values())
                .doesNotContainNull()
                .anySatisfy(f -> assertThat(f.missing()).isNotEmpty());
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
}
