package longrun.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import longrun.Samples;
import longrun.review.json.ReviewJson;
import org.junit.jupiter.api.Test;

/** Hot water in the review, by the names of the plan format. */
class HotWaterReviewTest {

    private static JsonNode review(String plan) {
        return ReviewJson.write(Reviewer.standard().review(Samples.plan(plan), ReviewParts.ALL), List.of(), true);
    }

    @Test
    void eachDrawIsToldByTheMinuteInEveryArrangement() {
        JsonNode json = review(Samples.text("sample-plan.json"));
        JsonNode events = json.at("/hotWater/events");
        assertThat(events).hasSize(3);
        for (JsonNode e : events) {
            assertThat(e.path("name").asText()).isEqualTo("evening showers");
            assertThat(e.path("outletF")).hasSize(20);
            assertThat(e.path("fixtureF")).hasSize(20);
            assertThat(e.path("inputBtuh")).hasSize(20);
            assertThat(e.path("minutesComfortable").isNumber()).isTrue();
            assertThat(e.path("propaneGal").isNumber()).isTrue();
        }
        assertThat(events.findValuesAsText("arrangement")).containsExactly("series", "on-demand-only", "storage-only");
        assertThat(json.at("/hotWater/maxFlowGpm")).hasSize(12);
        assertThat(json.at("/hotWater/maxFixtureGpm")).hasSize(12);
        assertThat(json.at("/hotWater/mainsF")).hasSize(12);
        assertThat(json.at("/fuel/arrangements/on-demand-only").asDouble())
                .isCloseTo(
                        json.at("/hotWater/arrangements/on-demand-only/propaneGal")
                                .asDouble(),
                        within(1e-5));
        assertThat(json.at("/origin").has("/hotWater/events/0/fixtureF/3")).isTrue();
    }

    @Test
    void aStandInIsANoteAtItsField() {
        String plan = Samples.text("sample-plan.json").replace("\"activation\": \"0.5 gal/min\", ", "");
        List<String> fields = review(plan).at("/findings").findValues("field").stream()
                .map(JsonNode::asText)
                .toList();
        assertThat(fields).contains("/use/hotWater/onDemand/activation");
        List<String> before = review(Samples.text("sample-plan.json")).at("/findings").findValues("field").stream()
                .map(JsonNode::asText)
                .toList();
        assertThat(before).noneMatch(f -> f.startsWith("/use/hotWater/onDemand"));
    }

    @Test
    void aTankThatNeverGetsHotAgainStandsLukewarm() {
        String plan = Samples.text("sample-plan.json")
                .replace("\"dailyVolume\": \"55 gal\"", "\"dailyVolume\": \"60 gal\"")
                .replace("\"5000 Btu/h\"", "\"1000 Btu/h\"");
        assertThat(review(plan).at("/findings").findValuesAsText("rule")).contains("storage-lukewarm");
        assertThat(review(Samples.text("sample-plan.json")).at("/findings").findValuesAsText("rule"))
                .doesNotContain("storage-lukewarm");
    }

    @Test
    void pipingAloneLeavesHotWaterOut() {
        JsonNode json =
                ReviewJson.write(Reviewer.standard().review(Samples.sample(), ReviewParts.PIPING), List.of(), false);
        assertThat(json.has("hotWater")).isFalse();
    }
}
