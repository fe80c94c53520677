package longrun.rules;

import static org.assertj.core.api.Assertions.assertThat;

import longrun.Samples;
import longrun.finding.Finding;
import longrun.finding.Severity;
import longrun.rules.shape.House;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A false alarm is a defect: houses built right, of different kinds, bring no must-fix and no caution. */
class CorrectHousesTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "whole-house",
                "correct/manifold-valves",
                "correct/fireplace-with-remote-valve",
                "correct/integral-two-stage",
                "correct/plumbing-code-order",
                "correct/rigid-pipe-with-union",
                "correct/underground-tank",
                "correct/two-psi-with-line-regulator",
                "correct/all-copper",
                "correct/cylinders",
                "correct/one-appliance",
                "correct/generator",
                "correct/mobile-range",
                "correct/two-tanks-apart"
            })
    void correctHouseHasNothingToMend(String file) {
        House house = House.of(Samples.plan(Samples.text("rules/" + file + ".json")));
        assertThat(Rules.check(house).findings()).isEmpty();
    }

    /** The documented sample plan leaves questions open and nothing to mend. */
    @ParameterizedTest
    @ValueSource(strings = "sample-plan.json")
    void samplePlanOnlyAsks(String file) {
        assertThat(Rules.check(House.of(Samples.plan(Samples.text(file)))).findings())
                .isNotEmpty()
                .extracting(Finding::severity)
                .containsOnly(Severity.NOTE);
    }
}
