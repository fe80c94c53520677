package longrun.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import longrun.Samples;
import longrun.finding.Finding;
import longrun.finding.Severity;
import longrun.review.json.ReviewJson;
import longrun.rules.limit.State;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Nothing missing is a pass. Figures: 2018 IFGC Table 402.4(28), steel, 11 in. w.c. with 0.5 in. w.c.: at 60 ft 1/2
 * carries 110,000 and 3/4 231,000 Btu/h, at 70 ft 1/2 carries 101,000; 2018 IRC Table A.2.2: a screwed 1/2 elbow is 1.55
 * ft, a tee through the branch 3.10 ft.
 */
class MissingIsUnknownTest {

    private static final String REGULATOR =
            "{\"id\":\"R\",\"kind\":\"second-stage\",\"fedBy\":\"tank\",\"outlet\":\"11 in"
                    + " w.c.\",\"allowedDrop\":\"0.5 in w.c.\"%s}";
    private static final String LABEL = "\"gas\":\"propane\",\"minInlet\":\"8 in w.c.\",\"maxInlet\":\"14 in w.c.\"";

    private static String plan(String more, String regulator, String sections, String appliances) {
        return "{\"format\":\"longrun-plan/1\"" + more + ",\"regulators\":["
                + REGULATOR.formatted(regulator) + "],\"sections\":[" + sections + "],\"appliances\":[" + appliances
                + "]}";
    }

    private static String section(String id, String from, String legs) {
        return "{\"id\":\"" + id + "\"" + (from.isEmpty() ? "" : ",\"from\":\"" + from + "\"")
                + ",\"material\":\"steel\",\"legs\":[" + legs + "]}";
    }

    private static String appliance(String id, String on, String more) {
        return "{\"id\":\"" + id + "\",\"fedBy\":\"" + on + "\"," + LABEL + more + "}";
    }

    private static Review review(String plan) {
        return Reviewer.standard().review(Samples.plan(plan), ReviewParts.PIPING);
    }

    private static JsonNode json(String plan) {
        return ReviewJson.write(review(plan), List.of(), true);
    }

    private static String twoBranches(String fromOfC, String inputOfC) {
        return plan(
                ",\"fittingAllowance\":\"none\"",
                ",\"capacity\":\"400000 Btu/h\"",
                section("A", "R", "\"north 40 ft\"") + "," + section("B", "A", "\"east 10 ft\"") + ","
                        + section("C", fromOfC, "\"west 10 ft\""),
                appliance("heater", "B", ",\"kind\":\"storage-water-heater\",\"input\":\"40000 Btu/h\"") + ","
                        + appliance("range", "C", ",\"kind\":\"range\"" + inputOfC));
    }

    /** The load of a section that leaves nothing is in no sum: what is sized without it is sized so far. */
    @Test
    void sectionThatLeavesNothingMakesEverySizeASizeSoFar() {
        JsonNode whole = json(twoBranches("A", ",\"input\":\"65000 Btu/h\""));
        assertThat(whole.at("/stages/0/complete").asBoolean()).isTrue();
        assertThat(whole.at("/sections/0/provisional").isMissingNode()).isTrue();
        assertThat(whole.at("/outlets/0/status").asText()).isEqualTo("enough");
        assertThat(whole.at("/connectedLoadComplete").asBoolean()).isTrue();
        JsonNode loose = json(twoBranches("", ",\"input\":\"65000 Btu/h\""));
        assertThat(loose.at("/stages/0/complete").isBoolean()).isTrue();
        assertThat(loose.at("/stages/0/complete").asBoolean()).isFalse();
        assertThat(loose.at("/sections/0/provisional").asBoolean()).isTrue();
        assertThat(loose.at("/sections/1/provisional").asBoolean()).isTrue();
        assertThat(loose.at("/sections/2/status").asText()).isEqualTo("unknown");
        assertThat(loose.at("/connectedLoadComplete").asBoolean()).isFalse();
        assertThat(loose.at("/outlets/0/status").asText()).isEqualTo("unknown");
        assertThat(loose.at("/outlets/0/headroomBtuh").isMissingNode()).isTrue();
        assertThat(loose.at("/stages/0/headroomFt").isMissingNode()).isTrue();
        assertThat(review(twoBranches("", ",\"input\":\"65000 Btu/h\"")).findings())
                .anyMatch(f -> f.rule().equals("entry-missing")
                        && f.field().equals("/sections/2/from")
                        && f.found().contains("every size may still grow"));
        assertThat(review(twoBranches("", ",\"input\":\"65000 Btu/h\"")).rules().states())
                .filteredOn(s -> s.rule().equals("regulator-capacity"))
                .allMatch(s -> s.state() == State.ASKS);
    }

