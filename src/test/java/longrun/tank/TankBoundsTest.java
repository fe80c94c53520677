package longrun.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import longrun.Samples;
import longrun.finding.Finding;
import longrun.origin.Missing;
import longrun.origin.Origin;
import longrun.plan.Plan;
import longrun.plan.choice.Orientation;
import longrun.plan.choice.TankKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What holds of a tank exactly at a bound, and what is said where a figure is lacking. */
class TankBoundsTest {

    private static final String READING = "\"refillAt\": \"30 %\"";

    private static List<Finding> peaks(String json) {
        Plan plan = Samples.plan(json);
        return TankFindings.of(plan, TankStudy.of(plan)).stream()
                .filter(f -> f.rule().equals("tank-vapour-peak"))
                .toList();
    }

    private static Demand everything(Plan plan) {
        return TankStudy.of(plan).demands().get(0);
    }

    /** Filling densities 42 % up to 1,200 gal above ground, 45 % beyond (29 CFR 1910.110; secondary). */
    @ParameterizedTest
    @CsvSource({"0, 42", "500, 42", "1200, 42", "1201, 45"})
    void aTankOfTwelveHundredGallonsIsStillFilledLikeASmallOne(double gallons, double density) {
        assertThat(FillLimit.byWeight(60, gallons, false) * 0.504 * Propane.volumeFactor(60))
                .isCloseTo(density / 100, within(1e-12));
    }

    /** A tank is sold under a capacity within a hundredth of it (common practice). */
    @Test
    void fiveGallonsMoreThanFiveHundredAreStillAFiveHundredGallonTank() {
        assertThat(StandardTanks.find(TankKind.ASME, Orientation.HORIZONTAL, 505))
                .isPresent();
        assertThat(StandardTanks.find(TankKind.ASME, Orientation.HORIZONTAL, 505.01))
                .isEmpty();
        assertThat(StandardTanks.all()).anyMatch(s -> s.waterGal() == 500);
    }

    /** The table is for 100 lb; two pounds either way are the same cylinder (common practice). */
    @ParameterizedTest
    @CsvSource({"98 lb, true", "102 lb, true", "102.1 lb, false", "97.9 lb, false"})
    void aCylinderWithinTwoPoundsOfAHundredHasItsTable(String weight, boolean known) {
        String cylinder = Houses.ORCHARD
                .replace(
                        "\"kind\": \"asme\", \"waterCapacity\": \"500 gal\"",
                        "\"kind\": \"cylinder\", \"propaneWeight\": \"" + weight + "\"")
                .replace(READING, "\"refillAt\": \"40 lb\"")
                .replace("\"62 %\"", "\"70 lb\"");
        assertThat(Container.of(Samples.plan(cylinder)).get(0).body().isPresent())
                .isEqualTo(known);
    }

    @Test
    void whatATankLacksIsAskedOnce() {
        Container tank = Container.of(Houses.orchard("\"waterCapacity\": \"500 gal\", ", ""))
                .get(0);
        assertThat(tank.bodyMissing()).extracting(Missing::field).containsExactly("/tank/waterCapacity");
    }

    @Test
    void aTankWithoutALengthIsNone() {
        Container tank = Container.of(
                        Houses.orchard(READING, READING + ", \"diameter\": \"37 in\", \"length\": \"0 in\""))
                .get(0);
        assertThat(tank.body()).isEmpty();
        assertThat(tank.bodyMissing()).extracting(Missing::words).containsExactly("a diameter and a length above 0 in");
    }

    @Test
    void noMinutesAreToldOfATankWhoseCapacityIsNotKnown() {
        Plan plan =
                Houses.orchard("\"waterCapacity\": \"500 gal\", ", "\"diameter\": \"37 in\", \"length\": \"118 in\", ");
        assertThat(everything(plan).holdMinutes().missing())
                .extracting(Missing::words)
                .containsExactly("the tank's capacity, refill gauge and the winter design temperature");
    }

    @Test
    void noMinutesAreToldOfATankRefilledWhenEmpty() {
        assertThat(everything(Houses.orchard(READING, "\"refillAt\": \"0 %\""))
                        .holdMinutes()
                        .missing())
                .extracting(Missing::words)
                .containsExactly("a refill gauge above 0 %");
    }

    /** The rule gives nothing at 25 degF below zero; the supplier's figure makes no heat come through the wall then. */
    @Test
    void whereTheRuleGivesNothingADrawLivesOnTheLiquidsOwnHeat() {
        Plan plan = Samples.plan(Houses.ORCHARD
                .replace("\"8 degF\"", "\"-25 degF\"")
                .replace(
                        READING, READING + ", \"leastTankPressure\": \"2 psi\", \"vapourCapacity\": \"400000 Btu/h\""));
        Demand all = everything(plan);
        assertThat(all.withoutEnd()).isFalse();
        assertThat(all.holdMinutes().number()).isGreaterThan(0);
        assertThat(VapourRule.atLiquid(0, -20, -40)).isZero();
        assertThat(VapourRule.atLiquid(1000, 8, 8)).isZero();
    }

