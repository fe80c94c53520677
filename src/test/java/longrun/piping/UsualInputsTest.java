package longrun.piping;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import longrun.Samples;
import longrun.finding.Finding;
import longrun.finding.Severity;
import longrun.plan.Plan;
import longrun.plan.choice.ApplianceKind;
import longrun.plan.json.PlanReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Usual inputs: half to twice 2018 IFGC Table 402.2 (memory): range 65,000, furnace 60,000 to 100,000; on-demand heater 30,000 to 250,000 Btu/h. */
class UsualInputsTest {

    private static List<Finding> asked(String kind, String input) {
        String plan = "{\"format\":\"longrun-plan/1\",\"appliances\":[{\"id\":\"a\",\"kind\":\"" + kind
                + "\",\"input\":\"" + input + "\"}]}";
        return UsualInputs.of(PlanReader.read(plan).plan().orElseThrow());
    }

    @ParameterizedTest
    @CsvSource({
        "range, 32500 Btu/h, 0",
        "range, 32499 Btu/h, 1",
        "range, 130000 Btu/h, 0",
        "range, 130001 Btu/h, 1",
        "furnace, 30000 Btu/h, 0",
        "furnace, 29999 Btu/h, 1",
        "furnace, 200000 Btu/h, 0",
        "furnace, 200001 Btu/h, 1",
        "on-demand-water-heater, 30000 Btu/h, 0",
        "on-demand-water-heater, 29999 Btu/h, 1",
        "on-demand-water-heater, 250000 Btu/h, 0",
        "on-demand-water-heater, 250001 Btu/h, 1"
    })
    void anInputOutsideItsKindsRangeIsAskedAgain(String kind, String input, int questions) {
        assertThat(asked(kind, input)).hasSize(questions);
    }

    @Test
    void itIsAQuestionForTheRatingPlateAndNeverMore() {
        Finding f = asked("range", "650,000 Btu/h").get(0);
        assertThat(f.severity()).isEqualTo(Severity.NOTE);
        assertThat(f.field()).isEqualTo("/appliances/0/input");
        assertThat(f.ask().orElseThrow()).contains("650,000", "32,500 to 130,000 Btu/h");
    }

    /** Held from memory: a pilot light burns about 1,000 Btu/h. */
    @Test
    void lessThanAPilotLightIsAskedAboutInThousandsWhateverTheKind() {
        Plan plan = Samples.plan("{\"format\":\"longrun-plan/1\",\"appliances\":[{\"id\":\"a\",\"input\":\"65 Btu/h\"},"
                + "{\"id\":\"b\",\"input\":\"1000 Btu/h\"}]}");
        assertThat(UsualInputs.of(plan))
                .singleElement()
                .satisfies(f -> assertThat(f.ask().orElseThrow()).contains("65 Btu/h or 65,000 Btu/h"));
    }

    @Test
    void kindsWithoutARowAreNotAskedAbout() {
        assertThat(asked("standby-generator", "400,000 Btu/h")).isEmpty();
        assertThat(UsualInputs.find(ApplianceKind.OTHER)).isEmpty();
    }

    /** 2018 IFGC Table 402.2 gives a range 65,000 Btu/h; an on-demand water heater's range is common practice. */
    @Test
    void theQuestionNamesTheTableOrThatNoTableSaysIt() {
        Finding range = asked("range", "650,000 Btu/h").get(0);
        assertThat(range.reference()).contains("Table 402.2");
        assertThat(range.edition()).isEqualTo("2018");
        Finding heater = asked("on-demand-water-heater", "650,000 Btu/h").get(0);
        assertThat(heater.reference()).isEqualTo("common practice");
        assertThat(heater.edition()).isEmpty();
    }

    @Test
    void anInputThatIsNotKnownIsNotFar() {
        assertThat(asked("range", "none")).isEmpty();
    }
}
