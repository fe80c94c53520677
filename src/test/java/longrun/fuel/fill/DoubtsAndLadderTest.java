package longrun.fuel.fill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import longrun.Samples;
import longrun.fuel.Calibration;
import longrun.fuel.FuelReport;
import longrun.fuel.FuelYear;
import longrun.plan.Plan;
import longrun.tank.TankStudy;
import org.junit.jupiter.api.Test;

/** What is in doubt of a fill and by how much, what past fills leave of it, and each standard tank in its place. */
class DoubtsAndLadderTest {

    private static final String HOUSE = FillStudyTest.HOUSE;

    private static FillReport study(String json) {
        Plan plan = Samples.plan(json);
        return FillStudy.of(plan, TankStudy.of(plan), FuelYear.of(plan));
    }

    private static Doubt doubt(FillReport fill, String field) {
        return fill.narrowing().stream()
                .map(Narrowing::doubt)
                .filter(d -> d.field().equals(field))
                .findFirst()
                .orElseThrow();
    }

    private static TicketFit fit(double scale, double waterGal, double... gallons) {
        List<Calibration.Interval> intervals = new ArrayList<>();
        LocalDate from = LocalDate.of(2026, 1, 1);
        for (double g : gallons) {
            intervals.add(new Calibration.Interval(from, from.plusDays(30), g, 30, 600, 100));
            from = from.plusDays(30);
        }
        OptionalDouble none = OptionalDouble.empty();
        return TicketFit.of(new Calibration(intervals, none, none, OptionalDouble.of(scale), none), waterGal)
                .orElseThrow();
    }

    /** The standard deviation of a sample: fills of 110, 100 and 90 gal where 100 were reckoned spread by a tenth. */
    @Test
    void pastFillsSpreadByTheirStandardDeviation() {
        assertThat(fit(1, 0, 110, 100, 90).spread()).isCloseTo(0.1, within(1e-12));
        assertThat(fit(2, 0, 220, 200, 180).spread()).isCloseTo(0.1, within(1e-12));
        // one fill has no spread of its own; two marks of 1 % of 500 gal (common practice) on 200 gal
        assertThat(fit(1, 0, 200).spread()).isZero();
        assertThat(fit(1, 500, 200).spread()).isCloseTo(Math.sqrt(2) * 5 / 200, within(1e-12));
        assertThat(fit(1, 0, 1).spread()).isZero();
    }

    @Test
    void aScaleOfNothingOrWithoutEndIsNoFit() {
        OptionalDouble none = OptionalDouble.empty();
        for (OptionalDouble scale : List.of(none, OptionalDouble.of(0), OptionalDouble.of(Double.POSITIVE_INFINITY))) {
            assertThat(TicketFit.of(new Calibration(List.of(), none, none, scale, none), 500))
                    .isEqualTo(Optional.empty());
        }
    }

    @Test
    void aShareIsToldInHundredsAndNeverAsNothing() {
        assertThat(Doubts.inHundred(0.1)).isEqualTo("10 in 100");
        assertThat(Doubts.inHundred(0.001)).isEqualTo("1 in 100");
    }

    @Test
    void hoursAreInDoubtByAQuarterEitherWayUnlessThereAreNone() {
        Doubt hours = doubt(study(HOUSE), "/use/others/1/hoursPerDay");
        assertThat(hours.entry())
                .startsWith("the hours of ")
                .contains("fireplace")
                .endsWith(", 25 in 100");
        assertThat(hours.shorter().byUse().get("c")).isEqualTo(1.25);
        assertThat(hours.longer().byUse().get("c")).isEqualTo(0.75);
        assertThat(study(HOUSE.replace("\"hoursPerDay\": 2", "\"hoursPerDay\": 0"))
                        .narrowing())
                .extracting(n -> n.doubt().field())
                .isNotEmpty()
                .doesNotContain("/use/others/1/hoursPerDay");
    }

