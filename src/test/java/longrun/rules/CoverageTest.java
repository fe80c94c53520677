package longrun.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import longrun.rules.limit.RuleFact;
import longrun.rules.limit.RuleFacts;
import longrun.rules.limit.Thresholds;
import longrun.rules.shape.Rule;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every row of the rule facts is checked, or shown as information, or names the entry a plan does not hold. */
class CoverageTest {

    /** Rows a section of the rule facts has. */
    private static final Map<String, Integer> ROWS = Map.ofEntries(
            Map.entry("SV", 14),
            Map.entry("ST", 12),
            Map.entry("CN", 11),
            Map.entry("RG", 17),
            Map.entry("TR", 11),
            Map.entry("PI", 35),
            Map.entry("TE", 17),
            Map.entry("TK", 15),
            Map.entry("AL", 3),
            Map.entry("CA", 5),
            Map.entry("DM", 4),
            Map.entry("AD", 10),
            Map.entry("SZ", 13),
            Map.entry("VT", 5),
            Map.entry("CD", 1),
            Map.entry("FR", 1),
            Map.entry("WP", 1),
            Map.entry("HWS", 5));

    private static final List<String> RULES =
            Rules.all().stream().map(Rule::name).toList();

    @Test
    void everyFactOfEachSectionIsThere() {
        List<String> wanted = ROWS.entrySet().stream()
                .flatMap(e -> IntStream.rangeClosed(1, e.getValue())
                        .mapToObj(i -> String.format(Locale.ROOT, "%s-%02d", e.getKey(), i)))
                .toList();
        assertThat(RuleFacts.all()).extracting(RuleFact::id).containsAll(wanted).doesNotHaveDuplicates();
    }

    @Test
    void everyFactIsCheckedOrShownOrNamesWhatThePlanDoesNotHold() {
        assertThat(RuleFacts.all()).allSatisfy(f -> {
            assertThat(f.rules()).as(f.id()).isNotEmpty().isSubsetOf(RULES);
            if (f.use() != RuleFact.Use.CHECKED) {
                assertThat(f.why()).as(f.id()).isNotBlank();
            }
        });
    }

    /** Figures of other codes that a person enters as a local amendment decide then: SV-13, SV-14, ST-08, TR-09, TK-12. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "shutoff-within-reach|3 ft|/appliances/1/connection/0/distance = \"3.1 ft\"",
                "shutoff-within-reach|50 ft|/appliances/1/connection/0/distance = \"51 ft\"",
                "trap-nipple-length|3 in|/appliances/0/connection/1/nipple = \"2.9 in\"",
                "regulator-vent-intake|10 ft|/regulators/1/ventToIntake = \"9.9 ft\"",
                "regulator-vent-ignition|10 ft|/regulators/1/ventToIgnition = \"9.9 ft\"",
                "tank-relief-opening|6 ft|/tank/toOpeningBelow = \"5.9 ft\"",
                "tank-ignition-or-intake|12 ft|/tank/toIntake = \"11.9 ft\""
            })
    void aFigureOfAnotherCodeDecidesAsAnAmendment(String rule, String limit, String edit) {
        assertThat(PlantedFaultsTest.toMend("/code/amendments = [ { \"rule\": \"" + rule + "\", \"limit\": \"" + limit
                        + "\", \"source\": \"local code\" } ] & " + edit))
                .anyMatch(found -> found.startsWith(rule + " at "));
    }

    @Test
    void everyThresholdRestsOnAFactThatItsRuleChecks() {
        assertThat(Thresholds.builtIn().listAll()).allSatisfy(t -> {
            assertThat(RULES).contains(t.rule());
            assertThat(RuleFacts.all())
                    .as(t.rule() + " " + t.fact())
                    .anyMatch(f -> f.id().equals(t.fact())
                            && f.use() == RuleFact.Use.CHECKED
                            && f.rules().contains(t.rule()));
        });
    }

    @Test
    void everyRuleRestsOnAFact() {
        assertThat(RULES)
                .filteredOn(r -> !r.equals("entry-missing"))
                .allSatisfy(r -> assertThat(RuleFacts.of(r)).as(r).anyMatch(f -> f.use() == RuleFact.Use.CHECKED));
    }

    @Test
    void noFactNamesAPageOrAnAddress() {
        assertThat(RuleFacts.all())
                .extracting(f -> f.statement() + " " + f.numbers() + " " + f.where())
                .allSatisfy(text -> assertThat(text).doesNotContainPattern("\\[S\\d|www\\.|https?:|\\.com\\b"));
    }

    @Test
    void tableIsWrittenWithTheBuild() throws IOException {
        Map<RuleFact.Use, Long> counts = RuleFacts.all().stream()
                .filter(f -> ROWS.containsKey(f.id().replaceAll("-.*", "")))
                .collect(Collectors.groupingBy(RuleFact::use, TreeMap::new, Collectors.counting()));
        long held = counts.get(RuleFact.Use.CHECKED) + counts.get(RuleFact.Use.USED);
        assertThat(held).isGreaterThanOrEqualTo(150);
        String table = RuleFacts.all().stream()
                .map(f -> "| " + f.id() + " | " + f.statement() + " | " + f.where() + " | "
                        + f.confidence().written() + " | "
                        + f.use().written() + " | " + String.join(", ", f.rules()) + " | " + f.why() + " |\n")
                .collect(Collectors.joining(
                        "",
                        "| fact | what it says | where | confidence | here | rules | beside |\n"
                                + "| --- | --- | --- | --- | --- | --- | --- |\n",
                        ""));
        Path file = Path.of("target", "rules-coverage.md");
        String head = "# What becomes of each fact of the trade\n\n" + held + " of "
                + RuleFacts.all().size() + ": "
                + counts.get(RuleFact.Use.CHECKED) + " checked by a rule, " + counts.get(RuleFact.Use.USED)
                + " used by a figure, the test plan or a point before the valve. Not: "
                + counts.get(RuleFact.Use.NOT_HELD) + " that no entry of a plan shows, "
                + counts.get(RuleFact.Use.SHOWN) + " only shown.\n\n";
        Files.writeString(file, head + table);
        assertThat(Files.readAllLines(file)).hasSize(RuleFacts.all().size() + 6);
    }
}