    /** A regulator that hangs on nothing may come upon any stage but its own. */
    @Test
    void regulatorThatHangsOnNothingMakesTheOtherStagesSizesSoFar() {
        String plan = twoBranches("A", ",\"input\":\"65000 Btu/h\"")
                .replace(
                        "}],\"sections\"",
                        "},{\"id\":\"S\",\"kind\":\"line\",\"outlet\":\"7 in w.c.\",\"allowedDrop\":"
                                + "\"0.5 in w.c.\"}],\"sections\"");
        JsonNode r = json(plan);
        assertThat(r.at("/stages/0/complete").asBoolean()).isFalse();
        assertThat(r.at("/sections/0/provisional").asBoolean()).isTrue();
        JsonNode alone = json(twoBranches("A", ",\"input\":\"65000 Btu/h\"").replace("\"fedBy\":\"tank\",", ""));
        assertThat(alone.at("/stages/0/complete").asBoolean()).isTrue();
        assertThat(alone.at("/outlets/0/status").asText())
                .as("its inlet is not known")
                .isEqualTo("unknown");
    }

    /** The fittings of a section that is still to grow count at a larger bore, and so lengthen every run. */
    @Test
    void inputNotKnownMakesTheSizesElsewhereInTheStageSizesSoFar() {
        JsonNode r = json(twoBranches("A", "").replace(",\"fittingAllowance\":\"none\"", ""));
        assertThat(r.at("/stages/0/complete").asBoolean()).isFalse();
        assertThat(r.at("/sections/1/status").asText()).isEqualTo("sized");
        assertThat(r.at("/sections/1/provisional").asBoolean()).isTrue();
        assertThat(r.at("/sections/2/provisional").isMissingNode()).isTrue();
    }

    /** A load that is not known leaves every inlet behind the regulator unknown, whether its capacity is entered or not. */
    @ParameterizedTest
    @ValueSource(strings = {"", ",\"capacity\":\"400000 Btu/h\""})
    void loadNotKnownLeavesEveryInletUnknown(String capacity) {
        String both = plan(
                ",\"fittingAllowance\":\"none\"",
                capacity,
                section("A", "R", "\"north 10 ft\"") + "," + section("B", "R", "\"east 10 ft\""),
                appliance("heater", "A", ",\"input\":\"40000 Btu/h\"") + "," + appliance("range", "B", ""));
        assertThat(json(both).at("/outlets/0/status").asText()).isEqualTo("unknown");
        String known = both.replace("\"fedBy\":\"B\",", "\"fedBy\":\"B\",\"input\":\"65000 Btu/h\",");
        assertThat(json(known).at("/outlets/0/status").asText()).isEqualTo("enough");
    }

