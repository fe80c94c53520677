package longrun.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import longrun.Samples;
import longrun.origin.Confidence;
import longrun.origin.Figure;
import longrun.origin.Missing;
import longrun.plan.Plan;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/** How long a draw is held, by the heat in the liquid, and the tank that is suggested, entered in its turn. */
class TankHoldTest {

    private static final String GREAT = Houses.ORCHARD.replace("199000", "9875000");

    private static Demand everything(String json) {
        return TankStudy.of(Samples.plan(json)).demands().get(0);
    }

    /**
     * Ten million Btu/h is 464 lb/h (21,548 Btu/lb): so great a draw lives on the liquid's own heat. 150 gal of 91,502 Btu
     * are 637 lb; cooling by 0.56 Btu/(lb.degF) from where they stood to -20 degF, at which the pressure to keep is gone.
     */
    private static double minutes(double fromF) {
        double pounds = 150 * 91_502 / 21_548.0;
        double lbPerHour = 10_000_000 / 21_548.0;
        return 60 * pounds * 0.56 * (fromF + 20) / (lbPerHour * Propane.latent((fromF - 20) / 2));
    }

    @Test
    void aGreatDrawIsHeldByTheHeatOfLiquidAsWarmAsTheAir() {
        assertThat(everything(GREAT).btuh().number()).isEqualTo(10_000_000);
        assertThat(everything(GREAT).holdMinutes().number()).isCloseTo(minutes(8), Percentage.withPercentage(12));
    }

    @Test
    void buriedItIsHeldByTheHeatOfLiquidAsWarmAsTheGround() {
        assertThat(everything(GREAT.replace("above-ground", "underground"))
                        .holdMinutes()
                        .number())
                .isCloseTo(minutes(48), Percentage.withPercentage(20));
    }

    @Test
    void withTanksInAirAndGroundNoMinutesAreTold() {
        String mixed = Houses.ORCHARD
                .replace("\"tank\": {", "\"tanks\": [{")
                .replace(
                        "\"30 %\" },",
                        "\"30 %\" }, { \"kind\": \"asme\", \"waterCapacity\": \"500 gal\", \"orientation\":"
                                + " \"horizontal\", \"placement\": \"underground\", \"gauge\": \"62 %\","
                                + " \"gaugeDate\": \"2026-10-01\", \"refillAt\": \"30 %\" }],");
        assertThat(everything(mixed).holdMinutes().missing()).singleElement().satisfies(m -> {
            assertThat(m.words()).isEqualTo("tanks that are all above ground or all buried");
            assertThat(m.field()).startsWith("/tanks/0");
        });
    }

    @Test
    void withoutAReadingOrATankNoMinutesAreTold() {
        assertThat(everything(Houses.ORCHARD.replace("\"refillAt\": \"30 %\"", "\"vapourCapacity\": \"400000 Btu/h\""))
                        .holdMinutes()
                        .missing())
                .extracting(Missing::words)
                .containsExactly("the tank's capacity, refill gauge and the winter design temperature");
        assertThat(everything(Houses.ORCHARD.replace("\"refillAt\": \"30 %\"", "\"refillAt\": \"0 %\""))
                        .holdMinutes()
                        .isKnown())
                .isFalse();
        String cylinders = Houses.ORCHARD
                .replace(
                        "\"kind\": \"asme\", \"waterCapacity\": \"500 gal\"",
                        "\"kind\": \"cylinder\", \"propaneWeight\": \"100 lb\", \"count\": 4")
                .replace("\"refillAt\": \"30 %\"", "\"refillAt\": \"40 lb\"")
                .replace("\"62 %\"", "\"70 lb\"");
        assertThat(everything(cylinders).holdMinutes().missing())
                .extracting(Missing::words)
                .containsExactly(
                        "a tank whose wall is known: a cylinder's table and a supplier's figure tell no minutes");
    }

    /** In the air and in the ground: the tank that is suggested gives, entered, what was said of it. */
    @Test
    void theSuggestedTankGivesWhatWasSaidOfIt() {
        String light = Houses.ORCHARD
                .replace("199000", "20000")
                .replace("60000", "20000")
                .replace("65000", "5000");
        int found = 0;
        for (TankReport.SizeChoice choice : TankStudy.of(Samples.plan(light)).smallest()) {
            if (choice.size().isEmpty()) {
                continue;
            }
            String entered = light.replace("500 gal", choice.size().get().waterGal() + " gal")
                    .replace("above-ground", choice.underground() ? "underground" : "above-ground");
            assertThat(TankStudy.of(Samples.plan(entered)).plannedBtuh().number())
                    .as("%s", choice)
                    .isCloseTo(choice.capacityBtuh().number(), within(1e-6));
            found++;
        }
        assertThat(found).isEqualTo(2);
    }

    @Test
    void anOccasionWithoutANameIsCalledByItsNumber() {
        assertThat(TankStudy.of(Houses.orchard("\"name\": \"winter evening\", ", ""))
                        .demands())
                .extracting(Demand::name)
                .contains("occasion 1");
    }

    @Test
    void atTheRefillGaugeAndTheDesignTemperatureAMomentIsTheStudysOwn() {
        Plan plan = Houses.orchard();
        TankReport study = TankStudy.of(plan);
        TankMoment moment = TankStudy.at(
                plan,
                Figure.given("gauge", 30, "%", "as read", Confidence.OWN),
                Figure.given("air", 8, "degF", "as read", Confidence.OWN));
        assertThat(moment.vapour().number())
                .isEqualTo(study.capacityAtDesignBtuh().number());
        assertThat(moment.planned().number()).isEqualTo(study.plannedBtuh().number());
        assertThat(TankStudy.design(plan).number()).isEqualTo(8);
    }

    /** Propane's own weight limits a fill by its temperature; buried liquid has the ground's (NFPA 58, secondary). */
    @Test
    void twoTanksAreFilledToTwiceTheGallonsAndABuriedOneByTheGround() {
        double one = TankStudy.fillTo(Houses.orchard()).orElseThrow().applyAsDouble(40);
        assertThat(TankStudy.fillTo(Houses.orchard("\"kind\": \"asme\"", "\"kind\": \"asme\", \"count\": 2"))
                        .orElseThrow()
                        .applyAsDouble(40))
                .isEqualTo(2 * one);
        Plan buried = Houses.orchard("above-ground", "underground");
        assertThat(TankStudy.fillTo(buried).orElseThrow().applyAsDouble(-20))
                .isEqualTo(TankStudy.fillTo(buried).orElseThrow().applyAsDouble(48));
        assertThat(TankStudy.fillTo(Houses.orchard("\"waterCapacity\": \"500 gal\", ", "")))
                .isEmpty();
    }
}
