package longrun.plan.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import longrun.Samples;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The schema of the format, entries set in a plan, and where a document has what a plan holds. */
class PlanSchemaTest {

    private final ObjectNode schema = PlanSchema.write();

    @Test
    void theSchemaIsAnObjectThatRequiresTheFormatAlone() {
        assertThat(schema.at("/$schema").asText()).isEqualTo("https://json-schema.org/draft/2020-12/schema");
        assertThat(schema.at("/title").asText()).endsWith("longrun-plan/1");
        assertThat(schema.at("/description").asText()).contains("a number and a unit");
        assertThat(schema.at("/type").asText()).isEqualTo("object");
        assertThat(schema.at("/required").toString()).isEqualTo("[\"format\"]");
        assertThat(schema.at("/properties/format/const").asText()).isEqualTo("longrun-plan/1");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
        /properties/name                  | {"anyOf":[{"type":"string","description":"a text"},{"const":"none"},{"type":"null"}]}
        /properties/code                  | {"anyOf":[{"$ref":"#/$defs/Code"},{"type":"null"}]}
        /properties/sections              | {"anyOf":[{"type":"array","items":{"$ref":"#/$defs/Section"}},{"$ref":"#/$defs/Section"},{"type":"null"}]}
        /properties/useMemoryTables       | {"anyOf":[{"type":"boolean"},{"const":"none"},{"type":"null"}]}
        /properties/prices                | {"anyOf":[{"type":"object","additionalProperties":{"type":"number","minimum":0}},{"type":"null"}]}
        /$defs/Section/properties/id      | {"type":"string"}
        /$defs/Section/properties/tube    | {"anyOf":[{"enum":["K","L","M","ACR"]},{"const":"none"},{"type":"null"}]}
        /$defs/Section/properties/ends/anyOf/0/anyOf/0 | {"type":"array","items":{"type":"string","description":"a text"}}
        /$defs/Section/properties/ends/anyOf/0/anyOf/1 | {"type":"string","description":"a text"}
        /$defs/Section/properties/legs/anyOf/0/anyOf/1 | {"type":"string","description":"a leg, such as north 12 ft, or 12 ft"}
        /$defs/Section/properties/passes/anyOf/0/anyOf/1 | {"$ref":"#/$defs/Pass"}
        /$defs/Section/properties/fittings/anyOf/0/properties/tee-branch | {"type":"integer","minimum":0}
        /$defs/Section/properties/fittings/anyOf/0/additionalProperties | false
        /$defs/Tank/properties/gaugeDate/anyOf/0/description | "a date, such as 2026-10-01"
        /$defs/Draw/properties/start/anyOf/0/description | "a time of day, such as 19:00"
        /$defs/Section/properties/depth/anyOf/0/description | "a distance with its unit, such as 14 ft, or > 25 ft when it is only known to be more"
        /properties/fittingAllowance/anyOf/0/description | "none, counted, or a share such as 20 %"
        /$defs/Tank/properties/gauge/anyOf/0/description | "a share such as 62 %, or a cylinder's weight of propane such as 40 lb"
        """)
    void eachEntryIsDescribedByItsKind(String pointer, String json) throws Exception {
        assertThat(schema.at(pointer)).isEqualTo(PlanReader.tree(json));
    }

    @Test
    void sizesThatCanBeHadAreListsByMaterial() {
        JsonNode sizes = schema.at("/properties/availableSizes/anyOf/0");
        assertThat(sizes.at("/properties").fieldNames()).toIterable().contains("steel", "pe-pipe");
        assertThat(sizes.at("/properties/steel/anyOf/0/type").asText()).isEqualTo("array");
        assertThat(sizes.at("/additionalProperties").asBoolean(true)).isFalse();
    }

    @Test
    void aQuantityIsDescribedWithItsUnits() {
        assertThat(schema.at("/$defs/Regulator/properties/outlet/anyOf/0/description")
                        .asText())
                .startsWith("a pressure with its unit (")
                .contains("psi");
    }

    private static final String PLAN = "{\"a\":{\"b\":1},\"list\":[1,2,3]}";

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
        {"/a/b":2}         | {"a":{"b":2},"list":[1,2,3]}
        {"/a/c":2}         | {"a":{"b":1,"c":2},"list":[1,2,3]}
        {"/a/b":null}      | {"a":{},"list":[1,2,3]}
        {"/list/2":9}      | {"a":{"b":1},"list":[1,2,9]}
        {"/a":5,"/list":6} | {"a":5,"list":6}
        {}                 | {"a":{"b":1},"list":[1,2,3]}
        """)
    void anEntryIsSetAndNullTakesItAway(String entries, String plan) throws Exception {
        assertThat(PlanReader.tree(PlanWith.entries(PLAN, entries))).isEqualTo(PlanReader.tree(plan));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
        {"/list/3":9}    | no place for /list/3
        {"/list/0":null} | no place for /list/0
        {"/x/y":1}       | no place for /x/y
        {"/a/b/c":1}     | no place for /a/b/c
        {                | this is not JSON
        """)
    void whatHasNoPlaceIsRefused(String entries, String words) {
        assertThatThrownBy(() -> PlanWith.entries(PLAN, entries))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(words);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
        'tank':{'count':1}                             | /tank/count           | /tank/count
        'tank':[{'count':1}]                           | /tank/count           | /tank/0/count
        'tank':[{'count':1}]                           | /tank/0/count         | /tank/0/count
        'tanks':[{'count':1}]                          | /tank/count           | /tanks/0/count
        'tanks':[{'count':1}]                          | /tank                 | /tanks/0
        'tanks':{'count':1}                            | /tank/count           | /tanks/count
        'name':'x'                                     | /tank/count           | /tank/count
        'tank':[{'count':1}]                           | /tankage              | /tankage
        'sections':{'id':'A','legs':'2 ft'}            | /sections/0/legs/0    | /sections/legs
        'sections':{'id':'A','legs':'2 ft'}            | /sections/0/legs      | /sections/legs
        'sections':[{'id':'A','legs':'2 ft'}]          | /sections/0/legs/0    | /sections/0/legs
        'sections':[{'id':'A','legs':['2 ft']}]        | /sections/0/legs/0    | /sections/0/legs/0
        'sections':{'id':'A','legs':['2 ft','3 ft']}   | /sections/0/legs/1    | /sections/legs/1
        'sections':{'id':'A'}                          | /appliances/0/input   | /appliances/0/input
        'sections':{'id':'A'}                          | /sections/1/id        | /sections/1/id
        """)
    void aPointerNamesTheEntryAsTheDocumentWritesIt(String plan, String inFull, String written) {
        Reading reading = PlanReader.read("{\"format\":\"longrun-plan/1\"," + plan.replace('\'', '"') + "}");
        assertThat(reading.errors()).isEmpty();
        assertThat(reading.written().pointer(inFull)).isEqualTo(written);
    }

    /** Items that can't be read keep their place in the document's list. */
    @Test
    void aPointerCountsTheItemsThatCannotBeReadToo() {
        StringBuilder ten = new StringBuilder("7");
        for (int n = 0; n < 10; n++) {
            ten.append(",{\"id\":\"s").append(n).append("\",\"legs\":\"2 ft\"}");
        }
        Reading reading = PlanReader.read("{\"format\":\"longrun-plan/1\",\"sections\":[" + ten + "]}");
        assertThat(reading.errors()).extracting(PlanError::pointer).containsExactly("/sections/0");
        assertThat(reading.written().pointer("/sections/0/id")).isEqualTo("/sections/1/id");
        assertThat(reading.written().pointer("/sections/9/id")).isEqualTo("/sections/10/id");
        assertThat(reading.written().pointer("/sections/0/legs/0")).isEqualTo("/sections/1/legs");
    }

    @ParameterizedTest
    @CsvSource({
        "/sections/0/capped, true",
        "/sections/0/legs, false",
        "/appliances/0/connection/1/sameRoom, true",
        "/appliances/0/connection, false",
        "/use/hotWater/storage/elementOn, true",
        "/prices/steel, false",
        "/sections/0/nothing, false",
        "/sections/0/id/more, false",
        "'', false"
    })
    void someEntriesAreAYesOrANo(String pointer, boolean yesOrNo) {
        assertThat(YesOrNo.is(pointer)).isEqualTo(yesOrNo);
    }

    @Test
    void theSamplePlanIsReadFromItsText() {
        assertThat(PlanReader.read(Samples.text("sample-plan.json")).written().pointer("/sections/0/id"))
                .isEqualTo("/sections/0/id");
    }
}
