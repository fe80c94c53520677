package longrun.fuel;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import longrun.Samples;
import longrun.finding.Finding;
import longrun.finding.Severity;
import longrun.review.ReviewParts;
import longrun.review.Reviewer;
import longrun.tank.Houses;
import org.junit.jupiter.api.Test;

/** What the year asks, and what stands in for entries: said at the field, the same in any order of the lists. */
class YearQuestionsTest {

    private static List<Finding> year(String json) {
        return Reviewer.standard().review(Samples.plan(json), ReviewParts.ALL).findings().stream()
                .filter(f -> f.field().startsWith("/use") || f.field().startsWith("/site/"))
                .toList();
    }

    @Test
    void startingValuesAreSaidAtTheirFields() {
        String json = Houses.ORCHARD
                .replace("\"indoorTemp\": \"68 degF\",", "")
                .replace(", \"balanceTemp\": \"62 degF\"", "")
                .replace("\"coldWater\": { \"source\": \"well\", \"temp\": \"51 degF\" }, ", "");
        assertThat(json).doesNotContain("balanceTemp", "indoorTemp", "coldWater");
        assertThat(year(json))
                .filteredOn(f -> f.found().contains("none is entered"))
                .allMatch(f -> f.severity() == Severity.NOTE)
                .extracting(Finding::field)
                .containsExactly("/use/indoorTemp", "/use/heating/0/balanceTemp", "/site/coldWater/source");
        assertThat(year(Houses.ORCHARD)).noneMatch(f -> f.found().contains("none is entered"));
    }

    @Test
    void everyApplianceWithoutAUseIsNamed() {
        String json = Houses.ORCHARD.replace(
                "{ \"id\": \"range\"",
                "{ \"id\": \"dryer\", \"kind\": \"clothes-dryer\", \"input\": \"22000 Btu/h\" }, { \"id\": \"gen\","
                        + " \"kind\": \"standby-generator\", \"input\": \"180000 Btu/h\" }, { \"id\": \"range\"");
        String said = year(json).stream()
                .filter(f -> f.field().equals("/use/others"))
                .map(Finding::found)
                .reduce("", String::concat);
        assertThat(said).contains("dryer");
        assertThat(FuelYear.of(Samples.plan(json)).annualGal().missing())
                .anyMatch(m -> m.words().contains("gen"));
    }

    /** Lists shuffled by a seed: the same number of notes, each with the same words. */
    @Test
    void orderOfTheListsDoesNotChangeTheNotes() throws Exception {
        ObjectMapper mapper = new ObjectMapper();
        ObjectNode plan = (ObjectNode) mapper.readTree(Houses.ORCHARD);
        ArrayNode appliances = (ArrayNode) plan.get("appliances");
        for (String kind :
                List.of("clothes-dryer", "standby-generator", "space-heater", "storage-water-heater", "fireplace")) {
            appliances.addObject().put("id", "a-" + kind).put("kind", kind);
        }
        ((ObjectNode) plan.get("use")).withArray("others").addObject().put("appliance", "a-fireplace");
        ((ObjectNode) plan.get("use").get("hotWater")).remove("useTemp");
        List<String> before = words(plan.toString());
        assertThat(before).isNotEmpty();
        Random random = new Random(12);
        for (int i = 0; i < 20; i++) {
            shuffle(appliances, random);
            shuffle((ArrayNode) plan.get("use").get("others"), random);
            assertThat(words(plan.toString()))
                    .as("shuffle " + i + " of seed 12")
                    .isEqualTo(before);
        }
    }

    private static List<String> words(String json) {
        return Reviewer.standard().review(Samples.plan(json), ReviewParts.ALL).findings().stream()
                .filter(f -> f.rule().startsWith("tank-") || f.found().contains("of the year"))
                .map(f -> f.rule() + " " + f.found())
                .sorted()
                .toList();
    }

    private static void shuffle(ArrayNode list, Random random) {
        List<com.fasterxml.jackson.databind.JsonNode> all = new ArrayList<>();
        list.forEach(all::add);
        Collections.shuffle(all, random);
        list.removeAll();
        list.addAll(all);
    }
}
