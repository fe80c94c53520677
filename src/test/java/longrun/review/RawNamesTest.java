package longrun.review;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import longrun.Samples;
import longrun.draft.demo.DemoHouse;
import longrun.finding.Finding;
import longrun.plan.json.PlanReader;
import org.junit.jupiter.api.Test;

/** No finding shows a name of the format: of an entry, a choice or a rule. Houses: whole, and with a part of them missing. */
class RawNamesTest {

    private static final ObjectMapper JSON = new ObjectMapper();

    private static List<String> raw(String where, JsonNode plan) {
        List<String> out = new ArrayList<>();
        PlanReader.read(plan.toString()).plan().ifPresent(p -> {
            for (Finding f : Reviewer.standard().review(p, ReviewParts.ALL).findings()) {
                for (String text :
                        List.of(f.found(), f.required(), f.remedy(), f.ask().orElse(""))) {
                    if (!RawNames.in(text).isEmpty()) {
                        out.add(where + " " + f.rule() + ": " + text);
                    }
                }
            }
        });
        return out;
    }

    @Test
    void noFindingOfAHouseWholeOrDamagedShowsANameOfTheFormat() throws Exception {
        Set<String> found = new TreeSet<>();
        for (String house : List.of(DemoHouse.json(), Samples.text("rules/whole-house.json"))) {
            ObjectNode whole = (ObjectNode) JSON.readTree(house);
            found.addAll(raw("whole", whole));
            for (String entry : List.of("regulators", "sections", "appliances", "rooms", "tank", "use", "site")) {
                ObjectNode without = whole.deepCopy();
                without.remove(entry);
                found.addAll(raw("without " + entry, without));
                ObjectNode bare = whole.deepCopy();
                if (bare.path(entry) instanceof ArrayNode list) {
                    for (JsonNode item : list) {
                        ((ObjectNode) item).retain("id");
                    }
                    found.addAll(raw("bare " + entry, bare));
                }
            }
        }
        assertThat(found).isEmpty();
    }
}
