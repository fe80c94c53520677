package longrun.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import longrun.Samples;
import longrun.finding.Finding;
import org.junit.jupiter.api.Test;

/** One missing entry is asked for once, however many rules want it. */
class OneQuestionAnEntryTest {

    @Test
    void missingInputIsAskedOnce() {
        String plan = Samples.text("sample-plan.json").replace("\"input\": \"180000 Btu/h\",", "");
        List<String> asked = Reviewer.standard().review(Samples.plan(plan), ReviewParts.PIPING).findings().stream()
                .filter(f -> f.field().equals("/appliances/0/input"))
                .map(Finding::rule)
                .toList();
        assertThat(asked).containsExactly("entry-missing");
    }
}
