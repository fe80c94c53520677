package longrun.finding;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import longrun.plan.PlanPath;
import longrun.plan.json.PlanSchema;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every entry of a plan has a name that a person reads. */
class EntryNameTest {

    private static void collect(JsonNode schema, Set<String> out) {
        schema.path("properties").fieldNames().forEachRemaining(out::add);
        schema.forEach(part -> collect(part, out));
    }

    private static java.util.Map<String, String> called() {
        return java.util.stream.Stream.of("words/entries.csv", "words/appliance.csv")
                .flatMap(f -> longrun.origin.DataFile.read(f).rows().stream())
                .filter(r -> !r.text("called").isEmpty())
                .collect(Collectors.toMap(r -> r.text("entry"), r -> r.text("called")));
    }

    @Test
    void everyEntryOfAPlanIsCalledSomethingAndNothingElseIs() {
        Set<String> entries = new TreeSet<>();
        collect(PlanSchema.write(), entries);
        Set<String> called = called().keySet().stream()
                .map(e -> e.substring(e.indexOf('/') + 1))
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(called).isEqualTo(entries);
        assertThat(called().values()).allMatch(words -> words.matches("[A-Za-z0-9][A-Za-z0-9' -]*[a-zA-Z]"));
        assertThat(called().values()).noneMatch(words -> words.matches(".*[a-z][A-Z].*|.*[a-z]-to-[a-z].*"));
    }

    @ParameterizedTest
    @CsvSource({
        "/appliances/0/minInlet, least inlet pressure",
        "/regulators/1/setting, where it hangs",
        "/sections/1/setting, where it runs",
        "/sections/1/legs/2, legs",
        "/sections/0/passes/0/belowGrade, below the ground",
        "/rooms/0/belowGrade, floor below the ground",
        "/site/unreachable/from, first day without trucks",
        "/nothingOfAPlan, nothingOfAPlan"
    })
    void whereItStandsDecidesWhereOneNameMeansTwoThings(String pointer, String called) {
        assertThat(EntryName.of(PlanPath.of(pointer))).isEqualTo(called);
    }

    @Test
    void whatIsEnteredIsSaidAsPeopleSayIt() {
        assertThat(EntryName.entered("underEaves", "false")).isEqualTo("(under the eaves: no)");
        assertThat(EntryName.entered("vent", "direct-vent")).isEqualTo("(vent: direct vent)");
        assertThat(EntryName.spoken("6-1/2 ft")).isEqualTo("6-1/2 ft");
    }
}
