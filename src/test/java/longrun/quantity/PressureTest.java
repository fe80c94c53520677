package longrun.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** A gauge pressure in psi and inches of water, and when it is read in a table made for another. */
class PressureTest {

    /** 2018 IFGC 402.4: 27.7 in. w.c. in a psi. */
    @Test
    void aPsiIsTwentySevenAndSevenTenthsInchesOfWater() {
        assertThat(Pressure.ofInWc(27.7).psi()).isCloseTo(1, within(1e-12));
        assertThat(Pressure.ofInWc(11).psi()).isCloseTo(0.39711, within(1e-5));
        assertThat(Pressure.ofPsi(2).inWc()).isCloseTo(55.4, within(1e-12));
        assertThat(Pressure.ofInWc(11).inWc()).isEqualTo(11);
    }

    @Test
    void whatFallsAlongAPipeComesOffInBothUnits() {
        Pressure left = Pressure.ofInWc(11).minus(Pressure.ofInWc(0.5));
        assertThat(left.inWc()).isCloseTo(10.5, within(1e-12));
        assertThat(left.psi()).isCloseTo(10.5 / 27.7, within(1e-12));
    }

    @Test
    void aPressureUsedUpIsNoneAndNeverBelow() {
        assertThat(Pressure.ofInWc(0.5).minus(Pressure.ofInWc(11)).orNone()).isEqualTo(Pressure.ZERO);
        assertThat(Pressure.ofInWc(0.5).orNone()).isEqualTo(Pressure.ofInWc(0.5));
        assertThat(Pressure.ZERO.orNone()).isEqualTo(Pressure.ZERO);
    }

    @Test
    void pressuresNoGaugeTellsApartAreTheSame() {
        assertThat(Pressure.ofPsi(2).same(Pressure.ofInWc(55.4))).isTrue();
        assertThat(Pressure.ofInWc(11).same(Pressure.ofInWc(11.00009))).isTrue();
        assertThat(Pressure.ofInWc(11).same(Pressure.ofInWc(11.0002))).isFalse();
        assertThat(Pressure.ofInWc(11).same(Pressure.ofInWc(10.9998))).isFalse();
    }

    /** 11 in. w.c. is 2.738 kPa (27.7 in. and 6.894757 kPa a psi), as a label in metric units rounds it: 2.74. */
    @Test
    void aTableIsReadWithinAThousandthOfItsOwnPressure() {
        assertThat(Measure.PRESSURE.read("2.738 kPa").fits(Pressure.ofInWc(11))).isTrue();
        assertThat(Pressure.ofPsi(10.01).fits(Pressure.ofPsi(10))).isTrue();
        assertThat(Pressure.ofPsi(9.99).fits(Pressure.ofPsi(10))).isTrue();
        assertThat(Pressure.ofPsi(10.011).fits(Pressure.ofPsi(10))).isFalse();
        assertThat(Pressure.ofPsi(9.989).fits(Pressure.ofPsi(10))).isFalse();
        assertThat(Pressure.ofInWc(11.02).fits(Pressure.ofInWc(11))).isFalse();
    }

    @Test
    void aTablesGreatestPressureIsPassedByAThousandthAndNoMore() {
        assertThat(Pressure.ofPsi(4).fitsUpTo(Pressure.ofPsi(5))).isTrue();
        assertThat(Pressure.ofPsi(5).fitsUpTo(Pressure.ofPsi(5))).isTrue();
        assertThat(Pressure.ofPsi(5.005).fitsUpTo(Pressure.ofPsi(5))).isTrue();
        assertThat(Pressure.ofPsi(5.01).fitsUpTo(Pressure.ofPsi(5))).isFalse();
    }

    @Test
    void aPressureIsTheSameInWhicheverUnitItWasEntered() {
        assertThat(Pressure.ofPsi(1)).isEqualTo(Pressure.ofInWc(27.7)).hasSameHashCodeAs(Pressure.ofInWc(27.7));
        assertThat(Pressure.ofPsi(1)).isLessThan(Pressure.ofPsi(2)).hasToString("Pressure[psi=1.0]");
    }

    @Test
    void lengthsAddUpAndAreOrdered() {
        Length run = Length.ofFeet(12.5).plus(Length.ofFeet(7.5));
        assertThat(run).isEqualTo(Length.ofFeet(20));
        assertThat(run.minus(Length.ofFeet(8))).isEqualTo(Length.ofFeet(12));
        assertThat(run).isGreaterThan(Length.ofFeet(19.9)).isLessThan(Length.ofFeet(20.1));
    }
}
