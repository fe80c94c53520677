package longrun.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import longrun.Samples;
import longrun.finding.Finding;
import longrun.finding.Severity;
import longrun.rules.limit.State;
import longrun.rules.shape.House;
import longrun.rules.shape.RuleState;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Where a regulator stands decides how it is judged; not entered, it asks. Limits: 5 psi in a building (2018 IFGC 402.6),
 * 5 ft from a relief to a direct-vent terminal (NFPA 58), first-stage and single-stage regulators outdoors (NFPA 58).
 */
class PlaceNotKnownAsksTest {

    private static String plan(String regulators, String sections, String appliances) {
        return "{\"format\":\"longrun-plan/1\",\"regulators\":[" + regulators + "],\"sections\":[" + sections
                + "],\"appliances\":[" + appliances + "]}";
    }

    private static final String FIRST = "{\"id\":\"R1\",\"kind\":\"first-stage\",\"fedBy\":\"tank\",\"setting\":"
            + "\"outdoors\",\"outlet\":\"10 psi\"}";

    private static State state(String plan, String rule, String at) {
        return Rules.check(House.of(Samples.plan(plan))).states().stream()
                .filter(s -> s.rule().equals(rule) && s.at().equals(at))
                .map(RuleState::state)
                .reduce((a, b) -> a == State.HOLDS || a == State.NOT_FOR_THIS_PLAN ? b : a)
                .orElseThrow();
    }

    private static List<Finding> asked(String plan, String field) {
        return Rules.check(House.of(Samples.plan(plan))).findings().stream()
                .filter(f -> f.field().equals(field) && f.severity() == Severity.NOTE)
                .toList();
    }

    private static String onLine(String setting, String distance) {
        return plan(
                FIRST
                        + ",{\"id\":\"L\",\"kind\":\"line\",\"fedBy\":\"Y\",\"vent\":\"outdoors\",\"outlet\":\"11 in"
                        + " w.c.\""
                        + setting + distance + "}",
                "{\"id\":\"Y\",\"from\":\"R1\"},{\"id\":\"A\",\"from\":\"L\"}",
                "{\"id\":\"heater\",\"fedBy\":\"A\",\"vent\":\"direct\"}");
    }

    @ParameterizedTest
    @CsvSource({
        "outdoors, 4 ft, BROKEN",
        "indoors, 4 ft, NOT_FOR_THIS_PLAN",
        ", 4 ft, ASKS",
        ", 5 ft, HOLDS",
        ", , ASKS"
    })
    void ventOfALineRegulatorKeepsFromATerminalUnlessItIsIndoors(String setting, String distance, State expected) {
        String plan = onLine(
                setting == null ? "" : ",\"setting\":\"" + setting + "\"",
                distance == null ? "" : ",\"ventToVentTerminal\":\"" + distance + "\"");
        assertThat(state(plan, "regulator-vent-terminal", "L")).isEqualTo(expected);
        assertThat(asked(plan, "/regulators/1/setting").isEmpty()).isEqualTo(expected != State.ASKS);
    }

    private static String grill(String setting) {
        return plan(
                "{\"id\":\"R\",\"kind\":\"single-stage\",\"fedBy\":\"tank\",\"outlet\":\"11 in w.c.\"" + setting + "}",
                "{\"id\":\"A\",\"from\":\"R\"}",
                "{\"id\":\"grill\",\"kind\":\"outdoor-grill\",\"fedBy\":\"A\",\"input\":\"60000 Btu/h\"}");
    }

    @Test
    void singleStageRegulatorOfAGrillAsksWhetherItIsOutdoors() {
        assertThat(state(grill(",\"setting\":\"outdoors\""), "regulator-kind", "R"))
                .isEqualTo(State.HOLDS);
        assertThat(state(grill(",\"setting\":\"indoors\""), "regulator-kind", "R"))
                .isEqualTo(State.BROKEN);
        assertThat(state(grill(""), "regulator-kind", "R")).isEqualTo(State.ASKS);
        assertThat(asked(grill(""), "/regulators/0/setting")).hasSize(1);
    }

    private static String atTheWall(String second) {
        return plan(
                FIRST + ",{\"id\":\"R2\",\"kind\":\"second-stage\",\"fedBy\":\"Y\",\"outlet\":\"11 in"
                        + " w.c.\",\"ventToOpening\":\"none\"" + second + "}",
                "{\"id\":\"Y\",\"from\":\"R1\",\"setting\":\"outdoors\",\"material\":\"steel\"},{\"id\":\"A\",\"from\":\"R2\"}",
                "{\"id\":\"heater\",\"fedBy\":\"A\"}");
    }

    @ParameterizedTest
    @CsvSource({"outdoors, HOLDS", "indoors, BROKEN", "concealed, BROKEN", ", ASKS"})
    void pipeAtTenPsiThatEndsAtARegulatorIsOutdoorsOnlyIfTheRegulatorIs(String setting, State expected) {
        String plan = atTheWall(setting == null ? "" : ",\"setting\":\"" + setting + "\"");
        assertThat(state(plan, "pressure-indoors", "Y")).isEqualTo(expected);
        assertThat(asked(plan, "/regulators/1/setting").isEmpty()).isEqualTo(expected != State.ASKS);
    }

    @ParameterizedTest
    @CsvSource({
        "outdoors, none, HOLDS",
        "indoors, none, BROKEN",
        "indoors, piped, HOLDS",
        ", piped, HOLDS",
        ", none, ASKS",
        ", , ASKS"
    })
    void reliefOfARegulatorThatMayBeIndoorsIsLedOutdoors(String setting, String vent, State expected) {
        String plan = atTheWall((setting == null ? "" : ",\"setting\":\"" + setting + "\"")
                + (vent == null ? "" : ",\"vent\":\"" + vent + "\""));
        assertThat(state(plan, "regulator-vent-opening", "R2")).isEqualTo(expected);
    }
}
