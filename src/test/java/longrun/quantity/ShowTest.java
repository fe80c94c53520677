package longrun.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Figures as the trade writes them, and when a figure meets its limit. */
class ShowTest {

    @Test
    void aFigureCarriesTheUnitOfTheTrade() {
        assertThat(Show.btuh(HeatRate.ofBtuh(199_000))).isEqualTo("199,000 Btu/h");
        assertThat(Show.feet(Length.ofFeet(53.245))).isEqualTo("53.2 ft");
        assertThat(Show.rowFeet(Length.ofFeet(30))).isEqualTo("30 ft");
    }

    /** The code's tables name their pressure so: 11.0 in. w.c. and 2.0 psi (2018 IFGC 402.4). */
    @Test
    void aPressureIsToldInInchesUpToOneAndAHalfPsi() {
        assertThat(Show.pressure(Pressure.ofInWc(11))).isEqualTo("11 in. w.c.");
        assertThat(Show.pressure(Pressure.ofPsi(1))).isEqualTo("27.7 in. w.c.");
        assertThat(Show.pressure(Pressure.ofPsi(1.5))).isEqualTo("1.5 psi");
        assertThat(Show.pressure(Pressure.ofPsi(10))).isEqualTo("10 psi");
    }

    @Test
    void zerosThatSayNothingAreLeftOut() {
        assertThat(Show.plain(0)).isEqualTo("0");
        assertThat(Show.plain(0.0004)).isEqualTo("0");
        assertThat(Show.plain(-0.0004)).isEqualTo("0");
        assertThat(Show.plain(12.50)).isEqualTo("12.5");
        assertThat(Show.plain(1200)).isEqualTo("1200");
    }

    /** 36 MJ/h is 10 kW, though the two differ in the last binary digits. */
    @Test
    void whatIsEqualMeetsItsLimitHoweverItWasEntered() {
        double metric = Measure.HEAT_RATE.read("36 MJ/h").btuh();
        double kilowatts = Measure.HEAT_RATE.read("10 kW").btuh();
        assertThat(Same.atLeast(metric, kilowatts) && Same.atLeast(kilowatts, metric))
                .isTrue();
        assertThat(Same.atMost(metric, kilowatts) && Same.atMost(kilowatts, metric))
                .isTrue();
    }

    @Test
    void aLimitForgivesABillionthAndNoMore() {
        assertThat(Same.atLeast(100 - 5e-8, 100)).isTrue();
        assertThat(Same.atLeast(100 - 2e-7, 100)).isFalse();
        assertThat(Same.atMost(100 + 5e-8, 100)).isTrue();
        assertThat(Same.atMost(100 + 2e-7, 100)).isFalse();
        assertThat(Same.atLeast(-100 - 5e-8, -100)).isTrue();
        assertThat(Same.atMost(-100 + 5e-8, -100)).isTrue();
        assertThat(Same.atLeast(0, 0) && Same.atMost(0, 0)).isTrue();
        assertThat(Same.atLeast(Double.NaN, 100) || Same.atMost(Double.NaN, 100))
                .isFalse();
    }
}
