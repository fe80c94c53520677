package longrun.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import longrun.finding.Finding;
import longrun.origin.Confidence;
import longrun.origin.Figure;
import longrun.plan.Plan;
import longrun.plan.PlannedHouse;
import org.junit.jupiter.api.Test;

/** What a tank's figures lack is named at its entry, with what to enter; a figure that cannot be is none. */
class LackingTest {

    private static List<String> lacking(Plan plan) {
        return TankStudy.of(plan).missing().stream()
                .map(m -> m.field() + ": " + m.words())
                .toList();
    }

    private static Plan orchard(String piece, String other) {
        return Houses.orchard(piece, other);
    }

    @Test
    void aWeightTellsNothingOfATankThatIsGaugedInPercent() {
        assertThat(lacking(orchard("\"refillAt\": \"30 %\"", "\"refillAt\": \"30 lb\"")))
                .contains("/tank/refillAt: percent of the water capacity, as the gauge shows");
    }

    /** 49 CFR 173.304a: a cylinder may hold 42 % of its water's weight in propane (memory); water is 8.337 lb/gal. */
    @Test
    void aCylinderKnownByItsWaterIsReckonedFullByWeight() {
        Plan plan = orchard(
                "{ \"kind\": \"asme\", \"waterCapacity\": \"500 gal\"",
                "{ \"kind\": \"cylinder\", \"waterCapacity\": \"28.6 gal\"");
        assertThat(TankStudy.of(plan).waterGal().number()).isCloseTo(0.42 * 8.337 * 28.6 / 4.24, within(1e-9));
        Plan both = orchard(
                "{ \"kind\": \"asme\", \"waterCapacity\": \"500 gal\"",
                "{ \"kind\": \"cylinder\", \"waterCapacity\": \"28.6 gal\", \"propaneWeight\": \"84.8 lb\"");
        assertThat(TankStudy.of(both).waterGal().number()).isCloseTo(84.8 / 4.24, within(1e-9));
    }

    @Test
    void aTankWithoutAWidthOrBuriedAboveItsOwnMiddleIsNone() {
        String standing = "\"orientation\": \"horizontal\", \"placement\": \"above-ground\"";
        assertThat(lacking(orchard(standing, standing + ", \"diameter\": \"0 in\", \"length\": \"118 in\"")))
                .contains("/tank/diameter: a diameter and a length above 0 in");
        String buried = "\"orientation\": \"horizontal\", \"placement\": \"underground\"";
        String shell = ", \"diameter\": \"36 in\", \"length\": \"118 in\", \"axisDepth\": ";
        assertThat(lacking(orchard(standing, buried + shell + "\"1.5 ft\"")))
                .contains("/tank/axisDepth: a depth of the axis of more than half the diameter, 1.50 ft");
        assertThat(lacking(orchard(standing, buried + shell + "\"1.6 ft\"")))
                .noneMatch(m -> m.startsWith("/tank/axisDepth"));
    }

    @Test
    void aCapacityNoTankIsSoldInAsksForItsMeasures() {
        assertThat(lacking(orchard("\"waterCapacity\": \"500 gal\"", "\"waterCapacity\": \"437 gal\"")))
                .contains("/tank/diameter: diameter of the tank: its capacity is not a standard size");
    }

    @Test
    void monthsOfAUseAreNumbersFromOneToTwelve() {
        String use = "\"volumePerYear\": \"35 gal\"";
        assertThat(lacking(orchard(use, use + ", \"months\": []")))
                .contains("/use/others/0/months: months as numbers from 1 to 12");
        for (String months : List.of("[1]", "[12]", "[1, 12]")) {
            assertThat(lacking(orchard(use, use + ", \"months\": " + months)))
                    .as(months)
                    .noneMatch(m -> m.startsWith("/use/others/0"));
        }
    }

    @Test
    void aUseByTheHourNeedsItsApplianceAndADayOfTwentyFourHours() {
        String use = "\"appliance\": \"range\", \"volumePerYear\": \"35 gal\"";
        assertThat(lacking(orchard(use, "\"appliance\": \"range\"")))
                .contains("/use/others/0/volumePerYear: gallons a year, or hours a day");
        assertThat(OtherUse.of(orchard(use, "\"hoursPerDay\": 2"), 91_502)
                        .get(0)
                        .gallonsPerDay()
                        .missing())
                .singleElement()
                .satisfies(m -> assertThat(m.words()).isEqualTo("which appliance burns it"));
        assertThat(lacking(orchard(use, "\"appliance\": \"range\", \"hoursPerDay\": 2")))
                .noneMatch(m -> m.startsWith("/use/others"));
    }

