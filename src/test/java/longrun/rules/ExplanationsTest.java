package longrun.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import longrun.Samples;
import longrun.finding.Severity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each explanation's wrong example breaks its rule, the right one keeps it. */
class ExplanationsTest {

    static List<Explanation> explanations() {
        return Explanations.all();
    }

    @Test
    void everyRuleIsExplained() {
        assertThat(explanations().stream().map(Explanation::rule))
                .containsExactlyInAnyOrderElementsOf(
                        Rules.all().stream().map(Rule::name).toList());
    }

    @ParameterizedTest
    @MethodSource("explanations")
    void wrongExampleBreaksTheRule(Explanation e) {
        assertThat(states(e, e.wrong())).containsAnyOf(State.BROKEN, orAsked(e)).doesNotContain(State.HOLDS);
    }

    @ParameterizedTest
    @MethodSource("explanations")
    void rightExampleKeepsTheRule(Explanation e) {
        assertThat(states(e, e.right())).contains(State.HOLDS).doesNotContain(State.BROKEN, State.ASKS);
        assertThat(Rules.check(House.of(Samples.plan(e.right()))).findings())
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
