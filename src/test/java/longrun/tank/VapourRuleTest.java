package longrun.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import longrun.origin.DataFile;
import longrun.origin.DataRow;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The rule D x L x K x M, cylinders and fill limits against their published points. */
class VapourRuleTest {

    @Test
    void everyPublishedKComesBackAtItsFill() {
        for (DataRow row : DataFile.read("tanks/vaporisation-factors.csv").rows()) {
            if (row.text("kind").equals("K")) {
                double fill = row.number("key") / 100;
                assertThat(VapourRule.k(VapourRule.wettedShare(fill))).isCloseTo(row.number("value"), within(1e-9));
            }
        }
    }

    @Test
    void everyPublishedMButTheOneAtMinusTwentyLiesOnTheLine() {
        for (DataRow row : DataFile.read("tanks/vaporisation-factors.csv").rows()) {
            if (row.text("kind").equals("M")) {
                double air = row.number("key");
                double printed = air == -20 ? 0 : row.number("value");
                assertThat(VapourRule.m(air)).isCloseTo(printed, within(1e-12));
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"0.6, 0.5504", "0.5, 0.5000", "0.4, 0.4496", "0.3, 0.3964", "0.2, 0.3363", "0.1, 0.2589"})
    void wettedShareOfTheCircumferenceFollowsTheFill(double fill, double wetted) {
        assertThat(VapourRule.wettedShare(fill)).isCloseTo(wetted, within(0.00005));
    }

    /** The area of a circle's segment over that of the circle. */
    @Test
    void segmentOfTheWettedShareHoldsTheFillFromAFilmToTheBrim() {
        double before = 0;
        for (double fill = 1e-6; fill < 1; fill += 0.000_499) {
            double wetted = VapourRule.wettedShare(fill);
            double angle = 2 * Math.PI * wetted;
            assertThat((angle - Math.sin(angle)) / (2 * Math.PI)).isCloseTo(fill, within(1e-14));
            assertThat(wetted).isGreaterThan(before);
            before = wetted;
        }
        assertThat(VapourRule.wettedShare(0)).isZero();
        assertThat(VapourRule.wettedShare(1)).isEqualTo(1);
    }

    @Test
    void aboveTwentyDegreesMIsHeldAsAFloor() {
        assertThat(VapourRule.m(20)).isEqualTo(2.0);
        assertThat(VapourRule.m(60)).isEqualTo(2.0);
    }

    @Test
    void nothingComesAtAndUnderMinusTwenty() {
        assertThat(VapourRule.btuh(37.42, 118, 0.4, -20)).isZero();
        assertThat(VapourRule.atLiquid(1000, -20, -30)).isZero();
        assertThat(VapourRule.atLiquid(1000, -6, -5)).isZero();
    }

    @Test
    void noPressureAskedMakesMoreThanTheRule() {
        assertThat(VapourRule.atLiquid(1000, 10, -40)).isEqualTo(1000);
    }

    @Test
    void kRisesWithTheFillAllTheWay() {
        double before = -1;
        for (double fill = 0; fill <= 0.9; fill += 0.01) {
            double k = VapourRule.k(VapourRule.wettedShare(fill));
            assertThat(k).isGreaterThan(before);
            before = k;
        }
    }

    @Test
    void everyCellOfTheCylinderTableComesBack() {
        DataFile file = DataFile.read("tanks/cylinder-vaporisation.csv");
        for (DataRow row : file.rows()) {
            file.headings().stream()
                    .skip(1)
                    .forEach(t -> assertThat(CylinderTable.btuh(row.number("pounds"), Double.parseDouble(t)))
                            .hasValueCloseTo(row.number(t), within(1e-6)));
        }
    }

    @Test
    void betweenCylinderCellsTheMiddleOfFourIsTheirMean() {
        assertThat(CylinderTable.btuh(70, 10)).hasValueCloseTo((94000 + 137000 + 75000 + 109000) / 4.0, within(1e-6));
    }

    @Test
    void outsideTheCylinderTableNothingIsKnown() {
        assertThat(CylinderTable.btuh(19.9, 20)).isEmpty();
        assertThat(CylinderTable.btuh(100.1, 20)).isEmpty();
        assertThat(CylinderTable.btuh(50, -0.1)).isEmpty();
        assertThat(CylinderTable.btuh(50, 70.1)).isEmpty();
        assertThat(CylinderTable.btuh(Double.NaN, 20)).isEmpty();
    }

    /** Limit by weight at 42 % filling density and gravity 0.504 (29 CFR 1910.110 form), by liquid temperature. */
    @ParameterizedTest
    @CsvSource({"-20, 74.7", "0, 76.5", "20, 78.6", "60, 83.3", "80, 86.2", "100, 89.6"})
    void weightLimitsTheFillByTheLiquidsTemperature(double degF, double percent) {
        assertThat(100 * FillLimit.byWeight(degF, 500, false)).isCloseTo(percent, within(0.05));
        assertThat(FillLimit.share(degF, 500, false)).isEqualTo(Math.min(0.8, FillLimit.byWeight(degF, 500, false)));
    }

    @Test
    void aBuriedTankMayBeFilledFurtherByWeight() {
        assertThat(FillLimit.byWeight(40, 500, true) / FillLimit.byWeight(40, 500, false))
                .isCloseTo(46.0 / 42, Percentage.withPercentage(1e-9));
        assertThat(FillLimit.byWeight(40, 1200, false)).isLessThan(FillLimit.byWeight(40, 1201, false));
    }

    @Test
    void distancesFollowTheCapacity() {
        assertThat(StandardTanks.distances(120, false))
                .hasValueSatisfying(d -> assertThat(d.buildingFt()).isZero());
        assertThat(StandardTanks.distances(125, false))
                .hasValueSatisfying(d -> assertThat(d.buildingFt()).isEqualTo(10));
        assertThat(StandardTanks.distances(500, false))
                .hasValueSatisfying(d -> assertThat(d.buildingFt()).isEqualTo(10));
        assertThat(StandardTanks.distances(1000, false)).hasValueSatisfying(d -> {
            assertThat(d.buildingFt()).isEqualTo(25);
            assertThat(d.aloneFt()).isEqualTo(10);
            assertThat(d.betweenFt()).isEqualTo(3);
        });
        assertThat(StandardTanks.distances(1000, true))
                .hasValueSatisfying(d -> assertThat(d.buildingFt()).isEqualTo(10));
    }
}
