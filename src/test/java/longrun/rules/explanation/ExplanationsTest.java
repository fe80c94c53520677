package longrun.rules.explanation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import longrun.Samples;
import longrun.finding.Severity;
import longrun.rules.Rules;
import longrun.rules.limit.State;
import longrun.rules.shape.House;
import longrun.rules.shape.Rule;
import longrun.rules.shape.RuleState;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each explanation's wrong example breaks its rule, the right one keeps it. */
class ExplanationsTest {

    /** What is not told by a rule of placement but by sizes, pressures and the tank. */
    private static final List<String> MEASURED = List.of(
            "section-undersized",
            "section-no-size",
            "size-from-memory",
            "inlet-pressure-low",
            "inlet-pressure-high",
            "line-regulator-loss",
            "tank-vapour-mean",
            "tank-vapour-peak",
            "altitude");

    static List<Explanation> explanations() {
        return Explanations.all().stream()
                .filter(e -> !MEASURED.contains(e.rule()))
                .toList();
    }

    @Test
    void everyRuleIsExplained() {
        assertThat(Explanations.all().stream().map(Explanation::rule))
                .containsExactlyInAnyOrderElementsOf(
                        Stream.concat(Rules.all().stream().map(Rule::name), MEASURED.stream())
                                .distinct()
                                .toList());
    }

    @ParameterizedTest
    @MethodSource("explanations")
    void wrongExampleBreaksTheRule(Explanation e) {
        assertThat(states(e, e.wrong().plan()))
                .containsAnyOf(State.BROKEN, orAsked(e))
                .doesNotContain(State.ASKS == orAsked(e) ? State.HOLDS : State.ASKS);
    }

    @ParameterizedTest
    @MethodSource("explanations")
    void rightExampleKeepsTheRule(Explanation e) {
        assertThat(states(e, e.right().plan())).contains(State.HOLDS).doesNotContain(State.BROKEN, State.ASKS);
        assertThat(Rules.check(House.of(Samples.plan(e.right().plan()))).findings())
                .noneMatch(f -> f.severity() == Severity.MUST_FIX);
    }

    /** A code that is not entered is a question, never a breach. */
    private static State orAsked(Explanation e) {
        return e.rule().equals("entry-missing") ? State.ASKS : State.BROKEN;
    }

    private static Stream<State> states(Explanation e, String plan) {
        return Rules.check(House.of(Samples.plan(plan))).states().stream()
                .filter(s -> s.rule().equals(e.rule()))
                .map(RuleState::state)
                .filter(s -> s != State.NOT_FOR_THIS_PLAN);
    }
}
