package longrun.hotwater.heater;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import longrun.hotwater.WaterHeat;
import org.junit.jupiter.api.Test;

/** The chain of heaters, one step at a time, against heat balances by hand. */
class ChainTest {

    private static final double K = 500;
    private static final double NO_VALVE = Double.POSITIVE_INFINITY;

    private static OnDemandHeater burner(double setF, double full, double least, double activation) {
        return new OnDemandHeater(setF, full, least, activation, 0.9);
    }

    private static StorageTank tank(double degF) {
        StorageTank tank = new StorageTank(
                new StorageHeater(80, 140, 0, 1, 0, 0, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY), 12, K / 60);
        tank.fill(degF);
        return tank;
    }

    private static Chain drawn(Chain chain, double gpm, double coldF) {
        chain.draw(gpm, 105, coldF, 1);
        return chain;
    }

    /** Energy balance of mixing: 120 hot, 45 cold, 105 use take 0.800 of hot water. */
    @Test
    void fourFifthsGoThroughTheChain() {
        Chain chain = drawn(new Chain(null, burner(120, 1e9, 0, 0), NO_VALVE, K), 1, 45);
        assertThat(chain.burnerBtuh() / (K * (120 - 45))).isCloseTo(0.800, within(1e-12));
        assertThat(chain.fixtureF()).isCloseTo(105, within(1e-9));
    }

    /** Needed heat is k x flow x (set - inlet). */
    @Test
    void theBurnerGivesTheNeededHeat() {
        Chain chain = drawn(new Chain(null, burner(120, 200_000, 15_000, 0.5), 120, K), 2.5, 50);
        double flow = 2.5 * 55 / 70;
        assertThat(chain.burnerBtuh()).isCloseTo(500 * flow * 70, within(1e-6));
        assertThat(chain.gasBtuh()).isCloseTo(500 * flow * 70 / 0.9, within(1e-6));
        assertThat(chain.keepsGpm()).isEqualTo(2.5);
    }

    @Test
    void overFullFireTheOutletSagsOrTheFlowMustFall() {
        Chain chain = drawn(new Chain(null, burner(120, 100_000, 15_000, 0.5), 120, K), 5, 50);
        assertThat(chain.fixtureF()).isCloseTo(50 + 100_000 / (500 * 5.0), within(1e-9));
        assertThat(chain.keepsGpm()).isCloseTo(100_000 / (500 * 55.0), within(1e-9));
        Chain asked = drawn(new Chain(null, burner(120, 100_000, 15_000, 0.5), 120, K), chain.keepsGpm(), 50);
        assertThat(asked.fixtureF()).isCloseTo(105, within(1e-6));
    }

    @Test
    void withWarmWaterBeforeItASaggingBurnerStillKeepsTheUseTemperature() {
        // 8 gal/min from 50 to 105 need 220,000 Btu/h; with 80 degF from the tank between 100,000 and 120,000 are left
        StorageTank tank = tank(80);
        Chain chain = drawn(new Chain(tank, burner(140, 120_000, 15_000, 0.5), NO_VALVE, K), 8, 50);
        assertThat(chain.fixtureF()).isCloseTo(105, within(1e-6));
        assertThat(chain.burnerBtuh()).isCloseTo(120_000, within(1e-6));
        // (8 x 55 - 240) / 30 = 6.667 gal/min through the chain, 80 + 240 / 6.667
        assertThat(chain.outletF()).isCloseTo(116, within(1e-3));
    }

    @Test
    void underLeastFireItDoesNotFireForComfortAndFiresForScald() {
        Chain chain = drawn(new Chain(tank(100), burner(105, 200_000, 15_000, 0.5), NO_VALVE, K), 2, 50);
        assertThat(chain.fixtureF()).isCloseTo(100, within(1e-9));
        assertThat(chain.burnerBtuh()).isZero();
        assertThat(chain.scaldOutletF()).isCloseTo(100 + 15_000 / (500 * 2.0), within(1e-9));
        assertThat(chain.scaldFixtureF()).isCloseTo(115, within(1e-9));
        assertThat(chain.gasBtuh() * 0.9).as("gas for the needed heat alone").isCloseTo(500 * 2 * 5.0, within(1e-6));
    }

    @Test
    void theMixingValveHoldsWhatLeastFireOverheats() {
        Chain chain = drawn(new Chain(tank(110), burner(120, 200_000, 15_000, 0.5), 120, K), 1, 50);
        assertThat(chain.scaldOutletF()).isEqualTo(120);
        Chain bare = drawn(new Chain(tank(110), burner(120, 200_000, 15_000, 0.5), NO_VALVE, K), 1, 50);
        assertThat(bare.scaldOutletF()).isGreaterThan(140).isLessThanOrEqualTo(OnDemandHeater.OUTLET_LIMIT_F);
    }

    @Test
    void aTrickleUnderTheActivationFlowStaysCold() {
        Chain chain = drawn(new Chain(null, burner(120, 200_000, 0, 0.5), 120, K), 0.5, 50);
        assertThat(chain.fixtureF()).isEqualTo(50);
        assertThat(chain.gasBtuh()).isZero();
        // activation is judged on the chain's flow: 0.5 x 70 / 55 at the fixture starts it
        Chain enough = drawn(new Chain(null, burner(120, 200_000, 0, 0.5), 120, K), 0.5 * 70 / 55 + 1e-9, 50);
        assertThat(enough.fixtureF()).isCloseTo(105, within(1e-9));
    }

