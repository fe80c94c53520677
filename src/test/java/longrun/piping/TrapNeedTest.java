package longrun.piping;

import static org.assertj.core.api.Assertions.assertThat;

import longrun.Samples;
import longrun.plan.Fact;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which kinds need a sediment trap: 2018 IFGC 408.4 names those that do not. */
class TrapNeedTest {

    @Test
    void aKindSaidToBeNoneIsNotKnownEither() {
        assertThat(TrapNeed.of(Fact.none(), Fact.unknown())).isEqualTo(TrapNeed.KIND_NOT_KNOWN);
    }

    @ParameterizedTest
    @CsvSource({
        "furnace, , NEEDED",
        "standby-generator, , NEEDED",
        "refrigerator, , NEEDED",
        "other, , NEEDED",
        "range, , EXEMPT",
        "clothes-dryer, , EXEMPT",
        "light, , EXEMPT",
        "fireplace, , EXEMPT",
        "outdoor-grill, , EXEMPT",
        "gas-logs, draft, EXEMPT",
        "gas-logs, none, NEEDED",
        "gas-logs, , VENT_NOT_KNOWN",
        "cooktop, , ASK_AUTHORITY",
        "oven, , ASK_AUTHORITY",
        ", , KIND_NOT_KNOWN"
    })
    void trapIsNeededUnlessTheListExcusesTheKind(String kind, String vent, TrapNeed expected) {
        String entries =
                (kind == null ? "" : ",\"kind\":\"" + kind + "\"") + (vent == null ? "" : ",\"vent\":\"" + vent + "\"");
        String plan = "{\"format\":\"longrun-plan/1\",\"appliances\":[{\"id\":\"a\"" + entries + "}]}";
        assertThat(TrapNeed.of(Samples.plan(plan).appliances().get(0))).isEqualTo(expected);
    }
}
