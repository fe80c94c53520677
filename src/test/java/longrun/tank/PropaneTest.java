package longrun.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import longrun.origin.DataFile;
import longrun.origin.DataRow;
import longrun.quantity.Elevation;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Saturated propane against its own table and, between the rows, against the auxiliary equations for pressure and density of
 * Lemmon, McLinden and Wagner, J. Chem. Eng. Data 54 (2009) 3141 (coefficients held from memory; they give the table's rows
 * to its last digit).
 */
class PropaneTest {

    private static final double PUBLISHED = 0.005; // as the table is printed

    @Test
    void everyRowOfTheTableComesBack() {
        for (DataRow row : DataFile.read("tanks/vapour-pressure.csv").rows()) {
            double t = row.number("temp_f");
            assertThat(Propane.psig(t) + Propane.AIR_PSIA).isCloseTo(row.number("psia"), within(PUBLISHED));
            assertThat(Propane.density(t)).isCloseTo(row.number("density_lb_per_gal"), within(1e-9));
            assertThat(Propane.latent(t)).isCloseTo(row.number("latent_btu_per_lb"), within(1e-9));
            assertThat(Propane.volumeFactor(t)).isCloseTo(row.number("vcf"), within(1e-9));
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {-35, -30, -25, -15, -10, -5, 5, 10, 15, 30, 40, 50, 70, 90, 110})
    void betweenTheRowsPressureIsWithinThreeTenthsOfAPercent(double degF) {
        assertThat(Propane.psig(degF) + Propane.AIR_PSIA).isCloseTo(equationPsia(degF), Percentage.withPercentage(0.3));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-35, -30, -25, -15, -10, -5, 5, 10, 15, 30, 40, 50, 70, 90, 110})
    void betweenTheRowsDensityIsWithinATenthOfAPercent(double degF) {
        assertThat(Propane.density(degF)).isCloseTo(equationDensity(degF), Percentage.withPercentage(0.1));
    }

    @Test
    void temperatureUndoesPressure() {
        for (double t = -60; t <= 130; t += 0.7) {
            assertThat(Propane.degF(Propane.psig(t))).isCloseTo(t, within(1e-9));
        }
    }

    @Test
    void theRulesLeastPressureIsLiquidAtMinusTwenty() {
        assertThat(Propane.degF(VapourRule.LEAST_PSIG)).isCloseTo(-20, within(0.1));
    }

    @Test
    void twentyPsigIsLiquidFiveBelowZero() {
        assertThat(Propane.degF(20)).isCloseTo(-5, within(0.15));
    }

    /** IUPAC, reference equation of state: -43.80 degF at 14.696 psia. The table is straight in 1/T between its rows. */
    @Test
    void propaneBoilsAtMinusFortyFourAtTheSea() {
        assertThat(Propane.degF(0, Propane.AIR_PSIA)).isCloseTo(-43.80, within(0.15));
    }

    /** U.S. Standard Atmosphere, 1976: 14.696, 12.228, 10.107 psia at 0, 5,000 and 10,000 ft (memory). */
    @Test
    void airIsThinnerHigherUp() {
        assertThat(Propane.airPsia(Elevation.ofFeet(0))).isCloseTo(14.696, within(0.001));
        assertThat(Propane.airPsia(Elevation.ofFeet(5000))).isCloseTo(12.228, within(0.005));
        assertThat(Propane.airPsia(Elevation.ofFeet(10_000))).isCloseTo(10.107, within(0.005));
    }

    /** Against the equation itself: the liquid's pressure there is the air's. */
    @ParameterizedTest
    @ValueSource(doubles = {-500, 1450, 5000, 8000, 10_000})
    void gasStopsColderHigherUp(double feet) {
        double air = Propane.airPsia(Elevation.ofFeet(feet));
        assertThat(equationPsia(Propane.degF(0, air))).isCloseTo(air, Percentage.withPercentage(1));
        assertThat(Propane.degF(0, air) < Propane.degF(0)).isEqualTo(feet > 0);
    }

    private static double equationPsia(double degF) {
        double t = (degF + 459.67) / 1.8;
        double q = 1 - t / 369.89;
        return 4.2512e6
                / 6894.757
                * Math.exp(369.89
                        / t
                        * (-6.7722 * q
                                + 1.6938 * Math.pow(q, 1.5)
                                - 1.3341 * Math.pow(q, 2.2)
                                - 3.1876 * Math.pow(q, 4.8)
                                + 0.94937 * Math.pow(q, 6.2)));
    }

    private static double equationDensity(double degF) {
        double q = 1 - (degF + 459.67) / 1.8 / 369.89;
        double molPerM3 = 5000
                * (1
                        + 1.82205 * Math.pow(q, 0.345)
                        + 0.65802 * Math.pow(q, 0.74)
                        + 0.21109 * Math.pow(q, 2.6)
                        + 0.083973 * Math.pow(q, 7.2));
        return molPerM3 * 44.09562e-3 / 0.45359237 * 3.785411784e-3;
    }
}
