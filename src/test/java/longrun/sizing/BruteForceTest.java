package longrun.sizing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.Map;
import longrun.Samples;
import longrun.capacity.CapacityTables;
import longrun.checked.Ran;
import longrun.checked.SecondWay;
import longrun.piping.Piping;
import org.junit.jupiter.api.Test;

/** An independent reading of the rule text gives the same row and size for every section of random plans. */
class BruteForceTest {

    private static final long PLANS = Ran.count("sizing");
    private static final long FIRST_SEED = SecondWay.get("sizing").seed();

    @Test
    void anIndependentReadingOfTheRuleTextAgrees() throws Exception {
        Map<String, Integer> seen = new HashMap<>();
        for (long seed = FIRST_SEED; seed < FIRST_SEED + PLANS; seed++) {
            String json = RandomPlans.json(seed, 18);
            Sizing sizing = Sizing.of(Piping.of(Samples.plan(json)), CapacityTables.standard());
            Map<String, String> expected = new RuleTextReading(json).answers();
            for (int i = 0; i < sizing.piping().sectionCount(); i++) {
                String id = sizing.piping().section(i).id();
                String actual = ours(sizing, i);
                seen.merge(actual.replaceAll("/.*", ""), 1, Integer::sum);
                assertThat(actual)
                        .as("seed %d, section %s of %s", seed, id, json)
                        .isEqualTo(expected.get(id));
            }
        }
        // the plans reach every kind of answer and many rows
        assertThat(seen).containsKeys("unknown", "no-size").hasSizeGreaterThan(12);
        assertThat(seen.keySet()).anyMatch(k -> k.startsWith("so far "));
        Ran.told("sizing", PLANS, FIRST_SEED, 0);
    }

    private static String ours(Sizing sizing, int index) {
        SectionSize s = sizing.section(index);
        String soFar = sizing.isProvisional(index) ? "so far " : "";
        return switch (s.status()) {
            case UNKNOWN -> "unknown";
            case NO_SIZE -> "no-size";
            case SIZED, ADEQUATE, UNDERSIZED ->
                s.neededSize()
                        .map(n -> soFar + s.rowRun().orElseThrow().feet() + "/" + n)
                        .orElse("no-size");
        };
    }
}
