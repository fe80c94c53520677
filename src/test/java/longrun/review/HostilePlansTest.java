package longrun.review;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import longrun.PlanCount;
import longrun.Samples;
import longrun.plan.json.Reading;
import longrun.review.json.ReviewJson;
import longrun.sizing.RandomPlans;
import org.junit.jupiter.api.Test;

/** Plans meant to break the program: read or refused, never a crash, never a pass by accident. */
class HostilePlansTest {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String[] JUNK = {
        "null",
        "\"none\"",
        "\"\"",
        "\"NaN\"",
        "-1",
        "1e308",
        "\"1e5 ft\"",
        "{}",
        "[]",
        "[[]]",
        "true",
        "\"> 3 ft\"",
        "\"99999999999999999999 ft\"",
        "\"0 psi\"",
        "\"tank\"",
        "\"\\u0000\"",
        "\"\\uD83D\"",
        "{\"none\":\"none\"}",
        "[null,null]",
        "\"3/0 in\"",
        "\"<script>\""
    };

    /** Any entry replaced by anything, of the sample and random plans. */
    @Test
    void anyEntryReplacedByAnythingIsReadOrRefused() throws Exception {
        long seed = 20_261_001;
        Random random = new Random(seed);
        int read = 0;
        int plans = PlanCount.HOSTILE.plans();
        for (int k = 0; k < plans; k++) {
            String plan = k % 2 == 0 ? Samples.text("sample-plan.json") : RandomPlans.json(k, 12);
            JsonNode tree = JSON.readTree(plan);
            int times = 1 + random.nextInt(2);
            for (int t = 0; t < times; t++) {
                spoil(tree, random);
            }
            Reading reading = FullPlanReader.read(tree.toString());
            assertThat(reading.plan().isPresent())
                    .as("seed %d, round %d", seed, k)
                    .isEqualTo(reading.errors().isEmpty());
            if (reading.plan().isPresent()) {
                read++;
                ReviewJson.write(
                        Reviewer.standard().review(reading.plan().get(), ReviewParts.ALL), reading.unread(), true);
            } else {
                assertThat(reading.errors())
                        .allSatisfy(e -> assertThat(e.message()).isNotBlank());
            }
        }
        assertThat(read).isBetween(plans / 10, plans * 9 / 10);
    }

    private static void spoil(JsonNode tree, Random random) throws Exception {
        List<Runnable> spots = new ArrayList<>();
        int which = random.nextBoolean() ? random.nextInt(2) : random.nextInt(JUNK.length);
        JsonNode junk = JSON.readTree(JUNK[which]);
        collect(tree, junk, spots);
        if (!spots.isEmpty()) {
            spots.get(random.nextInt(spots.size())).run();
        }
    }

    private static void collect(JsonNode node, JsonNode junk, List<Runnable> spots) {
        if (node instanceof ObjectNode object) {
            object.fieldNames().forEachRemaining(f -> {
                if (!f.equals("format")) {
                    spots.add(() -> object.set(f, junk));
                }
            });
        }
        if (node instanceof ArrayNode array) {
            for (int i = 0; i < array.size(); i++) {
                int at = i;
                spots.add(() -> array.set(at, junk));
            }
        }
        node.forEach(child -> collect(child, junk, spots));
    }

    /** Every entry of the sample left out, one at a time and all together: nothing is passed for want of an entry. */
    @Test
    void anEntryLeftOutNeverRaisesASizeToEnough() throws Exception {
        JsonNode whole = JSON.readTree(Samples.text("sample-plan.json"));
        List<String> pointers = new ArrayList<>();
        leaves(whole, "", pointers);
        for (String pointer : pointers) {
            JsonNode lacking = whole.deepCopy();
            int slash = pointer.lastIndexOf('/');
            JsonNode parent = lacking.at(pointer.substring(0, slash));
            if (!(parent instanceof ObjectNode object) || pointer.equals("/format")) {
                continue;
            }
            object.remove(pointer.substring(slash + 1));
            Reading reading = FullPlanReader.read(lacking.toString());
            if (reading.plan().isPresent()) {
                JsonNode review = ReviewJson.write(
                        Reviewer.standard().review(reading.plan().get(), ReviewParts.ALL), List.of(), false);
                review.path("outlets").forEach(o -> {
                    if (pointer.endsWith("minInlet") || pointer.endsWith("maxInlet")) {
                        assertThat(o.path("status").asText()).as(pointer).isNotEqualTo("enough");
                    }
                });
            }
        }
        assertThat(pointers).hasSizeGreaterThan(100);
    }

    private static void leaves(JsonNode node, String pointer, List<String> out) {
        if (node.isValueNode()) {
            out.add(pointer);
        }
        node.fields().forEachRemaining(e -> leaves(e.getValue(), pointer + "/" + e.getKey(), out));
        for (int i = 0; node.isArray() && i < node.size(); i++) {
            leaves(node.get(i), pointer + "/" + i, out);
        }
    }

    /** Below the service there is no limit of depth: a chain of 100,000 sections. */
    @Test
    void aChainOfAHundredThousandSectionsIsSized() {
        Review review = Reviewer.standard().review(Chains.chain(100_000), ReviewParts.PIPING);
        assertThat(review.sizing().section(99_999).size()).contains("1/2");
        assertThat(review.sizing().stage(0).longestRun().orElseThrow().feet()).isBetween(999.9, 1000.1);
    }
}