    /** 65,000 Btu/h for 0.07 h a day are 18 gal a year: of 160 gal a quarter less would last more than ten years. */
    @Test
    void whereNoEndIsInSightAFillInTheColdestMonthStandsForTheDays() {
        String seldom = HOUSE.replace(
                        "\"heating\": [ { \"appliance\": \"a\", \"designLoad\": \"38000 Btu/h\", \"efficiency\": \"95 %\" } ],",
                        "")
                .replace(
                        "{ \"id\": \"a\", \"kind\": \"furnace\", \"name\": \"furnace\", \"input\": \"60000 Btu/h\" },",
                        "")
                .replace(
                        "{ \"id\": \"b\", \"kind\": \"range\", \"name\": \"range\", \"input\": \"65000 Btu/h\" },",
                        "{ \"id\": \"b\", \"kind\": \"range\", \"name\": \"range\", \"input\": \"65000 Btu/h\" }")
                .replace(
                        "{ \"id\": \"c\", \"kind\": \"fireplace\", \"name\": \"fireplace\", \"input\": \"30000 Btu/h\" }",
                        "")
                .replace(
                        "{ \"appliance\": \"b\", \"volumePerYear\": \"35 gal\" }, { \"appliance\": \"c\", \"hoursPerDay\": 2, \"months\": [11, 12, 1, 2] }",
                        "{ \"appliance\": \"b\", \"hoursPerDay\": 0.07 }");
        FillReport fill = study(seldom);
        FillRanges ranges = fill.ranges().orElseThrow();
        assertThat(ranges.days().orElseThrow().high()).isInfinite();
        assertThat(fill.narrowing()).isNotEmpty().allSatisfy(n -> {
            assertThat(n.saved()).isBetween(0.0, ranges.coldest().width());
            assertThat(n.then().high()).isFinite();
        });
    }

    /** A cylinder on a scale is weighed; one with a dial is gauged, and the gauge may be off. */
    @Test
    void onlyAGaugeIsInDoubtAndNoScale() {
        String cylinder = HOUSE.replace(
                        "\"kind\": \"asme\", \"waterCapacity\": \"500 gal\"",
                        "\"kind\": \"cylinder\", \"propaneWeight\": \"420 lb\", \"count\": 2")
                .replace("\"refillAt\": \"30 %\"", "\"refillAt\": \"100 lb\"");
        assertThat(study(cylinder).narrowing())
                .extracting(n -> n.doubt().field())
                .contains("/tank/gauge");
        // a tank in their stead has no weight: it is refilled at 30 %
        assertThat(study(cylinder).ladder())
                .isNotEmpty()
                .allMatch(r -> r.coldestDays().isKnown());
        assertThat(study(cylinder.replace("\"62 %\"", "\"260 lb\"")).narrowing())
                .extracting(n -> n.doubt().field())
                .isNotEmpty()
                .doesNotContain("/tank/gauge");
    }

    @Test
    void theRangesHoldThePlainYearAndLieAboutIt() {
        FuelReport year = FuelYear.of(Samples.plan(HOUSE));
        FillRanges ranges = study(HOUSE).ranges().orElseThrow();
        holds(ranges.coldest(), year.daysPerFill().coldestMonth().number());
        holds(ranges.warmest(), year.daysPerFill().warmestMonth().number());
        holds(ranges.mean(), year.daysPerFill().mean().number());
        holds(ranges.gallons(), year.annualGal().number());
        holds(ranges.fills(), year.deliveriesPerYear().number());
    }

    private static void holds(Range range, double plain) {
        assertThat(plain).isBetween(range.low(), range.high());
        assertThat(range.width()).isBetween(0.01 * plain, plain);
    }

    @Test
    void afterTwoFillsTheWholeYearIsInDoubtByTheirSpread() {
        FillReport fill = study(
                HOUSE.replace(
                        "\"deliveries\": []",
                        "\"deliveries\": [{\"date\":\"2026-01-12\",\"volume\":\"200 gal\"},{\"date\":\"2026-02-24\",\"volume\":\"210 gal\"}]"));
        double spread = fill.fit().orElseThrow().spread();
        assertThat(spread).isPositive();
        Doubt fit = doubt(fill, "/deliveries");
        assertThat(fit.shorter().times()).isCloseTo(1 + spread, within(1e-12));
        assertThat(fit.longer().times()).isCloseTo(1 - spread, within(1e-12));
    }

    @Test
    void whatNarrowsMostStandsFirstWhateverItIs() {
        boolean otherThanGauge = false;
        for (String gauge : List.of("33 %", "62 %", "79 %")) {
            for (String date : List.of("2026-10-01", "2026-01-01", "2026-04-20")) {
                FillReport fill = study(HOUSE.replace("62 %", gauge).replace("2026-10-01", date));
                assertThat(fill.narrowing())
                        .extracting(n -> -n.saved())
                        .as(gauge + " " + date)
                        .isSorted();
                otherThanGauge |= !fill.narrowing().get(0).doubt().field().equals("/tank/gauge");
            }
        }
        assertThat(otherThanGauge).isTrue();
    }

