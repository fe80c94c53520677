package longrun.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import longrun.Samples;
import longrun.finding.Citation;
import longrun.finding.Finding;
import longrun.finding.FindingBuilder;
import longrun.finding.RuleName;
import longrun.finding.Severity;
import longrun.origin.Confidence;
import longrun.plan.Plan;
import longrun.sizing.RandomPlans;
import org.junit.jupiter.api.Test;

/** What has no publication behind it is common practice, held from memory; only a publication is print. */
class FindingSourceTest {

    @Test
    void commonPracticeIsHeldFromMemory() {
        Finding f = FindingBuilder.finding(RuleName.ENTRY_MISSING, Severity.NOTE, "plan", Citation.commonPractice())
                .found("the site is not entered")
                .atEntry("/site");
        assertThat(f.reference()).isEqualTo("common practice");
        assertThat(f.confidence()).isEqualTo(Confidence.MEMORY);
    }

    @Test
    void aFindingSaysWhatWasFoundUnderARulesName() {
        FindingBuilder empty =
                FindingBuilder.finding(RuleName.ENTRY_MISSING, Severity.NOTE, "plan", Citation.commonPractice());
        assertThatThrownBy(() -> empty.atEntry("/site")).isInstanceOf(IllegalStateException.class);
        assertThatThrownBy(() -> new RuleName("Shutoff present")).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void noFindingOfAHouseIsCommonPracticeInPrint() {
        List<Plan> plans = new ArrayList<>(List.of(
                Samples.plan(
                        "{\"format\":\"longrun-plan/1\",\"sections\":[{\"id\":\"A\"}],\"appliances\":[{\"id\":\"r\"}]}"),
                Samples.sample()));
        for (int seed = 0; seed < 100; seed++) {
            plans.add(Samples.plan(RandomPlans.json(seed, 12)));
        }
        for (Plan plan : plans) {
            assertThat(Reviewer.standard().review(plan, ReviewParts.ALL).findings())
                    .filteredOn(f -> f.reference().equals("common practice"))
                    .noneMatch(f -> f.confidence() == Confidence.PRINT);
        }
    }
}
