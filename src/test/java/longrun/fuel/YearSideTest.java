package longrun.fuel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import longrun.origin.Missing;
import longrun.plan.choice.Arrangement;
import longrun.tank.Houses;
import org.junit.jupiter.api.Test;

/** What stands beside the gallons of a year: a generator's hours, what was taken for granted, dates, past fills. */
class YearSideTest {

    private static FuelReport changed(String piece, String other) {
        return FuelYear.of(Houses.orchard(piece, other));
    }

    /** 200,000 Btu/h of 91,502 Btu/gal; at half load a generator burns about 0.6 of that (memory). */
    @Test
    void aGeneratorRunsThroughTheTankByItsInput() {
        FuelReport.GeneratorHours g = changed(
                        "{ \"id\": \"range\", ",
                        "{ \"id\": \"gen\", \"kind\": \"standby-generator\", \"input\": \"200000 Btu/h\" }, { \"id\": \"range\", ")
                .generators()
                .get(0);
        double full = 200_000.0 / 91_502;
        assertThat(g.galPerHour().number()).isCloseTo(full, within(1e-9));
        assertThat(g.galPerHourHalf().number()).isCloseTo(0.6 * full, within(1e-9));
        assertThat(g.fromFull().number()).isCloseTo(400 / full, within(1e-9));
        assertThat(g.fromNow().number()).isCloseTo(310 / full, within(1e-9));
        assertThat(g.fromRefill().number()).isCloseTo(150 / full, within(1e-9));
    }

    @Test
    void whatIsTakenForGrantedIsSaidAndOnlyWhereNothingIsEntered() {
        assertThat(FuelYear.of(Houses.orchard()).assumptions()).isEmpty();
        assertThat(changed("\"indoorTemp\": \"68 degF\",", "").assumptions())
                .containsExactly("indoor air 68 degF: none entered");
        assertThat(changed(", \"balanceTemp\": \"62 degF\"", "").assumptions())
                .singleElement()
                .satisfies(a -> assertThat(a).startsWith("balance point 65 degF"));
        String cold = "\"coldWater\": { \"source\": \"well\", \"temp\": \"51 degF\" }, ";
        assertThat(changed(cold, "").assumptions())
                .singleElement()
                .satisfies(a -> assertThat(a).startsWith("cold water by the formula"));
        String noHeating = Houses.ORCHARD.substring(
                Houses.ORCHARD.indexOf("\"heating\": {"), Houses.ORCHARD.indexOf("\"indoorTemp\""));
        assertThat(FuelYear.of(longrun.Samples.plan(
                                Houses.ORCHARD.replace(noHeating, "").replace("\"indoorTemp\": \"68 degF\",", "")))
                        .assumptions())
                .isEmpty();
    }

    @Test
    void aGaugeIsDoubtedOnlyWhereThereIsATank() {
        assertThat(FuelYear.of(Houses.orchard()).doubts())
                .extracting(FuelReport.Doubt::words)
                .anyMatch(w -> w.startsWith("A float gauge"));
        assertThat(changed("\"waterCapacity\": \"500 gal\", ", "").doubts())
                .extracting(FuelReport.Doubt::words)
                .noneMatch(w -> w.startsWith("A float gauge"));
    }

    @Test
    void aHeaterWithoutItsEfficiencyLeavesItsArrangementOpen() {
        assertThat(changed(", \"efficiency\": \"93 %\" }", " }").arrangements().get(Arrangement.ON_DEMAND_ONLY))
                .satisfies(f -> assertThat(f.isKnown()).isFalse())
                .satisfies(f -> assertThat(f.missing()).isNotEmpty());
    }

    @Test
    void theDayToCallNeedsTheSuppliersDaysAndASpellBothItsEnds() {
        assertThat(FuelYear.of(Houses.orchard()).dateMissing()).isEmpty();
        assertThat(changed("\"leadDays\": 7,", "").dateMissing())
                .extracting(Missing::field)
                .containsExactly("/site/leadDays");
        assertThat(changed(", \"to\": \"01-17\"", "").dateMissing())
                .extracting(Missing::field)
                .containsExactly("/site/unreachable/0");
        assertThat(changed("\"from\": \"01-04\", ", "").dateMissing())
                .extracting(Missing::field)
                .containsExactly("/site/unreachable/0");
    }

    @Test
    void oneUseMayBeGreaterAndTheOthersStay() {
        double plain = FuelYear.gallons(Houses.orchard(), OtherYear.PLAIN)
                .orElseThrow()
                .year();
        double heating = FuelYear.of(Houses.orchard()).byUse().get("heating").number();
        assertThat(FuelYear.gallons(Houses.orchard(), OtherYear.timesOf(OtherYear.HEATING, 1.1))
                        .orElseThrow()
                        .year())
                .isCloseTo(plain + 0.1 * heating, within(1e-6));
    }

    @Test
    void twoDifferencesOfAYearHoldBoth() {
        OtherYear both = OtherYear.warmer(2).and(OtherYear.warmer(3));
        assertThat(both.warmerF()).isEqualTo(5);
        assertThat(OtherYear.times(2).and(OtherYear.times(3)).times()).isEqualTo(6);
        assertThat(OtherYear.timesOf("range", 2)
                        .and(OtherYear.timesOf("range", 3))
                        .byUse())
                .isEqualTo(Map.of("range", 6.0));
        assertThat(OtherYear.timesOf("range", 2)
                        .and(OtherYear.timesOf("grill", 3))
                        .byUse())
                .isEqualTo(Map.of("range", 2.0, "grill", 3.0));
    }

    // A tank of 10 gal from which 5 are burnt a day, refilled to 8 at 2 gal.

