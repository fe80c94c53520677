package longrun.rules;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import longrun.Samples;
import longrun.finding.Finding;
import longrun.finding.Severity;
import longrun.plan.json.PlanReader;
import longrun.rules.limit.State;
import longrun.rules.shape.House;
import longrun.rules.shape.RuleState;
import org.junit.jupiter.api.Test;

/** Unknown is a third state: nothing missing is a pass. */
class UnknownFactsTest {

    private static final String NOTHING_KNOWN = """
            { "format": "longrun-plan/1",
              "regulators": [ { "id": "R1" }, { "id": "R2" } ],
              "sections": [ { "id": "A" }, { "id": "B" } ],
              "rooms": [ { "id": "room" } ],
              "appliances": [ { "id": "one" }, { "id": "two", "connection": [ {}, {} ] } ],
              "tank": {} }
            """;

    /** Where an entry absent is the ordinary case (the valve is at the appliance), the ordinary limit is broken. */
    private static final Set<String> DEFAULTED = Set.of("place");

    @Test
    void whereNothingIsKnownNoRuleHolds() {
        RuleReport report = Rules.check(House.of(Samples.plan(NOTHING_KNOWN)));
        assertThat(report.states()).extracting(RuleState::state).doesNotContain(State.HOLDS, State.BROKEN);
        assertThat(report.findings()).extracting(Finding::severity).containsOnly(Severity.NOTE);
    }

    @Test
    void anEmptyPlanOnlyAsksForTheCode() {
        RuleReport report = Rules.check(House.of(Samples.plan("{ \"format\": \"longrun-plan/1\" }")));
        assertThat(report.findings()).extracting(Finding::rule).containsExactly("entry-missing");
    }

    @Test
    void takingAnyOneFactAwayBreaksNothingAndNeverThrows() {
        List<String> leaves = new ArrayList<>();
        collect(Edits.read(Samples.text("rules/whole-house.json")), "", leaves);
        assertThat(leaves).hasSizeGreaterThan(150);
        for (String leaf : leaves) {
            PlanReader.read(Edits.text("whole-house.json", leaf + " gone"))
                    .plan()
                    .map(House::of)
                    .map(Rules::check)
                    .ifPresent(report -> assertThat(report.findings())
                            .as("without " + leaf)
                            .allMatch(f -> f.severity() == Severity.NOTE || DEFAULTED.contains(lastOf(leaf))));
        }
    }

    /** Many facts at once, drawn by a seed that a failure prints. */
    @Test
    void takingManyFactsAwayBreaksNothingAndNeverThrows() {
        List<String> leaves = new ArrayList<>();
        collect(Edits.read(Samples.text("rules/whole-house.json")), "", leaves);
        leaves.removeIf(leaf -> DEFAULTED.contains(lastOf(leaf)));
        for (long seed = 1; seed <= 200; seed++) {
            Random random = new Random(seed);
            List<String> drawn = new ArrayList<>(leaves);
            Collections.shuffle(drawn, random);
            String edits = drawn.subList(0, 1 + random.nextInt(60)).stream()
                    .map(leaf -> leaf + " gone")
                    .collect(Collectors.joining(" & "));
            RuleReport report = Rules.check(Edits.house("whole-house.json", edits));
            assertThat(report.findings()).as("seed " + seed).allMatch(f -> f.severity() == Severity.NOTE);
        }
    }

    @Test
    void everyQuestionNamesWhoCanAnswer() {
        RuleReport report = Rules.check(House.of(Samples.plan(NOTHING_KNOWN)));
        assertThat(report.findings()).allSatisfy(f -> {
            assertThat(f.ask()).isPresent();
            assertThat(f.askWhom()).isPresent();
        });
    }

    private static String lastOf(String pointer) {
        return pointer.substring(pointer.lastIndexOf('/') + 1);
    }

    private static void collect(JsonNode node, String pointer, List<String> leaves) {
        if (node.isObject()) {
            node.properties().forEach(e -> collect(e.getValue(), pointer + "/" + e.getKey(), leaves));
        } else if (node.isArray() && node.size() > 0 && node.get(0).isObject()) {
            for (int i = 0; i < node.size(); i++) {
                collect(node.get(i), pointer + "/" + i, leaves);
            }
        } else if (!pointer.endsWith("/id") && !pointer.equals("/format")) {
            leaves.add(pointer);
        }
    }
}
