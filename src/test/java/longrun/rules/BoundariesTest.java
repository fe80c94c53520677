package longrun.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import longrun.Samples;
import longrun.finding.Finding;
import longrun.rules.limit.State;
import longrun.rules.shape.House;
import longrun.rules.shape.Rule;
import longrun.rules.shape.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/**
 * Each rule just inside its limit, exactly at it, just outside, not for this plan and with the fact missing. The
 * section each limit is printed in stands beside the row: 2018 IFGC (409, 408.4, 410, 411), NFPA 54 2018 (9.6), NFPA 58
 * 2017 (6.3, 6.4, 6.10), UL 144 2021, UPC (1212).
 */
class BoundariesTest {

    @ParameterizedTest(name = "{0} {1} {2} {3}")
    @CsvFileSource(
            resources = "/longrun/rules/boundaries.csv",
            delimiter = '|',
            numLinesToSkip = 1,
            quoteCharacter = '`')
    void ruleAtItsLimit(String rule, String place, String edit, String state, String severity, String section) {
        House house = Edits.house("whole-house.json", edit == null ? "" : edit);
        List<Verdict> here = verdicts(house, rule, place);
        State worst = here.stream()
                .map(v -> v.state().state())
                .reduce(BoundariesTest::worse)
                .orElseThrow(() -> new AssertionError(rule + " is not judged at " + place));
        assertThat(worst.written()).isEqualTo(state);
        Optional<Finding> finding = here.stream()
                .filter(v -> v.state().state() == worst)
                .flatMap(v -> v.finding().stream())
                .findFirst();
        if (severity != null) {
            assertThat(finding.map(f -> f.severity().written())).contains(severity);
            assertThat(Rules.check(house).findings())
                    .as("shown")
                    .anyMatch(f -> f.rule().equals(rule));
        }
        boolean byFact = section == null || section.startsWith("AD-");
        finding.filter(f -> !byFact).ifPresent(f -> assertThat(f.reference()).contains(section));
    }

    @Test
    void everyRuleHasAllFiveKindsOfRow() {
        List<String[]> rows = Samples.text("rules/boundaries.csv")
                .lines()
                .filter(l -> !l.startsWith("#"))
                .skip(1)
                .map(l -> l.split("\\|", -1))
                .toList();
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