    /** Twice 65,000 Btu/h for an hour, 91,502 Btu a gallon: 1.42 gal a day. */
    @Test
    void aUseByTheHourBurnsItsInput() {
        String use = "\"appliance\": \"range\", \"volumePerYear\": \"35 gal\"";
        Plan plan = orchard(use, "\"appliance\": \"range\", \"hoursPerDay\": 2, \"load\": \"50 %\"");
        assertThat(OtherUse.of(plan, 91_502).get(0).gallonsPerDay().values().get(0))
                .isCloseTo(65_000.0 / 91_502, within(1e-9));
    }

    @Test
    void withoutATankTheCapacityItselfIsLacking() {
        Plan none = PlannedHouse.empty().plan();
        assertThat(TankStudy.of(none).waterGal().missing()).isNotEmpty();
        assertThat(TankStudy.of(none).waterGal().isKnown()).isFalse();
        assertThat(lacking(none)).isNotEmpty();
    }

    @Test
    void aPlanThatAsksNothingOfATankHasNoFindingOfOne() {
        assertThat(findings(PlannedHouse.empty().plan())).isEmpty();
        assertThat(findings(PlannedHouse.empty()
                        .with("'site':{'winterDesignTemp':'8 degF'}")
                        .plan()))
                .isNotEmpty();
        assertThat(findings(PlannedHouse.empty()
                        .with("'site':{'elevation':'900 ft'}")
                        .plan()))
                .isEmpty();
    }

    private static List<Finding> findings(Plan plan) {
        return TankFindings.of(plan, TankStudy.of(plan));
    }

    /** A day of one degree below the balance point is 24 degree hours: 38,000 / 0.95 / 60 Btu/h for each degF. */
    @Test
    void aDegreeDayBurnsTwentyFourHoursOfADegree() {
        SpaceHeating heating = SpaceHeating.of(Houses.orchard()).get(0);
        Figure days = Figure.given("degree days", 100, "degF d", "", Confidence.COMPUTED);
        assertThat(heating.gasBtu(days, "gas").number()).isCloseTo(24 * 100 * 38_000 / 0.95 / (68 - 8), within(1e-6));
    }

    @Test
    void aSoilAndAWaterHeaterOfTheirOwnAreAskedForByName() {
        Plan two = orchard(
                "{ \"id\": \"range\", \"kind\": \"range\", \"input\": \"65000 Btu/h\" } ]",
                "{ \"id\": \"range\", \"kind\": \"range\", \"input\": \"65000 Btu/h\" },"
                        + " { \"id\": \"second\", \"kind\": \"storage-water-heater\", \"input\": \"40000 Btu/h\" } ]");
        assertThat(UnusedAppliances.ofTheYear(two))
                .singleElement()
                .satisfies(m -> assertThat(m.words())
                        .isEqualTo("how much the storage water heater burns: gallons a year, or hours a day"));
    }

    @Test
    void timeIsToldInMinutesHoursAndDaysAndNeverMoreThanItIs() {
        assertThat(lasts(179.9)).isEqualTo("179 min");
        assertThat(lasts(180)).isEqualTo("3 h");
        assertThat(lasts(239 * 60 + 59)).isEqualTo("239 h");
        assertThat(lasts(240 * 60)).isEqualTo("10 days");
        assertThat(lasts(263 * 60)).isEqualTo("10 days");
        assertThat(lasts(264 * 60)).isEqualTo("11 days");
    }

    private static String lasts(double minutes) {
        Demand d = TankStudy.of(Houses.orchard()).demands().get(0);
        return new Demand(
                        d.name(),
                        d.btuh(),
                        d.status(),
                        Figure.given("held", minutes, "min", "", Confidence.COMPUTED),
                        false,
                        false,
                        List.of())
                .lasts()
                .orElseThrow();
    }

    @Test
    void usesOfTheDesignDayAreAskedForUntilTheyAreEntered() {
        Plan unused = orchard("\"others\": [ { \"appliance\": \"range\", \"volumePerYear\": \"35 gal\" } ],", "");
        assertThat(UnusedAppliances.ofTheYear(unused))
                .singleElement()
                .satisfies(m ->
                        assertThat(m.words()).isEqualTo("how much the range burns: gallons a year, or hours a day"));
        assertThat(UnusedAppliances.ofTheYear(PlannedHouse.empty().plan()))
                .singleElement()
                .satisfies(m -> assertThat(m.field()).isEqualTo("/use"));
        assertThat(UnusedAppliances.ofTheYear(Houses.orchard())).isEmpty();
    }
}
