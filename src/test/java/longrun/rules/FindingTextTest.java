package longrun.rules;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import longrun.Samples;
import longrun.finding.EntryName;
import longrun.finding.Finding;
import longrun.finding.Severity;
import longrun.origin.Confidence;
import longrun.rules.limit.Threshold;
import longrun.rules.shape.House;
import org.junit.jupiter.api.Test;

/** A finding names the value entered, the value required with its unit, the reference and where it is mended. */
class FindingTextTest {

    private static final Pattern WEASEL =
            Pattern.compile("\\b(may|should be checked|invalid|error|please)\\b", Pattern.CASE_INSENSITIVE);

    private record Found(JsonNode plan, Finding finding) {}

    /** Every finding of every row of the tables of limits. */
    private static final List<Found> ALL = Boundary.all().stream()
            .map(row -> Edits.text("whole-house.json", row.edit()))
            .flatMap(text -> Rules.check(House.of(Samples.plan(text))).findings().stream()
                    .map(f -> new Found(Edits.read(text), f)))
            .toList();

    @Test
    void findingSaysWhatIsAndWhatMustBe() {
        assertThat(ALL).hasSizeGreaterThan(150).allSatisfy(found -> {
            Finding f = found.finding();
            assertThat(f.found()).isNotBlank().doesNotContain("{");
            assertThat(f.required()).isNotBlank().doesNotContain("{");
            assertThat(f.reference()).isNotBlank();
            assertThat(f.remedy()).isNotBlank().doesNotContain("{").endsWith(".");
            assertThat(f.ask().orElse("?")).doesNotContain("{").endsWith("?");
            assertThat(Stream.of(f.found(), f.required(), f.remedy(), f.ask().orElse("")))
                    .noneMatch(text -> WEASEL.matcher(text).find());
        });
    }

    @Test
    void valueEnteredStandsInTheFinding() {
        assertThat(ALL.stream().filter(f -> f.finding().severity() != Severity.NOTE))
                .allSatisfy(found -> {
                    JsonNode entry = found.plan().at(found.finding().field());
                    if (entry.isValueNode() && !entry.isMissingNode()) {
                        assertThat(EntryName.spoken(found.finding().found()))
                                .contains(EntryName.spoken(entry.asText()));
                    }
                });
    }

    @Test
    void fieldIsAnEntryOrCanBeAdded() {
        assertThat(ALL).allSatisfy(found -> {
            JsonPointer field = JsonPointer.compile(found.finding().field());
            JsonNode there = found.plan().at(field);
            boolean canBeAdded = found.plan().at(field.head()).isObject()
                    || List.of("/code/profile", "/site/mainShutoff/outdoors").contains(field.toString());
            assertThat(!there.isMissingNode() || canBeAdded)
                    .as(field.toString())
                    .isTrue();
        });
    }

    @Test
    void limitFromMemoryIsBindingUntilTheAuthoritySaysOtherwise() {
        assertThat(ALL.stream()
                        .map(Found::finding)
                        .filter(f ->
                                f.confidence() == Confidence.MEMORY && !f.rule().equals("entry-missing")))
                .isNotEmpty()
                .allMatch(f -> f.required().contains(Threshold.FROM_MEMORY));
    }

    @Test
    void distanceRequiredStandsWithItsUnit() {
        Finding f = Rules.check(Edits.house("whole-house.json", "/tank/toBuilding = \"9.9 ft\""))
                .findings()
                .get(0);
        assertThat(f.found()).isEqualTo("The tank is 9.9 ft from the nearest building");
        assertThat(f.required()).isEqualTo("the tank at least 10 ft from a building");
        assertThat(f.reference() + ", " + f.edition()).isEqualTo("NFPA 58 table 6.4.1.1, 2020");
        assertThat(f.field()).isEqualTo("/tank/toBuilding");
        assertThat(f.remedy()).isEqualTo("Set the tank 10 ft or more from the nearest building.");
    }

    @Test
    void findingsStandInTheOrderOfThePlan() {
        List<String> places = Rules.check(Edits.house(
                        "whole-house.json",
                        "/tank/toBuilding = \"9 ft\" & /appliances/0/gas = \"natural\" & /sections/6/capped = false"
                                + " & /regulators/1/ventToOpening = \"2 ft\" & /site/mainShutoff gone & /code gone"))
                .findings()
                .stream()
                .map(Finding::at)
                .toList();
        assertThat(places).containsExactly("plan", "site", "R2", "E", "heater", "tank");
    }
}
