package longrun.rules;

import static org.assertj.core.api.Assertions.assertThatNoException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.StringReader;
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
    void aThresholdWithoutARuleIsRefusedByName() throws IOException {
        Thresholds strange = Thresholds.read(
                new StringReader(HEAD + "shutof,,any,must-fix,yes,,a valve,common practice,,memory,AD-1\n"));
        assertThatThrownBy(() -> Rules.refuseStrangers(strange))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("shutof");
    }
}