    private static String twoStages(String firstOutlet, String lengthToWall, String label) {
        return "{\"format\":\"longrun-plan/1\",\"fittingAllowance\":\"none\",\"regulators\":["
                + "{\"id\":\"R1\",\"kind\":\"first-stage\",\"fedBy\":\"tank\"" + firstOutlet
                + ",\"allowedDrop\":\"0.5 in"
                + " w.c.\"},{\"id\":\"R2\",\"kind\":\"second-stage\",\"fedBy\":\"Y\",\"outlet\":\"11 in"
                + " w.c.\",\"allowedDrop\":\"0.5 in w.c.\"}],"
                + "\"sections\":[{\"id\":\"Y\",\"from\":\"R1\",\"material\":\"steel\",\"installedSize\":\"1/2\",\"legs\":[\""
                + lengthToWall + "\"]}," + section("A", "R2", "\"north 10 ft\"")
                + "],\"appliances\":[{\"id\":\"heater\",\"fedBy\":\"A\",\"input\":\"40000 Btu/h\"" + label + "}]}";
    }

    @Test
    void regulatorInletNotKnownLeavesEveryInletBehindItUnknown() {
        JsonNode r = json(twoStages("", "20 ft", "," + LABEL));
        assertThat(r.at("/outlets/0/status").asText()).isEqualTo("unknown");
        assertThat(json(twoStages(",\"outlet\":\"10 psi\"", "20 ft", "," + LABEL))
                        .at("/outlets/0/status")
                        .asText())
                .isEqualTo("enough");
    }

    /** By the kind it falls 2 in. w.c. or a fifth of its setting (memory); 11 in. w.c. less 2.2 is the lower. */
    @ParameterizedTest
    @CsvSource({
        "second-stage, 11 in w.c., 2",
        "first-stage, 11 in w.c., 2.2",
        ", 11 in w.c., 2.2",
        ", 5 in w.c., 2",
        ", 10 psi, 55.4"
    })
    void regulatorOfAKindNotKnownFallsByTheMostAnyKindDoes(String kind, String outlet, double droop) {
        String plan = "{\"format\":\"longrun-plan/1\",\"regulators\":[{\"id\":\"R\",\"fedBy\":\"tank\""
                + (kind == null ? "" : ",\"kind\":\"" + kind + "\"") + ",\"outlet\":\"" + outlet + "\"}]}";
        assertThat(review(plan)
                        .pressures()
                        .regulator(0)
                        .droop()
                        .orElseThrow()
                        .atCapacity()
                        .inWc())
                .isCloseTo(droop, within(1e-9));
    }

    /** A capacity rated at 5 psi holds where 5 psi stands before the regulator; that must be known. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "/regulators/0/outlet",
                "/regulators/0/allowedDrop",
                "/regulators/1/fedBy",
                "/regulators/1/capacityAtInlet",
                "/sections/0/from",
                "/sections/0/material",
                "/sections/0/legs",
                "/appliances/1/input"
            })
    void capacityOfARegulatorAsksWhereItsInletIsNotKnown(String entry) throws Exception {
        String rated = twoStages(",\"outlet\":\"10 psi\"", "20 ft", "," + LABEL)
                .replace(
                        "\"outlet\":\"11 in",
                        "\"capacity\":\"500000 Btu/h\",\"capacityAtInlet\":\"5 psi\",\"outlet\":\"11 in")
                .replace("],\"appliances\":[", "," + section("B", "R1", "\"north 10 ft\"") + "],\"appliances\":[")
                .replace("}]}", "},{\"id\":\"kiln\",\"fedBy\":\"B\",\"input\":\"90000 Btu/h\"}]}");
        ObjectNode plan = (ObjectNode) new ObjectMapper().readTree(rated);
        assertThat(capacityOfR2(plan)).isEqualTo(State.HOLDS);
        JsonPointer at = JsonPointer.compile(entry);
        ((ObjectNode) plan.at(at.head())).remove(at.last().getMatchingProperty());
        assertThat(capacityOfR2(plan)).isEqualTo(State.ASKS);
        assertThat(review(plan.toString()).findings())
                .anyMatch(f -> f.field().equals(entry) && f.severity() == Severity.NOTE);
    }

    private static State capacityOfR2(ObjectNode plan) {
        return review(plan.toString()).rules().states().stream()
                .filter(s -> s.rule().equals("regulator-capacity") && s.at().equals("R2"))
                .map(s -> s.state())
                .findFirst()
                .orElseThrow();
    }

    /** Pressure used up is low, whatever the label asks and whether anybody has read it. */
    @Test
    void inletOfNothingIsLowEvenWithoutALabel() {
        String starved = plan(
                ",\"fittingAllowance\":\"none\"",
                "",
                "{\"id\":\"A\",\"from\":\"R\",\"material\":\"steel\",\"installedSize\":\"1/2\",\"legs\":[\"north 500"
                        + " ft\"]}",
                "{\"id\":\"heater\",\"fedBy\":\"A\",\"input\":\"400000 Btu/h\"}");
        assertThat(json(starved).at("/outlets/0/status").asText()).isEqualTo("low");
        assertThat(review(starved).findings())
                .anyMatch(f -> f.rule().equals("inlet-pressure-low") && f.severity() == Severity.MUST_FIX);
        JsonNode behind =
                json(twoStages(",\"outlet\":\"11 in w.c.\"", "1900 ft", "").replace("40000 Btu/h", "400000 Btu/h"));
        assertThat(behind.at("/outlets/0/status").asText()).isEqualTo("low");
    }

