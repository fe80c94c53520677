package longrun.rules.trap;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import longrun.finding.Finding;
import longrun.rules.Edits;
import longrun.rules.Rules;
import longrun.rules.limit.State;
import org.junit.jupiter.api.Test;

/** The shutoff at the pipe's end stands ahead of trap and connector (2018 IFGC 409.5.1, 408.4). */
class TrapOfAMovedShutoffTest {

    private static List<String> found(String edit) {
        return Rules.check(Edits.house("whole-house.json", edit)).findings().stream()
                .map(Finding::rule)
                .toList();
    }

    @Test
    void shutoffMovedAheadOfTheConnectorIsAheadOfTheTrapAsWell() {
        assertThat(found("/appliances/0/connection/1 to 0")).containsExactly("trap-downstream-of-shutoff");
        assertThat(found("/appliances/0/connection/2 to 0 & /appliances/0/connection/1 to 2"))
                .contains("shutoff-upstream-of-connector")
                .doesNotContain("trap-downstream-of-shutoff");
    }

    @Test
    void trapIsStillOutOfOrderUntilTheShutoffIsMoved() {
        String edit = "/appliances/0/connection/2 to 0 & /appliances/0/connection/1 to 2";
        assertThat(SedimentTrap.rules().stream()
                        .filter(r -> r.name().equals("trap-downstream-of-shutoff"))
                        .flatMap(r -> r.judge(Edits.house("whole-house.json", edit)).stream())
                        .filter(v -> v.state().pointer().equals("/appliances/0")))
                .singleElement()
                .satisfies(v -> {
                    assertThat(v.state().state()).isEqualTo(State.BROKEN);
                    assertThat(v.finding()).isEmpty();
                });
    }
}
