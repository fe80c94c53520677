package longrun.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertAll;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import longrun.finding.Finding;
import longrun.finding.Severity;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What a rule does not know it asks of whoever can know it, and the answer has one entry to go to; a row without an entry
 * asks nothing there.
 */
class AskedTest {

    private static final Map<String, List<String[]>> BY_RULE = OneRule.rows("asked.csv");

    @ParameterizedTest(name = "{0}")
    @MethodSource("listRules")
    void whatIsNotKnownIsAskedOfWhoCanKnowIt(String rule) {
        assertAll(BY_RULE.get(rule).stream()
                .map(row -> () -> assertThat(asked(rule, row[1], row[2]))
                        .as(String.join("|", row))
                        .extracting(f -> f.field() + " of the "
                                + f.askWhom().orElseThrow().written())
                        .isEqualTo(row[3].isEmpty() ? List.of() : List.of(row[3] + " of the " + row[4]))));
    }

    static Stream<String> listRules() {
        return BY_RULE.keySet().stream().sorted();
    }

    private static List<Finding> asked(String rule, String place, String edit) {
        return OneRule.judge(Edits.house("whole-house.json", edit), rule, place)
                .flatMap(v -> v.finding().stream())
                .filter(f -> f.severity() == Severity.NOTE)
                .toList();
    }
}
