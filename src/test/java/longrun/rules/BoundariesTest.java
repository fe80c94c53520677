package longrun.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertAll;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import longrun.Samples;
import longrun.finding.Finding;
import longrun.rules.limit.State;
import longrun.rules.shape.House;
import longrun.rules.shape.Rule;
import longrun.rules.shape.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Each rule just inside its limit, exactly at it, just outside, not for this plan and with the fact missing. The
 * section each limit is printed in stands beside the row: 2018 IFGC (409, 408.4, 410, 411), NFPA 54 2018 (9.6), NFPA 58
 * 2017 (6.3, 6.4, 6.10), UL 144 2021, UPC (1212).
 */
class BoundariesTest {

    private static final Map<String, List<String[]>> ROWS = read();

    /** A topic's rows together: a row by itself takes the runner longer to begin than the rule to judge. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("listTopics")
    void rulesOfATopicAtTheirLimits(String topic) {
        assertAll(ROWS.get(topic).stream().map(row -> () -> ruleAtItsLimit(row)));
    }

    static Set<String> listTopics() {
        return ROWS.keySet();
    }

    /** The rows under each heading of the file. */
    private static Map<String, List<String[]>> read() {
        Map<String, List<String[]>> out = new LinkedHashMap<>();
        List<String[]> rows = new ArrayList<>();
        for (String line : Samples.text("rules/boundaries.csv").lines().skip(1).toList()) {
            if (line.startsWith("#")) {
                rows = new ArrayList<>();
                out.put(line.substring(1).strip(), rows);
            } else if (!line.isBlank()) {
                rows.add(Stream.of(line.split("\\|", -1)).map(String::strip).toArray(String[]::new));
            }
        }
        return out;
    }

    private static void ruleAtItsLimit(String[] row) {
        assertThat(row).as(String.join("|", row)).hasSize(6);
        String rule = row[0];
        String place = row[1];
        String state = row[3];
        String severity = row[4];
        String section = row[5];
        House house = Edits.house("whole-house.json", row[2]);
        List<Verdict> here = verdicts(house, rule, place);
        State worst = here.stream()
                .map(v -> v.state().state())
                .reduce(BoundariesTest::worse)
                .orElseThrow(() -> new AssertionError(rule + " is not judged at " + place));
        assertThat(worst.written()).as(String.join("|", row)).isEqualTo(state);
        Optional<Finding> finding = here.stream()
                .filter(v -> v.state().state() == worst)
                .flatMap(v -> v.finding().stream())
                .findFirst();
        if (!severity.isEmpty()) {
            assertThat(finding.map(f -> f.severity().written()))
                    .as(String.join("|", row))
                    .contains(severity);
            assertThat(Rules.check(house).findings())
                    .as("shown: " + String.join("|", row))
                    .anyMatch(f -> f.rule().equals(rule));
        }
        boolean byFact = section.isEmpty() || section.startsWith("AD-");
        finding.filter(f -> !byFact)
                .ifPresent(
                        f -> assertThat(f.reference()).as(String.join("|", row)).contains(section));
    }

    @Test
    void everyRuleHasAllFiveKindsOfRow() {
        List<String[]> rows = ROWS.values().stream().flatMap(List::stream).toList();
        for (Rule rule : Rules.all()) {
            TreeSet<String> states = new TreeSet<>();
            rows.stream().filter(r -> r[0].equals(rule.name())).forEach(r -> states.add(r[3]));
            assertThat(states).as(rule.name()).contains("holds", "asks");
            if (!rule.name().equals("entry-missing")) {
                assertThat(states).as(rule.name()).contains("broken");
            }
        }
    }

    private static List<Verdict> verdicts(House house, String rule, String place) {
        return Rules.all().stream()
                .filter(r -> r.name().equals(rule))
                .flatMap(r -> r.judge(house).stream())
                .filter(v -> v.state().pointer().equals(place))
                .toList();
    }

    private static State worse(State a, State b) {
        List<State> order = List.of(State.BROKEN, State.ASKS, State.HOLDS, State.NOT_FOR_THIS_PLAN);
        return order.indexOf(a) <= order.indexOf(b) ? a : b;
    }
}
