package longrun.draft.entry;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import longrun.plan.json.PlanReader;
import org.junit.jupiter.api.Test;

/** What a person types comes to stand in the draft, and goes from it without leaving a husk. */
class DraftTreeTest {

    private static ObjectNode draft(String json) throws JsonProcessingException {
        return (ObjectNode) PlanReader.tree(json);
    }

    @Test
    void whatHoldsAnEntryIsMade() throws JsonProcessingException {
        ObjectNode draft = draft("{}");
        DraftTree.put(draft, "/appliances/1/connection/0/size", TextNode.valueOf("1/2"));
        DraftTree.put(draft, "/prices/steel 1~12", TextNode.valueOf("2.10"));
        assertThat(draft)
                .isEqualTo(draft("{\"appliances\":[{},{\"connection\":[{\"size\":\"1/2\"}]}],"
                        + "\"prices\":{\"steel 1/2\":\"2.10\"}}"));
    }

    @Test
    void whatHoldsNothingMoreGoesButNeverAnItemOfAList() throws JsonProcessingException {
        ObjectNode draft = draft("{\"site\":{\"mainShutoff\":{\"distance\":\"3 ft\"}},\"sections\":[{\"id\":\"A\"}]}");
        DraftTree.remove(draft, "/site/mainShutoff/distance");
        DraftTree.remove(draft, "/sections/0/id");
        DraftTree.remove(draft, "/sections/7/id");
        DraftTree.remove(draft, "/tank/gauge");
        assertThat(draft).isEqualTo(draft("{\"sections\":[{}]}"));
    }

    @Test
    void anEntryHasAPlaceWhileTheThingItIsOfIsThere() throws JsonProcessingException {
        ObjectNode draft = draft("{\"sections\":[{\"id\":\"A\",\"legs\":[\"3 ft\"]}]}");
        assertThat(DraftTree.holds(draft, "/sections/0/material")).isTrue();
        assertThat(DraftTree.holds(draft, "/sections/1/material")).isFalse();
        assertThat(DraftTree.holds(draft, "/site/elevation")).isTrue();
        assertThat(DraftTree.entry(draft, "/sections/0/legs/0")).contains("/sections/0/legs");
        assertThat(DraftTree.entry(draft, "/sections/0")).isEmpty();
        assertThat(DraftTree.entry(draft, "")).isEmpty();
    }
}
