package longrun.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import longrun.Samples;
import longrun.finding.Finding;
import longrun.finding.Severity;
import longrun.plan.json.PlanWith;
import longrun.rules.explanation.Explanation;
import longrun.rules.explanation.Explanations;
import longrun.rules.limit.State;
import longrun.rules.shape.RuleState;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each example an explanation shows, run as the plan it is through the whole review. */
class ExamplesTest {

    /** What cannot be had apart: a tank that is short all day is short with everything firing, and short of pressure. */
    private static final Map<String, Set<String>> COME_ALONG =
            Map.of("tank-vapour-mean", Set.of("tank-vapour-peak", "regulator-min-inlet"));

    static List<Explanation> explanations() {
        return Explanations.all();
    }

    @Test
    void nothingIsFoundInTheHouseOfAllExamples() {
        assertThat(review(Explanations.house()).findings()).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("explanations")
    void rightExampleKeepsEveryRule(Explanation e) {
        Review review = review(e.right().plan());
        assertThat(review.findings()).isEmpty();
        assertThat(review.rules().states()).extracting(RuleState::state).doesNotContain(State.BROKEN, State.ASKS);
    }

    @ParameterizedTest
    @MethodSource("explanations")
    void wrongExampleBreaksItsOwnRuleAndNoOther(Explanation e) {
        Review review = review(e.wrong().plan());
        Set<String> along = COME_ALONG.getOrDefault(e.rule(), Set.of());
        assertThat(review.findings())
                .extracting(Finding::rule)
                .contains(e.rule())
                .allMatch(r -> r.equals(e.rule()) || along.contains(r));
        Severity least = e.rule().equals("entry-missing") ? Severity.NOTE : Severity.CAUTION;
        assertThat(review.findings())
                .anyMatch(f -> f.rule().equals(e.rule()) && f.severity().compareTo(least) <= 0);
        assertThat(review.rules().states())
                .filteredOn(s -> s.state() == State.BROKEN || s.state() == State.ASKS)
                .extracting(RuleState::rule)
                .allMatch(r -> r.equals(e.rule()) || along.contains(r));
    }

    @ParameterizedTest
    @MethodSource("explanations")
    void whatIsFoundInTheWrongExampleNamesTheSourceThatTheExplanationGives(Explanation e) {
        assertThat(e.sections()).isNotEmpty().noneMatch(s -> s.source().isBlank());
        // A size rests on the table of its material, each with a source of its own.
        boolean byTable = e.rule().equals("section-undersized") || e.rule().equals("size-from-memory");
        for (Finding f : review(e.wrong().plan()).findings()) {
            if (!f.rule().equals(e.rule())) {
                continue;
            }
            assertThat(e.sections())
                    .as(f.reference())
                    .anyMatch(s -> s.source().contains(byTable ? "table of the material" : f.reference()));
        }
    }

    /** A valve at an appliance is for service; where gas is smelt everyone leaves, as the caution says. */
    @ParameterizedTest
    @MethodSource("explanations")
    void noExplanationSendsAnyoneToAValveThatSmellsGas(Explanation e) {
        Stream.of(e.title() + " " + e.whatCanHappen())
                .filter(words -> words.matches("(?is).*\\bsmel(l|t).*"))
                .forEach(words -> assertThat(words).contains("everyone leaves"));
        if (e.topic().equals("Shutoff")) {
            assertThat(e.whatCanHappen()).doesNotContain("in time", "leaking appliance", "emergency");
        }
    }

    /** The rules whose valve a person might run to say what it is for. */
    @ParameterizedTest
    @MethodSource("explanations")
    void reachOfAShutoffIsToldAsAMatterOfService(Explanation e) {
        if (List.of("shutoff-within-reach", "shutoff-same-room", "shutoff-access")
                .contains(e.rule())) {
            assertThat(e.whatCanHappen()).contains("service", "everyone leaves");
        }
    }

    @Test
    void anEntryWithoutAPlaceInTheHouseIsNoExample() {
        assertThatThrownBy(() -> PlanWith.entries(Explanations.house(), "{ \"/appliances/9/gas\": \"natural\" }"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("/appliances/9/gas");
    }

    private static Review review(String plan) {
        return Reviewer.standard().review(Samples.plan(plan), ReviewParts.ALL);
    }
}
