package longrun.pressure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import longrun.Samples;
import longrun.capacity.CapacityTables;
import longrun.piping.Piping;
import longrun.sizing.Sizing;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** The plan that documents the format, with the pressures printed there to two decimals. */
class SamplePressureTest {

    private static final Offset<Double> PUBLISHED = within(0.005);

    private final Pressures pressures = Pressures.of(Sizing.of(Piping.of(Samples.sample()), CapacityTables.standard()));

    @Test
    void theTubingLosesWhatIsPrinted() {
        assertThat(pressures.section(1).drop().orElseThrow().inWc()).isCloseTo(0.18, PUBLISHED);
        assertThat(pressures.section(2).drop().orElseThrow().inWc()).isCloseTo(0.07, PUBLISHED);
        assertThat(pressures.section(3).drop().orElseThrow().inWc()).isCloseTo(0.14, PUBLISHED);
    }

    @Test
    void theHeaterGetsEnoughAndTheRangeHasNoLabel() {
        assertThat(pressures.outlet(0).pressure().orElseThrow().inWc()).isCloseTo(10.75, PUBLISHED);
        assertThat(pressures.outlet(0).status()).isEqualTo(InletStatus.ENOUGH);
        assertThat(pressures.outlet(1).pressure().orElseThrow().inWc()).isCloseTo(10.68, PUBLISHED);
        assertThat(pressures.outlet(1).status()).isEqualTo(InletStatus.UNKNOWN);
    }

    @Test
    void tubingHasNoBoreAndSoNeitherVelocityNorVolume() {
        assertThat(pressures.section(1).velocityFtPerS()).isEmpty();
        assertThat(pressures.section(1).insideFt3()).isEmpty();
        assertThat(pressures.section(0).velocityFtPerS()).isPresent();
        // 0.660 in. over 50 ft: 3.1416 / 4 x (0.660 / 12)^2 x 50
        assertThat(pressures.section(0).insideFt3().orElseThrow()).isCloseTo(0.1188, within(0.0001));
    }

    @Test
    void fourFeetOfRiseStandApart() {
        assertThat(pressures.section(1).staticLoss().orElseThrow().inWc()).isCloseTo(0.0292, within(1e-9));
        assertThat(pressures.section(3).staticLoss()).isEmpty();
    }
}