    private static LevelYear run(double start, double perDay, List<LevelYear.Spell> spells) {
        return LevelYear.run(LocalDate.of(2026, 1, 1), start, 2, t -> 8, d -> perDay, d -> 40, spells);
    }

    private static final LevelYear.Spell ALWAYS = new LevelYear.Spell(MonthDay.of(1, 1), MonthDay.of(12, 31));

    @Test
    void aTankThatNoTruckReachesIsDryOnTheDayItsLastGallonIsBurnt() {
        LevelYear dry = run(10, 5, List.of(ALWAYS));
        assertThat(dry.dry()).contains(LocalDate.of(2026, 1, 2));
        assertThat(dry.deliveries()).isEmpty();
        assertThat(dry.gallons().subList(0, 4)).containsExactly(10.0, 5.0, 0.0, 0.0);
        assertThat(dry.noTruck())
                .singleElement()
                .satisfies(n -> assertThat(n.belowRefill()).isTrue());
        assertThat(run(10, 0, List.of(ALWAYS)).dry()).isEmpty();
    }

    @Test
    void aSpellThatEndsAtTheRefillGaugeIsSaidToReachIt() {
        LevelYear.Spell twoDays = new LevelYear.Spell(MonthDay.of(1, 1), MonthDay.of(1, 2));
        assertThat(run(6, 2, List.of(twoDays)).noTruck().get(0).belowRefill()).isTrue();
        assertThat(run(6.1, 2, List.of(twoDays)).noTruck().get(0).belowRefill()).isFalse();
    }

    @Test
    void theTruckComesOnTheDayTheRefillGaugeIsReached() {
        // 6 less 2 and 2 is 2 on the second day
        assertThat(run(6, 2, List.of()).deliveries().get(0)).isEqualTo(new LevelYear.Drop(LocalDate.of(2026, 1, 2), 6));
        LocalDate from = LocalDate.of(2026, 1, 1);
        assertThat(LevelYear.refillDay(from, 6, 2, d -> 2)).contains(LocalDate.of(2026, 1, 2));
        assertThat(LevelYear.refillDay(from, 2, 2, d -> 2)).contains(from);
        assertThat(LevelYear.refillDay(from, 6, 2, d -> 0)).isEmpty();
        // a fill to no more than what is there is none
        assertThat(LevelYear.run(from, 3, 2, t -> 2, d -> 1, d -> 40, List.of()).deliveries())
                .first()
                .satisfies(d -> assertThat(d.gallons()).isPositive());
    }

    // Past fills.

    private static Calibration fit(double degreeDaysPerDay, Calibration.Ticket... tickets) {
        return Calibration.of(
                List.of(tickets),
                (from, to) -> degreeDaysPerDay * java.time.temporal.ChronoUnit.DAYS.between(from, to),
                (from, to) -> 1);
    }

    private static Calibration.Ticket ticket(String date, double gallons) {
        return new Calibration.Ticket(LocalDate.parse(date), gallons);
    }

    @Test
    void twoTicketsOfOneDayAreOneFillAndOneOfNothingIsNone() {
        Calibration c = fit(
                20,
                ticket("2026-01-01", 100),
                ticket("2026-01-16", 0),
                ticket("2026-01-31", 50),
                ticket("2026-01-31", 30),
                ticket("2026-03-02", 60));
        assertThat(c.intervals()).hasSize(2);
        assertThat(c.intervals().get(0).gallons()).isEqualTo(80);
        assertThat(c.intervals().get(0).days()).isEqualTo(30);
        assertThat(c.intervals().get(0).to()).isEqualTo(LocalDate.of(2026, 1, 31));
        assertThat(c.intervals().get(1).gallons()).isEqualTo(60);
        assertThat(fit(20, ticket("2026-01-01", 10), ticket("2026-01-01", 20)).intervals())
                .isEmpty();
    }

    /** Under 5 degree days a day it is summer, and K says nothing (common practice). */
    @Test
    void summerTellsNoK() {
        Calibration.Ticket[] thirtyDays = {ticket("2026-06-01", 50), ticket("2026-07-01", 30)};
        assertThat(fit(4.9, thirtyDays).kFactor()).isEmpty();
        assertThat(fit(5, thirtyDays).kFactor()).hasValueCloseTo(5.0, within(1e-9));
    }

    @Test
    void fillsThatAllSawTheSameColdTellNoBaseLoad() {
        Calibration c = fit(
                20,
                ticket("2026-01-01", 50),
                ticket("2026-01-31", 50),
                ticket("2026-03-02", 50),
                ticket("2026-04-01", 50));
        assertThat(c.intervals()).hasSize(3);
        assertThat(c.baseGalPerDay()).isEqualTo(OptionalDouble.empty());
        assertThat(c.galPerDegreeDay()).isEqualTo(OptionalDouble.empty());
    }

    /** 0.5 gal a day and 0.1 gal a degree day: 30 days of 10, 20 and 30 degree days. */
    @Test
    void threeFillsThatSawDifferentColdTellThem() {
        Calibration c = Calibration.of(
                List.of(
                        ticket("2026-01-01", 50),
                        ticket("2026-01-31", 45),
                        ticket("2026-03-02", 75),
                        ticket("2026-04-01", 105)),
                (from, to) -> from.getMonthValue() == 3 ? 900 : from.equals(LocalDate.of(2026, 1, 1)) ? 300 : 600,
                (from, to) -> 1);
        assertThat(c.baseGalPerDay()).hasValueCloseTo(0.5, within(1e-9));
        assertThat(c.galPerDegreeDay()).hasValueCloseTo(0.1, within(1e-9));
    }
}
