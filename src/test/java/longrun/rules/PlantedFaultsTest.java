package longrun.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertAll;

import java.util.List;
import java.util.stream.Collectors;
import longrun.finding.Finding;
import longrun.finding.Severity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One fault planted by the smallest step is found once, under its name, and nothing else is. */
class PlantedFaultsTest {

    @Test
    void faultIsFoundOnce() {
        assertEachIsFoundOnce("faults.csv");
    }

    /** However far beyond its limit, it is the same one finding. */
    @Test
    void grossFaultIsFoundOnce() {
        assertEachIsFoundOnce("gross-faults.csv");
    }

    @Test
    void faultsTogetherAreEachFoundOnce() {
        List<String[]> faults = OneRule.listRows("faults.csv").stream()
                .filter(f -> !f[2].endsWith("gone")) // takes a part away, so that places counted after it move
                .toList();
        String edits = faults.stream().map(f -> f[2]).collect(Collectors.joining(" & "));
        assertThat(toMend(edits))
                .containsExactlyInAnyOrderElementsOf(
                        faults.stream().map(f -> f[0] + " at " + f[1]).toList());
    }

    @Test
    void trapIsAskedForAtAHeaterAndNotAtARange() {
        assertThat(toMend("/appliances/0/connection/1 gone")).containsExactly("trap-missing at heater");
        assertThat(toMend("/appliances/1/kind = \"clothes-dryer\"")).isEmpty();
    }

    /** The valve at the appliance's end, after trap and connector: putting it first mends all, so it is said once. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "fuel-gas-2018|/appliances/0/connection/0 to 2",
                "plumbing-code|/appliances/0/connection/0 to 2",
                "fuel-gas-2018|/appliances/0/connection/2 to 0",
                "plumbing-code|/appliances/0/connection/2 to 0"
            })
    void misplacedValveIsSaidOnce(String profile, String edit) {
        assertThat(toMend("/code/profile = \"" + profile + "\" & " + edit))
                .containsExactly("shutoff-upstream-of-connector at heater");
    }

    @Test
    void twoFaultsAtOnePartAreTwoFindings() {
        assertThat(toMend("/appliances/0/connection/1/gasTurns = false"
                        + " & /appliances/0/connection/1/capPointsDown = false"))
                .containsExactlyInAnyOrder("trap-gas-turns at heater", "trap-cap-down at heater");
    }

    @Test
    void unknownConnectionIsAskedOnce() {
        List<Finding> findings = Rules.check(Edits.house("whole-house.json", "/appliances/0/connection gone"))
                .findings();
        assertThat(findings).extracting(Finding::rule).containsExactly("shutoff-missing");
        assertThat(findings.get(0).severity()).isEqualTo(Severity.NOTE);
    }

    private static void assertEachIsFoundOnce(String file) {
        assertAll(OneRule.listRows(file).stream()
                .map(f -> () -> assertThat(toMend(f[2])).as(f[2]).containsExactly(f[0] + " at " + f[1])));
    }

    static List<String> toMend(String edit) {
        return Rules.check(Edits.house("whole-house.json", edit)).findings().stream()
                .filter(f -> f.severity() != Severity.NOTE)
                .map(f -> f.rule() + " at " + f.at())
                .toList();
    }
}
