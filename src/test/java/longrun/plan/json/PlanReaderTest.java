package longrun.plan.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import longrun.Samples;
import longrun.plan.Fact;
import longrun.plan.Plan;
import longrun.quantity.HeatRate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Reading and writing plans: what was typed survives, and every error is told at once with its place. */
class PlanReaderTest {

    private static final String HEAD = "{\"format\":\"longrun-plan/1\",";

    private static List<PlanError> errors(String rest) {
        return PlanReader.read(HEAD + rest + "}").errors();
    }

    @Test
    void everyEntryOfTheSamplePlanIsReadByAField() {
        Reading reading = PlanReader.read(Samples.text("sample-plan.json"));
        assertThat(reading.errors()).isEmpty();
        assertThat(reading.unread()).isEmpty();
        Plan plan = reading.plan().orElseThrow();
        assertThat(plan.appliances().get(0).input().findValue()).contains(HeatRate.ofBtuh(180_000));
        assertThat(plan.tank()).hasSize(1);
    }

    @Test
    void whatAPersonTypedSurvivesReadingAndWriting() throws Exception {
        JsonNode typed = PlanReader.tree(Samples.text("sample-plan.json"));
        ObjectNode written = PlanWriter.write(PlanReader.read(typed).plan().orElseThrow());
        ((ObjectNode) typed)
                .set("tank", new com.fasterxml.jackson.databind.node.ArrayNode(null).add(typed.get("tank")));
        assertThat(written).isEqualTo(typed);
        assertThat(PlanReader.read(written).plan())
                .isEqualTo(PlanReader.read(typed).plan());
    }

    @Test
    void onlyTheFormatIsRequired() {
        assertThat(PlanReader.read("{\"format\":\"longrun-plan/1\"}").plan()).isPresent();
        assertThat(PlanReader.read("{}").errors())
                .extracting(PlanError::pointer)
                .containsExactly("/format");
    }