    @Test
    void waterHotterThanTheSetPointPassesUnfired() {
        Chain chain = drawn(new Chain(tank(140), burner(120, 200_000, 15_000, 0.5), 120, K), 2.5, 50);
        assertThat(chain.gasBtuh()).isZero();
        assertThat(chain.outletF()).isEqualTo(120);
        assertThat(chain.fixtureF()).isCloseTo(105, within(1e-9));
        assertThat(chain.inletF()).isCloseTo(140, within(1e-6));
    }

    @Test
    void noHeatIsMadeOrLostInAStep() {
        Random random = new Random(5);
        for (int i = 0; i < 3000; i++) {
            double cold = 34 + 40 * random.nextDouble();
            StorageTank tank = random.nextInt(4) == 0 ? null : tank(cold + 100 * random.nextDouble());
            OnDemandHeater burner = random.nextInt(4) == 0
                    ? null
                    : burner(
                            90 + 60 * random.nextDouble(),
                            40_000 + 160_000 * random.nextDouble(),
                            30_000 * random.nextDouble(),
                            random.nextDouble());
            Chain chain = new Chain(tank, burner, random.nextBoolean() ? 120 : NO_VALVE, K);
            double gpm = 0.2 + 8 * random.nextDouble();
            double before = tank == null ? 0 : tank.heatBtu();
            chain.draw(gpm, 105, cold, 1);
            double fixture = K * gpm * (chain.fixtureF() - cold) / 60;
            double fromTank = tank == null ? 0 : before - tank.heatBtu();
            assertThat(fixture)
                    .as("seed 5, step " + i)
                    .isCloseTo(fromTank + chain.burnerBtuh() / 60, within(1e-9 * Math.max(1, before)));
            assertThat(chain.fixtureF()).isLessThanOrEqualTo(105 + 1e-6);
            assertThat(chain.scaldFixtureF()).isGreaterThanOrEqualTo(chain.fixtureF() - 1e-9);
        }
    }

    @Test
    void moreLeastFireNeverGivesAWarmerShower() {
        Random random = new Random(9);
        for (int i = 0; i < 500; i++) {
            double cold = 40 + 20 * random.nextDouble();
            double warm = cold + 80 * random.nextDouble();
            double gpm = 0.5 + 4 * random.nextDouble();
            double last = 1000;
            for (double least = 0; least <= 40_000; least += 5000) {
                double now = drawn(new Chain(tank(warm), burner(120, 150_000, least, 0.5), 120, K), gpm, cold)
                        .fixtureF();
                assertThat(now).as("seed 9, case " + i).isLessThanOrEqualTo(last + 1e-6);
                last = now;
            }
        }
    }

    /** Common practice: a burner of 199,000 Btu/h gives six or seven gallons a minute at a rise of 54 to 63 degF. */
    @Test
    void aLargeBurnerGivesSixOrSevenGallonsAMinute() {
        double out = 199_000 * 0.93;
        assertThat(WaterHeat.gallonsPerHour(out, 51, 105) / 60).isBetween(6.0, 7.0);
        assertThat(WaterHeat.gallonsPerHour(out, 42, 105) / 60).isBetween(5.8, 7.0);
    }

    /** Cold 50, use 82, set 114 degF: half of 2 gal/min goes through the chain and needs 500 x 64 = 32,000 Btu/h. */
    @Test
    void atExactlyFullOrLeastFireTheBurnerKeepsItsSetPoint() {
        for (OnDemandHeater burner : new OnDemandHeater[] {
            burner(114, 32_000, 0, 0.5), burner(114, 200_000, 32_000, 0.5), burner(114, 200_000, 0, 1)
        }) {
            Chain chain = new Chain(null, burner, NO_VALVE, K);
            chain.draw(2, 82, 50, 1);
            assertThat(chain.outletF()).isEqualTo(114);
            assertThat(chain.scaldOutletF()).isEqualTo(114);
            assertThat(chain.burnerBtuh()).isEqualTo(32_000);
            assertThat(chain.fixtureF()).isCloseTo(82, within(1e-9));
        }
    }

    @Test
    void waterAtTheSetPointIsNotFiredAtAll() {
        Chain chain = new Chain(tank(120), burner(120, 200_000, 15_000, 0.5), NO_VALVE, K);
        chain.draw(2.5, 105, 50, 0);
        assertThat(chain.inletF()).isEqualTo(120);
        assertThat(chain.scaldOutletF()).isEqualTo(120);
        assertThat(chain.gasBtuh()).isZero();
    }

    @Test
    void aFixtureThatWantsItsWaterColdTakesNoneThroughTheBurner() {
        Chain chain = new Chain(null, burner(120, 200_000, 15_000, 0), NO_VALVE, K);
        chain.draw(2.5, 50, 50, 1);
        assertThat(chain.fixtureF()).isEqualTo(50);
        assertThat(chain.scaldOutletF()).isEqualTo(50);
        assertThat(chain.gasBtuh()).isZero();
        chain.draw(0, 105, 50, 1);
        assertThat(chain.fixtureF()).isEqualTo(50);
    }
}
