package longrun.rules.code;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import longrun.finding.Finding;
import longrun.rules.Edits;
import longrun.rules.shape.Precedence;
import org.junit.jupiter.api.Test;

/** A local amendment replaces the distance or length of a rule in the code that is followed. */
class AmendmentsTest {

    private static List<String> found(String code, String amendment) {
        return new EnteredCode()
                        .judge(Edits.house(
                                "whole-house.json",
                                "/code = { \"profile\": \"" + code + "\", \"amendments\": [ " + amendment + " ] }"))
                        .stream()
                        .flatMap(v -> v.finding().stream())
                        .map(Finding::found)
                        .toList();
    }

    @Test
    void amendmentOfARuleWithoutALimitNamesTheRuleAndChangesNothing() {
        assertThat(found("fuel-gas-2018", "{ \"rule\": \"connector-single\", \"limit\": \"6 ft\" }"))
                .containsExactly(
                        "Amendment 1 names no rule with a limit (rule: connector-single), so" + " it changes nothing.");
        assertThat(found("fuel-gas-2018", "{ \"limit\": \"6 ft\" }"))
                .containsExactly("Amendment 1 names no rule with a limit, so it changes nothing.");
    }

    @Test
    void amendmentIsComparedWithTheCodeThatIsFollowedAlone() {
        String nipple = "{ \"rule\": \"trap-nipple-length\", \"limit\": \"2.9 in\", \"source\": \"county\" }";
        assertThat(found("nfpa-54-58", nipple))
                .singleElement()
                .asString()
                .contains("(county) sets 2.9 in where the code has 3 in: it asks less than the code");
        assertThat(found("fuel-gas-2018", nipple)).isEmpty();
    }

    @Test
    void whatIsMissingOfTheCodeIsToldBeforeAllElse() {
        assertThat(new EnteredCode().precedence()).isEqualTo(Precedence.MISSING);
    }
}