    private static String heater(String kind, String connection) {
        return plan(
                "",
                "",
                section("A", "R", "\"up 4 ft\",\"north 52 ft\""),
                appliance("heater", "A", ",\"input\":\"104500 Btu/h\"" + kind + connection));
    }

    /** 56 ft and an elbow are 57.55 ft, row 60; a shutoff and a trap more are 62.2 ft, row 70, and 1/2 carries less. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                ",\"kind\":\"storage-water-heater\"||3/4",
                ",\"kind\":\"storage-water-heater\"|,\"connection\":[{\"part\":\"shutoff\"},{\"part\":\"sediment-trap\"}]|3/4",
                ",\"kind\":\"storage-water-heater\"|,\"connection\":[]|1/2",
                ",\"kind\":\"range\"||1/2",
                ",\"kind\":\"gas-logs\"||3/4",
                ",\"kind\":\"gas-logs\",\"vent\":\"direct\"||1/2",
                "||3/4"
            })
    void hookupNotEnteredCountsThePartsTheRulesAskFor(String kind, String connection, String size) {
        JsonNode r = json(heater(kind == null ? "" : kind, connection == null ? "" : connection));
        assertThat(r.at("/sections/0/size").asText()).isEqualTo(size);
    }

    @Test
    void partsCountedButNotEnteredAreNamedWithBothFigures() {
        String plan = heater(",\"kind\":\"storage-water-heater\"", "");
        JsonNode r = json(plan);
        assertThat(r.at("/sections/0/assumedParts").toString()).isEqualTo("[\"shutoff\",\"sediment-trap\"]");
        assertThat(r.at("/sections/0/neededSizeWithoutAssumed").asText()).isEqualTo("1/2");
        assertThat(r.at("/stages/0/longestRunWithoutAssumedFt").asDouble()).isEqualTo(57.55);
        List<Finding> asked = review(plan).findings().stream()
                .filter(f -> f.field().equals("/appliances/0/connection"))
                .toList();
        assertThat(asked).hasSize(1);
        assertThat(asked.get(0).rule()).isEqualTo("entry-missing");
        assertThat(asked.get(0).severity()).isEqualTo(Severity.NOTE);
        assertThat(asked.get(0).found())
                .contains(
                        "a shutoff and a sediment trap are counted",
                        "57.6 ft without",
                        "1/2 in. without, 3/4 in. with");
        JsonNode entered = json(heater(",\"kind\":\"range\"", ",\"connection\":[{\"part\":\"shutoff\"}]"));
        assertThat(entered.at("/sections/0/assumedParts").isMissingNode()).isTrue();
    }

    /** 36 MJ/h and 10 kW are the same rate of heat. */
    @Test
    void inputEqualToTheConnectorsCapacityInAnotherUnitPasses() {
        String plan = plan(
                "",
                "",
                section("A", "R", "\"north 10 ft\""),
                appliance(
                        "heater",
                        "A",
                        ",\"input\":\"36"
                                + " MJ/h\",\"connection\":[{\"part\":\"shutoff\"},{\"part\":\"flexible-connector\",\"capacity\":\"10"
                                + " kW\",\"capacityGas\":\"propane\"}]"));
        assertThat(review(plan).findings()).noneMatch(f -> f.rule().equals("connector-capacity"));
        assertThat(review(plan.replace("36 MJ/h", "36.001 MJ/h")).findings())
                .anyMatch(f -> f.rule().equals("connector-capacity") && f.severity() == Severity.MUST_FIX);
    }

