package longrun.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatNoException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import longrun.origin.DataFile;
import longrun.rules.limit.Threshold;
import longrun.rules.limit.Thresholds;
import longrun.rules.shape.Rule;
import org.junit.jupiter.api.Test;

/** Facts and rules find each other by name. */
class RuleNamesTest {

    private static final String HEAD =
            "rule,variant,code,severity,bound,limit,required,reference,edition,confidence,fact\n";

    /** The table of limits, written apart from the rules, names each of them but the one about missing entries. */
    @Test
    void everyTopicBringsTheRulesThatHaveALimit() {
        Set<String> named = Stream.concat(
                        Stream.of("entry-missing"),
                        Thresholds.builtIn().listAll().stream().map(Threshold::rule))
                .collect(Collectors.toSet());
        assertThat(Rules.make().stream().map(Rule::name).collect(Collectors.toSet()))
                .isEqualTo(named);
        assertThat(Rules.all()).hasSameSizeAs(Rules.make()).hasSize(named.size() + 1); // a vent terminal has two
    }

    @Test
    void everyThresholdBelongsToARule() {
        assertThatNoException().isThrownBy(() -> Rules.refuseStrangers(Thresholds.builtIn()));
    }

    @Test
    void aThresholdWithoutARuleIsRefusedByName() {
        Thresholds strange = Thresholds.read(DataFile.parse(
                "strange.csv", HEAD + "shutof,,any,must-fix,yes,,a valve,common practice,,memory,AD-1\n"));
        assertThatThrownBy(() -> Rules.refuseStrangers(strange))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("shutof");
    }
}
