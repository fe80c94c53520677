package longrun.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import longrun.rules.limit.RuleFact;
import longrun.rules.limit.RuleFacts;
import longrun.rules.limit.Thresholds;
import longrun.rules.shape.Rule;
import org.junit.jupiter.api.Test;

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
        Files.writeString(file, table);
        assertThat(Files.readAllLines(file)).hasSize(RuleFacts.all().size() + 2);
    }
}
