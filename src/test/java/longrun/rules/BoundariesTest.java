package longrun.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertAll;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import longrun.finding.Finding;
import longrun.rules.limit.State;
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

    /** A topic's rows together: a row by itself takes the runner longer to begin than the rule to judge. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("listTopics")
    void rulesOfATopicAtTheirLimits(String topic) {
        assertAll(Boundary.byTopic().get(topic).stream().map(row -> () -> ruleAtItsLimit(row)));
    }

    static Set<String> listTopics() {
        return Boundary.byTopic().keySet();
    }

    private static void ruleAtItsLimit(Boundary row) {
        List<Verdict> here = OneRule.judge(row.house(), row.rule(), row.place()).toList();
        State worst = here.stream()
                .map(v -> v.state().state())
                .reduce(BoundariesTest::worse)
                .orElseThrow(() -> new AssertionError(row + " is not judged"));
        assertThat(worst.written()).as(row.toString()).isEqualTo(row.state());
        Optional<Finding> finding = here.stream()
                .filter(v -> v.state().state() == worst)
                .flatMap(v -> v.finding().stream())
                .findFirst();
        if (!row.severity().isEmpty()) {
            assertThat(finding.map(f -> f.severity().written()))
                    .as(row.toString())
                    .contains(row.severity());
        }
        boolean byFact = row.section().isEmpty() || row.section().startsWith("AD-");
        finding.filter(f -> !byFact)
                .ifPresent(f -> assertThat(f.reference()).as(row.toString()).contains(row.section()));
    }

    @Test
    void everyRuleHasAllFiveKindsOfRow() {
        for (Rule rule : Rules.all()) {
            TreeSet<String> states = new TreeSet<>();
            Boundary.all().stream()
                    .filter(row -> row.rule().equals(rule.name()))
                    .forEach(row -> states.add(row.state()));
            assertThat(states).as(rule.name()).contains("holds", "asks");
            if (!rule.name().equals("entry-missing")) {
                assertThat(states).as(rule.name()).contains("broken");
            }
        }
    }

    private static State worse(State a, State b) {
        List<State> order = List.of(State.BROKEN, State.ASKS, State.HOLDS, State.NOT_FOR_THIS_PLAN);
        return order.indexOf(a) <= order.indexOf(b) ? a : b;
    }
}
