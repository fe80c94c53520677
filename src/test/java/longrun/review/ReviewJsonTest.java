package longrun.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.TimeZone;
import java.util.TreeMap;
import longrun.Samples;
import longrun.review.json.ReviewJson;
import longrun.sizing.RandomPlans;
import org.junit.jupiter.api.Test;

/** The review as other programs read it. */
class ReviewJsonTest {

    private static final ObjectMapper JSON = new ObjectMapper();

    private static ObjectNode review(String plan, ReviewParts parts, boolean origin) {
        return ReviewJson.write(Reviewer.standard().review(Samples.plan(plan), parts), List.of(), origin);
    }

    /** The figures printed with the sample plan, to the decimals printed there. */
    @Test
    void theSamplePlanGivesThePrintedReview() {
        JsonNode r = review(Samples.text("sample-plan.json"), ReviewParts.ALL, false);
        assertThat(r.at("/stages/0/loadBtuh").asDouble()).isEqualTo(245_000);
        assertThat(r.at("/stages/0/longestRunFt").asDouble()).isEqualTo(50.0);
        assertThat(r.at("/stages/0/longestRunTo").asText()).isEqualTo("R2");
        assertThat(r.at("/stages/1/longestRunFt").asDouble()).isEqualTo(30.0);
        assertThat(r.at("/stages/1/longestRunTo").asText()).isEqualTo("range");
        String[] sizes = {"1/2", "30", "30", "19"};
        double[] capacities = {1_630_000, 297_000, 297_000, 87_000};
        double[] drops = {Double.NaN, 0.18, 0.07, 0.14};
        for (int i = 0; i < sizes.length; i++) {
            JsonNode s = r.path("sections").get(i);
            assertThat(s.path("size").asText()).isEqualTo(sizes[i]);
            assertThat(s.path("capacityBtuh").asDouble()).isEqualTo(capacities[i]);
            assertThat(s.path("rowFt").asDouble()).isEqualTo(i == 0 ? 50 : 30);
            if (!Double.isNaN(drops[i])) {
                assertThat(s.path("dropInWc").asDouble()).isCloseTo(drops[i], within(0.005));
            }
        }
        assertThat(r.at("/sections/0/table").asText()).isEqualTo("pe-pipe-10psi-1psi-computed");
        assertThat(r.at("/sections/0/confidence").asText()).isEqualTo("computed");
        assertThat(r.at("/sections/3/neededSize").asText()).isEqualTo("18");
        assertThat(r.at("/outlets/0/pressureInWc").asDouble()).isCloseTo(10.75, within(0.005));
        assertThat(r.at("/outlets/0/status").asText()).isEqualTo("enough");
        assertThat(r.at("/outlets/1/pressureInWc").asDouble()).isCloseTo(10.68, within(0.005));
        assertThat(r.at("/outlets/1/status").asText()).isEqualTo("unknown");
        assertThat(rules(r, "range")).contains("connector-capacity");
        JsonNode connector = finding(r, "connector-capacity", "range");
        assertThat(connector.path("severity").asText()).isEqualTo("note");
        assertThat(connector.path("field").asText()).isEqualTo("/appliances/1/connection/1/capacity");
    }

    private static List<String> rules(JsonNode review, String at) {
        List<String> out = new ArrayList<>();
        review.path("findings").forEach(f -> {
            if (f.path("at").asText().equals(at)) {
                out.add(f.path("rule").asText());
            }
        });
        return out;
    }

    private static JsonNode finding(JsonNode review, String rule, String at) {
        for (JsonNode f : review.path("findings")) {
            if (f.path("rule").asText().equals(rule) && f.path("at").asText().equals(at)) {
                return f;
            }
        }
        throw new AssertionError("no " + rule + " at " + at);
    }

    @Test
    void everyNumberOfAReviewSaysWhereItIsFrom() {
        List<String> plans = new ArrayList<>(List.of(Samples.text("sample-plan.json")));
        for (long seed = 1; seed <= 200; seed++) {
            plans.add(RandomPlans.json(seed, 18));
        }
        int numbers = 0;
        for (String plan : plans) {
            ObjectNode review = review(plan, ReviewParts.ALL, true);
            JsonNode origins = review.remove("origin");
            List<String> pointers = new ArrayList<>();
            numbers(review, JsonPointer.empty(), pointers);
            numbers += pointers.size();
            for (String pointer : pointers) {
                JsonNode origin = origins.path(pointer);
                assertThat(origin.path("how").asText()).as(pointer).isNotBlank();
                assertThat(origin.path("figure").asText()).as(pointer).isNotBlank();
                assertThat(origin.path("value").asText())
                        .as(pointer)
                        .isNotBlank()
                        .isNotEqualTo("unknown");
                entered(origin, pointer);
            }
        }
        assertThat(numbers).isGreaterThan(5000);
    }

