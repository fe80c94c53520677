package longrun.pressure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import longrun.piping.Outlet;
import longrun.piping.Piping;
import longrun.sizing.Sizing;
import org.junit.jupiter.api.Test;

/** Each section bears its own counted fittings; along a run they come to the run's allowance. */
class CountedFeetTest {

    @Test
    void theSectionsOfTheLongestRunSumUpToItsAllowance() {
        int counted = 0;
        for (long seed = 3000; seed < 3100; seed++) {
            Sizing sizing = ChainByHandTest.pressures(new RandomHouses(seed, false, "").json)
                    .sizing();
            Piping piping = sizing.piping();
            for (int stage = 0; stage < piping.stages().size(); stage++) {
                Outlet to = sizing.stage(stage).longestRunTo().orElseThrow();
                double sum = 0;
                for (int s = to.section(); s >= 0; s = piping.parent(s)) {
                    double own = sizing.counted(s).orElseThrow().feet();
                    assertThat(own).isNotNegative();
                    sum += own;
                }
                assertThat(sum)
                        .as("seed " + seed)
                        .isCloseTo(sizing.stage(stage).allowance().orElseThrow().feet(), within(1e-9));
                counted += sum > 0 ? 1 : 0;
            }
        }
        assertThat(counted).isGreaterThan(50);
    }

    @Test
    void withoutCountingThereIsNothingOfItsOwn() {
        Sizing none = ChainByHandTest.pressures(new RandomHouses(1, false, "'fittingAllowance':'20 %'").json)
                .sizing();
        for (int s = 0; s < none.piping().sectionCount(); s++) {
            assertThat(none.counted(s).orElseThrow().feet()).isZero();
        }
    }
}
