package longrun.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertAll;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The words in which a rule tells what it found, wants, asks and mends; a row without words tells nothing there. */
class ToldTest {

    private static final Map<String, List<String[]>> BY_RULE = OneRule.rows("told.csv");

    @ParameterizedTest(name = "{0}")
    @MethodSource("listRules")
    void whatIsFoundIsToldInTheWordsOfTheTrade(String rule) {
        assertAll(BY_RULE.get(rule).stream().map(row -> () -> {
            List<String> found = found(rule, row[1], row[2]);
            if (row[3].isEmpty()) {
                assertThat(found).as(String.join("|", row)).isEmpty();
            } else {
                assertThat(found).as(String.join("|", row)).anyMatch(words -> words.contains(row[3]));
            }
        }));
    }

    static Stream<String> listRules() {
        return BY_RULE.keySet().stream().sorted();
    }

    private static List<String> found(String rule, String place, String edit) {
        return OneRule.judge(Edits.house("whole-house.json", edit), rule, place)
                .flatMap(v -> v.finding().stream())
                .map(f -> String.join(" ", f.found(), f.ask().orElse(""), f.remedy(), f.required()))
                .toList();
    }
}