    /** Down to what a person entered, everything carries how sure it is. */
    private static void entered(JsonNode origin, String pointer) {
        boolean typed = origin.path("how").asText().startsWith("entered");
        assertThat(typed || origin.has("confidence")).as(pointer + " " + origin).isTrue();
        origin.path("inputs").forEach(i -> entered(i, pointer));
    }

    private static void numbers(JsonNode node, JsonPointer pointer, List<String> out) {
        if (node.isNumber()) {
            out.add(pointer.toString());
        }
        if (node.isArray()) {
            for (int i = 0; i < node.size(); i++) {
                numbers(node.get(i), pointer.appendIndex(i), out);
            }
        }
        node.fields().forEachRemaining(e -> numbers(e.getValue(), pointer.appendProperty(e.getKey()), out));
    }

    @Test
    void theSameReviewInAnyCountryAndTimeZone() {
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        List<String> plans = new ArrayList<>(List.of(Samples.text("sample-plan.json")));
        for (long seed = 500; seed < 560; seed++) {
            plans.add(RandomPlans.json(seed, 18));
        }
        try {
            for (String plan : plans) {
                String here = review(plan, ReviewParts.ALL, true).toString();
                for (String tag : List.of("de-DE", "tr-TR", "ar-EG")) {
                    Locale.setDefault(Locale.forLanguageTag(tag));
                    TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
                    assertThat(review(plan, ReviewParts.ALL, true).toString()).isEqualTo(here);
                }
                Locale.setDefault(locale);
                TimeZone.setDefault(zone);
            }
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
    }

    @Test
    void theOrderOfThePlansListsChangesOnlyTheOrderOfTheReviews() throws Exception {
        for (long seed = 900; seed < 1100; seed++) {
            String plan = RandomPlans.json(seed, 18);
            JsonNode shuffled = JSON.readTree(plan);
            Random random = new Random(seed);
            for (String list : List.of("regulators", "sections", "appliances")) {
                List<JsonNode> items = new ArrayList<>();
                shuffled.path(list).forEach(items::add);
                Collections.shuffle(items, random);
                ((ArrayNode) shuffled.path(list)).removeAll().addAll(items);
            }
            JsonNode a = review(plan, ReviewParts.PIPING, false);
            JsonNode b = review(shuffled.toString(), ReviewParts.PIPING, false);
            assertThat(byId(a, "sections", "id")).as("seed " + seed).isEqualTo(byId(b, "sections", "id"));
            assertThat(byId(a, "outlets", "appliance")).as("seed " + seed).isEqualTo(byId(b, "outlets", "appliance"));
            assertThat(byId(a, "stages", "regulator")).as("seed " + seed).isEqualTo(byId(b, "stages", "regulator"));
            assertThat(a.path("connectedLoadBtuh")).isEqualTo(b.path("connectedLoadBtuh"));
            assertThat(findings(a)).as("seed " + seed).isEqualTo(findings(b));
        }
    }

    private static TreeMap<String, String> byId(JsonNode review, String list, String id) {
        TreeMap<String, String> out = new TreeMap<>();
        review.path(list).forEach(n -> out.put(n.path(id).asText(), n.toString()));
        return out;
    }

    private static List<String> findings(JsonNode review) {
        List<String> out = new ArrayList<>();
        review.path("findings")
                .forEach(f -> out.add(f.path("rule").asText() + "|"
                        + f.path("at").asText() + "|" + f.path("severity").asText() + "|"
                        + f.path("found").asText()));
        Collections.sort(out);
        return out;
    }

    @Test
    void aPlanWithNothingInItHasNoFigureButItsEmptySum() {
        JsonNode r = review("{\"format\":\"longrun-plan/1\"}", ReviewParts.ALL, false);
        assertThat(r.path("sections")).isEmpty();
        assertThat(r.path("connectedLoadBtuh").asDouble()).isZero();
        assertThat(r.path("findings"))
                .allSatisfy(f -> assertThat(f.path("severity").asText()).isEqualTo("note"));
    }
}