    /** Less than a twentieth of the liquid is dregs: what happens there is no end of a draw that is held. */
    @Test
    void aDrawIsHeldWithoutEndWhereOnlyTheDregsGrowTooCold() {
        assertThat(coolsAt(0.10).minutesUntil(-20)).isPresent();
        assertThat(coolsAt(0.03).minutesUntil(-20)).isEmpty();
    }

    /** Heat through the wall by the pounds left: it balances a draw of 1 lb/h at -20 degF with that share left. */
    private static LiquidBalance coolsAt(double share) {
        double wall = 175 / 28.0 / share;
        return new LiquidBalance(100, 8, 8, 1, LiquidBalance.HEAT_CAPACITY, lb -> wall * lb / 100, t -> 175);
    }

    @Test
    void liquidHeldAtTheTemperatureOfItsSourceNeverGrowsColder() {
        assertThat(new LiquidBalance(1000, -19.999, -19.999, 1, 0.56, lb -> 1e6, t -> 175).minutesUntil(-20))
                .isEmpty();
    }

    @Test
    void aTankThatCannotBeSuggestedSaysWhatIsLacking() {
        Plan plan = Houses.orchard("\"winterDesignTemp\": \"8 degF\", ", "");
        assertThat(TankStudy.of(plan).smallest()).hasSize(2).allSatisfy(c -> {
            assertThat(c.size()).isEmpty();
            assertThat(c.missing()).extracting(Missing::field).contains("/site/winterDesignTemp");
        });
    }

    @Test
    void theMinutesThatAreKnownHaveAnOriginAndTheOthersNone() {
        for (Plan plan : List.of(Houses.orchard(), Houses.orchard(READING, "\"refillAt\": \"0 %\""))) {
            TankReport report = TankStudy.of(plan);
            long known = report.demands().stream()
                    .filter(d -> d.holdMinutes().isKnown())
                    .count();
            assertThat(report.origins())
                    .extracting(Origin::figure)
                    .filteredOn(f -> f.equals("minutes it can be held"))
                    .hasSize((int) known);
        }
        assertThat(everything(Houses.orchard()).holdMinutes().isKnown()).isTrue();
    }

    @Test
    void ofTheOccasionsTheOneThatAsksForMostIsTold() {
        String occasions = Houses.ORCHARD
                .replace(
                        "{ \"name\": \"winter evening\", \"firing\": [\"heater\", \"range\"] }",
                        "{ \"name\": \"a night\", \"firing\": [\"furnace\"] },"
                                + " { \"name\": \"a morning\", \"firing\": [\"heater\"] }")
                .replace(", \"input\": \"65000 Btu/h\"", "")
                .replace("199000", "1990000");
        assertThat(peaks(occasions))
                .singleElement()
                .satisfies(f -> assertThat(f.found()).startsWith("A morning needs 1,990,000 Btu/h"));
    }

    /** A regulator that asks for 60 psi: liquid at 8 degF stands under it, so nothing can be planned with. */
    @Test
    void aSmallDrawBelowThePressureToPlanWithIsHeldAsLongAsThereIsLiquid() {
        String small = Houses.ORCHARD
                .replace("199000", "1000")
                .replace("60000", "1000")
                .replace("65000", "1000")
                .replace(
                        "\"appliances\": [",
                        "\"regulators\": [ { \"id\": \"R\", \"kind\": \"first-stage\", \"fedBy\": \"tank\","
                                + " \"minInlet\": \"60 psi\" } ], \"appliances\": [");
        assertThat(peaks(small))
                .singleElement()
                .satisfies(f -> assertThat(f.found())
                        .contains("; by the liquid's heat balance it is held as long as there is liquid"));
    }

    /** Liquid in the ground has the ground's temperature, however cold the air (29 CFR 1910.110; secondary). */
    @Test
    void aBuriedTankIsFilledByTheGroundAlsoInTheColdestAir() {
        var fill =
                TankStudy.fillTo(Houses.orchard("above-ground", "underground")).orElseThrow();
        assertThat(fill.applyAsDouble(-95)).isEqualTo(fill.applyAsDouble(48)).isEqualTo(400);
        var above = TankStudy.fillTo(Houses.orchard()).orElseThrow();
        assertThat(above.applyAsDouble(-95)).isLessThan(400);
    }

    /** Only a finding that names its tank itself stands in a list without the tank's name before it. */
    @Test
    void thatGasStopsAltogetherIsSaidOfTheAirAndThatTheTankIsTooColdOfTheTank() {
        assertThat(findingAt("-50 degF").named()).isFalse();
        assertThat(findingAt("-20 degF").named()).isTrue();
    }

    private static Finding findingAt(String cold) {
        Plan plan = Houses.orchard("\"8 degF\"", "\"" + cold + "\"");
        return TankFindings.of(plan, TankStudy.of(plan)).get(0);
    }
}
