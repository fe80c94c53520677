package longrun.rules.limit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import longrun.origin.DataFile;
import longrun.plan.Distance;
import longrun.plan.choice.CodeProfile;
import longrun.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Limits as data, and what a distance known only to be more than some length says of them. */
class ThresholdsTest {

    private static final String HEAD =
            "# thresholds\nrule,variant,code,severity,bound,limit,required,reference,edition,confidence,fact\n";

    @ParameterizedTest
    @CsvSource({
        "tank-to-building, to-2000, 24.9994, false, BROKEN",
        "tank-to-building, to-2000, 24.9996, false, HOLDS",
        "tank-to-building, to-2000, 25, false, HOLDS",
        "tank-to-building, to-2000, 25, true, HOLDS",
        "tank-to-building, to-2000, 24, true, ASKS",
        "shutoff-within-reach, '', 6, false, HOLDS",
        "shutoff-within-reach, '', 6.0004, false, HOLDS",
        "shutoff-within-reach, '', 6.001, false, BROKEN",
        "shutoff-within-reach, '', 6, true, BROKEN",
        "shutoff-within-reach, '', 5.9, true, ASKS"
    })
    void distanceAgainstItsLimit(String rule, String variant, double feet, boolean orMore, State state) {
        Threshold limit = Thresholds.builtIn().get(rule, variant, CodeProfile.FUEL_GAS_2018);
        assertThat(limit.test(new Distance(Length.ofFeet(feet), orMore))).isEqualTo(state);
    }

    @ParameterizedTest
    @EnumSource(CodeProfile.class)
    void everyCaseOfARuleHasARowUnderEveryCode(CodeProfile code) {
        assertThat(Thresholds.builtIn().listAll())
                .allSatisfy(t -> assertThat(Thresholds.builtIn().find(t.rule(), t.variant(), code))
                        .as(t.rule() + " " + t.variant())
                        .isPresent());
    }

    @Test
    void wrongRowIsNamedByItsLine() {
        String rows = HEAD + "a,,any,must-fix,least,3 ft,x,y,2018,print,SV-01\n"
                + "b,,any,must-fix,least,3 furlongs,x,y,2018,print,SV-01\n";
        assertThatThrownBy(() -> Thresholds.read(DataFile.parse("rules/thresholds.csv", rows)))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("rules/thresholds.csv:4")
                .hasMessageContaining("furlongs");
    }

    @Test
    void unknownWordIsNamedByItsLine() {
        assertThatThrownBy(() -> Thresholds.read(
                        DataFile.parse("rules/thresholds.csv", HEAD + "a,,any,grave,least,3 ft,x,y,,print,SV-01\n")))
                .hasMessageContaining("rules/thresholds.csv:3")
                .hasMessageContaining("grave");
    }
}
