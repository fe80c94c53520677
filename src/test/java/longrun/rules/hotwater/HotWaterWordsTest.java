package longrun.rules.hotwater;

import static org.assertj.core.api.Assertions.assertThat;

import longrun.rules.Edits;
import longrun.rules.shape.Precedence;
import longrun.rules.shape.Rule;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A finding about the hot water names the heater it is about. */
class HotWaterWordsTest {

    private static Rule rule(String name) {
        return HotWater.rules().stream()
                .filter(r -> r.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "preheated-inlet|/use/hotWater/storage/setTemp gone|What the storage heater is set to is not entered",
                "preheated-inlet|/use/hotWater/onDemand/maxInletTemp gone|The hottest inlet water on the on-demand"
                        + " heater's label is not entered",
                "relief-valve-cut-off|/use/hotWater/valves = [{\"what\":\"relief\",\"after\":\"storage\"}]|Whether the"
                        + " on-demand heater keeps its own relief valve in every position of the valves is not entered",
                "relief-valve-cut-off|/use/hotWater/valves = [{\"what\":\"relief\",\"after\":\"on-demand\"}]|Whether the"
                        + " storage heater keeps its own relief valve in every position of the valves is not entered",
                "mixing-valve-last|/use/hotWater/valves = [{\"what\":\"mixing\",\"after\":\"storage\"}]|The mixing valve"
                        + " follows the storage heater, and the on-demand heater comes behind it",
                "mixing-valve-last|/use/hotWater/arrangement = \"storage-only\" & /use/hotWater/valves = [{\"what\":"
                        + "\"mixing\",\"after\":\"on-demand\"}]|The mixing valve follows the on-demand heater, and the"
                        + " storage heater comes behind it"
            })
    void heaterIsNamed(String rule, String edit, String found) {
        assertThat(rule(rule).judge(Edits.house("whole-house.json", edit)).stream()
                        .flatMap(v -> v.finding().stream()))
                .singleElement()
                .satisfies(f -> assertThat(f.found()).isEqualTo(found));
    }

    @Test
    void missingReliefValveIsToldBeforeATemperatureThatIsTooHigh() {
        assertThat(rule("relief-valve-cut-off").precedence()).isEqualTo(Precedence.MISSING);
        assertThat(rule("scald-limit").precedence()).isEqualTo(Precedence.SIZE);
    }
}
