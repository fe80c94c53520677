package longrun.rules.regulator;

import static org.assertj.core.api.Assertions.assertThat;

import longrun.finding.Finding;
import longrun.rules.Edits;
import longrun.rules.shape.Precedence;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A stage set to 1 psi or more ends at no household burner (IFGC appendix A.1, common practice). */
class ApplianceLinePressureTest {

    private static Finding told(String edit) {
        return new ApplianceLinePressure()
                .judge(Edits.house("whole-house.json", edit))
                .get(0)
                .finding()
                .orElseThrow();
    }

    @Test
    void linePressureIsToldWithTheSectionTheRegulatorItsSettingAndTheLockUp() {
        assertThat(told("/regulators/1/outlet = \"2 psi\"").found())
                .isEqualTo(
                        "The on-demand water heater is fed at line pressure by section B, straight from R2 set to 2 psi"
                                + " (66 in. w.c. with nothing firing); its greatest inlet pressure is not entered");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "none | entered as none, and that is no reading of the plate | maxInlet",
                "14 psi | entered as 14 psi, which no household burner has | maxInlet",
                "14 in w.c. | entered as 14 in w.c. | fedBy"
            })
    void plateThatDoesNotBearItIsTold(String entered, String words, String field) {
        Finding told = told("/regulators/1/outlet = \"10 psi\" & /appliances/0/maxInlet = \"" + entered + "\"");
        assertThat(told.found()).endsWith("; its greatest inlet pressure is " + words);
        assertThat(told.field()).isEqualTo("/appliances/0/" + field);
    }

    @Test
    void regulatorThatLacksComesBeforeItsSize() {
        assertThat(new ApplianceLinePressure().precedence()).isEqualTo(Precedence.MISSING);
    }
}
