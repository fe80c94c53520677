package longrun.rules;

import static org.assertj.core.api.Assertions.assertThatNoException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import longrun.origin.DataFile;
import longrun.rules.limit.Thresholds;
import org.junit.jupiter.api.Test;

/** Facts and rules find each other by name. */
class RuleNamesTest {

    private static final String HEAD =
            "rule,variant,code,severity,bound,limit,required,reference,edition,confidence,fact\n";

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
