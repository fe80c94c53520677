package longrun.draft.fill;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import longrun.review.FullPlanReader;
import longrun.words.UnitSystem;
import org.junit.jupiter.api.Test;

class FillErrorsTest {

    @Test
    void theLineAfterTheTwentySixthIsNotCalledLikeTheFirst() {
        assertThat(FillErrors.where("BURNS 0 INPUT")).startsWith("line a, ");
        assertThat(FillErrors.where("BURNS 25 INPUT")).startsWith("line z, ");
        assertThat(FillErrors.where("BURNS 26 INPUT")).startsWith("line a2, ");
    }

    @Test
    void aListOfMoreFillsThanAPlanTakesIsRefusedInWordsAndNotCutInSilence() {
        ObjectNode plan = JsonNodeFactory.instance.objectNode();
        plan.put("format", "longrun-plan/1");
        PastFillEntries.paste(plan, "2026-01-12 180\n".repeat(250), UnitSystem.CUSTOMARY);
        assertThat(FullPlanReader.read(plan).errors())
                .anySatisfy(e -> assertThat(e.message()).contains("more than a house has here"));
    }
}