    /** At 10 psi tubing of 1/2 CTS carries 169,000 at 400 ft by the maker's chart, and beyond it never more. */
    @Test
    void longerRunOfPolyethyleneNeverTakesASmallerSizeAndTheRoomSaysSo() {
        String tubing =
                "{\"format\":\"longrun-plan/1\",\"fittingAllowance\":\"none\",\"regulators\":[{\"id\":\"R1\",\"kind\":\"first-stage\",\"fedBy\":\"tank\",\"outlet\":\"10"
                        + " psi\",\"allowedDrop\":\"1"
                        + " psi\"}],\"sections\":[{\"id\":\"Y\",\"from\":\"R1\",\"material\":\"pe-tubing\",\"legs\":[\"390"
                        + " ft\"],\"capped\":true,\"reserve\":\"172000 Btu/h\"}]}";
        JsonNode near = json(tubing);
        JsonNode far = json(tubing.replace("390 ft", "410 ft"));
        assertThat(near.at("/sections/0/size").asText()).isEqualTo("1 CTS");
        assertThat(far.at("/sections/0/size").asText()).isEqualTo("1 CTS");
        double room = near.at("/stages/0/headroomFt").asDouble();
        JsonNode within = json(tubing.replace("390 ft", 390 + room + " ft"));
        assertThat(within.at("/sections/0/size").asText()).isEqualTo("1 CTS");
        assertThat(json(tubing.replace("10 psi", "68.95 kPa"))
                        .at("/sections/0/size")
                        .asText())
                .isEqualTo("1 CTS");
        assertThat(json(tubing.replace("\"1 psi\"", "\"0.999 psi\""))
                        .at("/sections/0/size")
                        .asText())
                .isEqualTo("1 CTS");
    }

    /** A section that no size can be had for counts its fittings at the table's largest, not at the largest left. */
    @Test
    void sizeTakenOffTheShelfShrinksNoOtherSection() {
        String plan = plan(
                ",\"availableSizes\":{\"steel\":[\"1/2\",\"3/4\",\"2\"]}",
                "",
                section("A", "R", "\"north 40 ft\",\"up 8 ft\",\"east 4 ft\"") + ","
                        + section("B", "A", "\"east 2 ft\"") + "," + section("C", "A", "\"north 1 ft\""),
                appliance("boiler", "B", ",\"input\":\"900000 Btu/h\",\"connection\":[]") + ","
                        + appliance("heater", "C", ",\"input\":\"104500 Btu/h\",\"connection\":[]"));
        JsonNode two = json(plan);
        JsonNode none = json(plan.replace(",\"2\"]", "]"));
        assertThat(two.at("/sections/1/size").asText()).isEqualTo("2");
        assertThat(none.at("/sections/1/status").asText()).isEqualTo("no-size");
        assertThat(none.at("/stages/0/longestRunFt").asDouble())
                .isGreaterThanOrEqualTo(two.at("/stages/0/longestRunFt").asDouble());
        assertThat(two.at("/sections/2/size").asText()).isEqualTo("3/4");
        assertThat(none.at("/sections/2/size").asText()).isEqualTo("3/4");
    }
}