    @Test
    void missingIsUnknownAndNoneIsNone() {
        Plan plan = Samples.plan(HEAD
                + "\"regulators\":[{\"id\":\"R\",\"ventToOpening\":\"none\",\"ventToIntake\":null}],"
                + "\"appliances\":[{\"id\":\"a\",\"vent\":\"none\"}]}");
        assertThat(plan.regulators().get(0).ventToOpening()).isEqualTo(Fact.none());
        assertThat(plan.regulators().get(0).ventToIntake()).isEqualTo(Fact.unknown());
        assertThat(plan.regulators().get(0).ventToIgnition()).isEqualTo(Fact.unknown());
        assertThat(plan.appliances().get(0).vent().findText()).contains("none");
        assertThat(plan.appliances().get(0).vent().isKnown()).isTrue();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        "sections":[{"id":"A","from":"Z"}]                                                 | /sections/0/from | not a name of a section or a regulator
        "sections":[{"id":"A"},{"id":"A"}]                                                 | /sections/1/id   | already the name
        "sections":[{"id":"tank"}]                                                         | /sections/0/id   | kept for the program
        "sections":[{"id":"A","from":"B"},{"id":"B","from":"A"}]                           | /sections/0/from | comes back to itself
        "sections":[{"id":"A","from":"A"}]                                                 | /sections/0/from | comes back to itself
        "sections":[{"id":"A","legs":["north 2 ft","south 1 ft"]}]                         | /sections/0/legs/1 | turns straight back
        "sections":[{"id":"A","legs":["up 2 ft"]},{"id":"B","from":"A","legs":["down 1 ft"]}] | /sections/1/legs/0 | turns straight back
        "sections":[{"id":"A","legs":["12"]}]                                              | /sections/0/legs/0 | has no unit
        "sections":[{"id":"A","legs":["-4 ft"]}]                                           | /sections/0/legs/0 | below zero
        "sections":[{"id":"A","legs":["200,000 ft"]}]                                      | /sections/0/legs/0 | more than 100,000 ft
        "sections":[{"id":"A","material":"iron"}]                                          | /sections/0/material | write one of steel
        "sections":[{"id":"A","material":"copper","installedSize":"1/2"}]                  | /sections/0/installedSize | "1/2 nominal" or "1/2 OD"
        "sections":[{"id":"A","material":"steel","chosenSize":"5/8"}]                      | /sections/0/chosenSize | write one of 1/2, 3/4
        "appliances":[{"id":"a","input":199000}]                                           | /appliances/0/input | Btu/h, kBtu/h, kW, MJ/h
        "appliances":[{"id":"a","input":"3,7 kW"}]                                         | /appliances/0/input | write 3.7
        "appliances":[{"id":"a","input":"199 MBtu/h"}]                                     | /appliances/0/input | thousand Btu/h by some and as million
        "appliances":[{"id":"a","fedBy":"R"}]                                              | /appliances/0/fedBy | not a name of a section
        "appliances":[{"id":"a","gas":"butane"}]                                           | /appliances/0/gas | propane, converted, natural
        "regulators":[{"id":"R","outlet":"1 psi","allowedDrop":"1 psi"}]                   | /regulators/0/allowedDrop | smaller than the outlet
        "regulators":[{"id":"R","underEaves":"yes"}]                                       | /regulators/0/underEaves | true or false
        "site":{"people":-2}                                                               | /site/people | from 0 up
        "site":{"monthlyMeanTemp":["29 degF"]}                                             | /site/monthlyMeanTemp | twelve
        "sections":{"A":1}                                                                 | |
        "sections":"A"                                                                     | /sections | list is needed
        "sections":[7]                                                                     | /sections/0 | object is needed
        """)
    void anErrorNamesItsPlaceAndWhatToWriteInstead(String plan, String pointer, String words) {
        List<PlanError> errors = errors(plan);
        if (pointer == null) {
            assertThat(errors).isEmpty();
            return;
        }
        assertThat(errors).hasSize(1);
        assertThat(errors.get(0).pointer()).isEqualTo(pointer);
        assertThat(errors.get(0).message()).contains(words);
    }

    @Test
    void everyErrorIsToldAtOnce() {
        assertThat(errors("\"sections\":[{\"id\":\"A\",\"from\":\"Z\",\"legs\":[\"12\"],\"material\":\"tin\"}],"
                        + "\"appliances\":[{\"id\":\"a\",\"input\":\"12 psi\"}]"))
                .extracting(PlanError::pointer)
                .containsExactlyInAnyOrder(
                        "/sections/0/from", "/sections/0/legs/0", "/sections/0/material", "/appliances/0/input");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
        {"format":
        {"format":"longrun-plan/1","a":NaN}
        {"a":1,"a":2}
        [1]
        nothing
        {} {}
        """)
    void whatIsNoJsonObjectIsOneErrorAtTheRoot(String text) {
        List<PlanError> errors = PlanReader.read(text).errors();
        assertThat(errors).hasSize(1);
        assertThat(errors.get(0).message()).contains("JSON object");
    }

    @Test
    void anEntryOfNoFieldIsKeptAndNamed() {
        Reading reading = PlanReader.read(HEAD + "\"sections\":[{\"id\":\"A\",\"lenght\":\"4 ft\"}]}");
        assertThat(reading.plan()).isPresent();
        assertThat(reading.unread()).containsExactly("/sections/0/lenght");
    }

    /** Common practice: no gauge was read before 1990, and none is after 2100. */
    @ParameterizedTest
    @CsvSource({
        "1989-12-31, false",
        "1990-01-01, true",
        "2100-12-31, true",
        "2101-01-01, false",
        "+999999999-12-31, false",
        "-999999999-01-01, false",
        "0026-11-20, false",
        "12/31/1989, false"
    })
    void aDateIsFrom1990To2100(String date, boolean isRead) {
        List<PlanError> errors = errors("\"tank\":{\"gaugeDate\":\"" + date + "\"}");
        assertThat(errors.isEmpty()).isEqualTo(isRead);
        assertThat(errors).allSatisfy(e -> {
            assertThat(e.pointer()).isEqualTo("/tank/gaugeDate");
            assertThat(e.message()).contains("write a date from 1990 to 2100");
        });
    }
}