    private static final String FURNACE =
            "\"heating\": [ { \"appliance\": \"a\", \"designLoad\": \"38000 Btu/h\", \"efficiency\": \"95 %\" } ],";
    private static final String MEANS =
            "\"monthlyMeanTemp\": [\"29 degF\", \"32 degF\", \"40 degF\", \"50 degF\", \"59 degF\", \"68 degF\", \"72 degF\", \"70 degF\", \"63 degF\", \"52 degF\", \"42 degF\", \"32 degF\"]";

    @Test
    void withoutAClimateJanuaryStandsForTheColdestMonthAndJulyForTheWarmestAndNoDayIsReckoned() {
        FillReport fill = study(HOUSE.replace(FURNACE, "")
                .replace(
                        "{ \"id\": \"a\", \"kind\": \"furnace\", \"name\": \"furnace\", \"input\": \"60000 Btu/h\" },",
                        "")
                .replace(", \n    " + MEANS, "")
                .replace("\"leadDays\": 7,", "\"leadDays\": 7")
                .replace(MEANS, ""));
        assertThat(fill.coldest()).isZero();
        assertThat(fill.warmest()).isEqualTo(6);
        assertThat(fill.coldestPerDay().missing()).anyMatch(m -> m.field().equals("/site/monthlyMeanTemp"));
        // the southern half of the earth
        FillReport south = study(
                HOUSE.replace(
                        MEANS,
                        "\"monthlyMeanTemp\": [\"72 degF\", \"70 degF\", \"63 degF\", \"52 degF\", \"42 degF\", \"32 degF\", \"29 degF\", \"32 degF\", \"40 degF\", \"50 degF\", \"59 degF\", \"68 degF\"]"));
        assertThat(south.coldest()).isEqualTo(6);
        assertThat(south.warmest()).isZero();
    }

    @Test
    void onlyOneTankStandsOnItsRungAndNeverTwoAlike() {
        assertThat(study(HOUSE).ladder()).filteredOn(Rung::standsThere).hasSize(1);
        assertThat(study(HOUSE.replace("\"kind\": \"asme\"", "\"kind\": \"asme\", \"count\": 1"))
                        .ladder())
                .filteredOn(Rung::standsThere)
                .hasSize(1);
        assertThat(study(HOUSE.replace("\"kind\": \"asme\"", "\"kind\": \"asme\", \"count\": 2"))
                        .ladder())
                .noneMatch(Rung::standsThere);
    }

    /** 80 % less the house's own refill gauge; 30 % where it is a weight or not entered. */
    @Test
    void eachRungIsRefilledAsTheOwnTankIs() {
        FillReport low = study(HOUSE.replace("\"refillAt\": \"30 %\"", "\"refillAt\": \"20 %\""));
        double perDay = low.coldestPerDay().number();
        assertThat(low.ladder().get(3).coldestDays().number()).isCloseTo(0.6 * 500 / perDay, within(1e-9));
        FillReport unset = study(HOUSE.replace(", \"refillAt\": \"30 %\"", ""));
        assertThat(unset.ladder().get(3).coldestDays().number()).isCloseTo(0.5 * 500 / perDay, within(1e-9));
    }

    @Test
    void eachRungLiesAsTheOwnTankDoesAndAboveGroundWhereThatIsOpen() {
        FillReport above = study(HOUSE);
        FillReport open = study(HOUSE.replace("\"placement\": \"above-ground\", ", ""));
        assertThat(open.ladder().get(3).everything().status())
                .isEqualTo(above.ladder().get(3).everything().status());
        String ground = HOUSE.replace("\"leadDays\": 7,", "\"leadDays\": 7, \"groundTemp\": \"48 degF\",");
        FillReport buried = study(ground.replace("above-ground", "underground"));
        assertThat(buried.ladder().get(3).everything())
                .isEqualTo(buried.tank().demands().get(0));
        assertThat(buried.ladder().get(3).everything())
                .isNotEqualTo(study(ground).ladder().get(3).everything());
    }
}
