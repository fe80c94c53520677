package longrun.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import longrun.Samples;
import longrun.rules.limit.State;
import longrun.rules.shape.House;
import org.junit.jupiter.api.Test;

/** Another code or a local amendment: what it changes in one house, and why. */
class WhatChangedTest {

    private static RuleReport report(String code, String nipple) {
        return Rules.check(House.of(Samples.plan("{\"format\":\"longrun-plan/1\",\"code\":" + code
                + ",\"appliances\":[{\"id\":\"heater\",\"kind\":\"furnace\",\"gas\":\"propane\",\"connection\":["
                + "{\"part\":\"shutoff\",\"distance\":\"5 ft\",\"sameRoom\":false,\"accessible\":true},"
                + "{\"part\":\"sediment-trap\",\"nipple\":\"" + nipple
                + "\",\"capPointsDown\":true,\"gasTurns\":true}]}]}")));
    }

    private static List<WhatChanged> between(String before, String after) {
        return WhatChanged.between(report(before, "2 in"), report(after, "2 in"));
    }

    @Test
    void theSameCodeChangesNothing() {
        assertThat(between("{\"profile\":\"fuel-gas-2018\"}", "{\"profile\":\"fuel-gas-2018\"}"))
                .isEmpty();
    }

    @Test
    void anotherCodeAsksForALongerNippleAndNamesNoRoom() {
        List<WhatChanged> changes = between("{\"profile\":\"fuel-gas-2018\"}", "{\"profile\":\"nfpa-54-58\"}");
        assertThat(changes)
                .filteredOn(c -> c.rule().equals("trap-nipple-length"))
                .singleElement()
                .satisfies(c -> {
                    assertThat(c.inWords()).isEqualTo("held, now broken");
                    assertThat(c.required()).contains("3 in");
                    assertThat(c.source()).contains("NFPA 54");
                });
        assertThat(changes)
                .filteredOn(c -> c.rule().equals("shutoff-same-room"))
                .singleElement()
                .satisfies(c -> assertThat(c.before()).isEqualTo(State.BROKEN));
    }

    @Test
    void anAmendmentBreaksWhatHeldAndNamesItsSource() {
        List<WhatChanged> changes = between(
                "{\"profile\":\"fuel-gas-2018\"}",
                "{\"profile\":\"fuel-gas-2018\",\"amendments\":[{\"rule\":\"shutoff-within-reach\",\"limit\":\"3 ft\","
                        + "\"source\":\"county ordinance 12.4\"}]}");
        assertThat(changes).singleElement().satisfies(c -> {
            assertThat(c.inWords()).isEqualTo("held, now broken");
            assertThat(c.at()).isEqualTo("heater");
            assertThat(c.source()).contains("county ordinance 12.4");
        });
    }

    @Test
    void takingItBackMendsIt() {
        List<WhatChanged> changes = between(
                "{\"amendments\":[{\"rule\":\"shutoff-within-reach\",\"limit\":\"3 ft\",\"source\":\"county\"}],"
                        + "\"profile\":\"fuel-gas-2018\"}",
                "{\"profile\":\"fuel-gas-2018\"}");
        assertThat(changes)
                .singleElement()
                .satisfies(c -> assertThat(c.inWords()).isEqualTo("was broken, now holds"));
    }
}
