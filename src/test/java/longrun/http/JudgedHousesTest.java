package longrun.http;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import longrun.plan.PlannedHouse;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;

/**
 * Houses as another program posts them: the right ones bring nothing to mend and no caution, a mistake is found once under
 * its name, and what looked like a pass is none. The section of the code stands with each rule's limit in
 * {@code data/rules/thresholds.csv}.
 */
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT)
class JudgedHousesTest {

    private static final ObjectMapper JSON = new ObjectMapper();

    @LocalServerPort
    private int port;

    private final HttpClient client = HttpClient.newHttpClient();

    private JsonNode review(PlannedHouse house) throws Exception {
        HttpResponse<String> answer = client.send(
                HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + "/api/review"))
                        .header("Content-Type", "application/json")
                        .POST(BodyPublishers.ofString(house.text()))
                        .build(),
                BodyHandlers.ofString());
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
        return JSON.readTree(answer.body());
    }

    private List<String> findings(PlannedHouse house, String... severities) throws Exception {
        List<String> all = new ArrayList<>();
        for (JsonNode f : review(house).path("findings")) {
            if (List.of(severities).contains(f.path("severity").asText())) {
                all.add(f.path("severity").asText() + " " + f.path("rule").asText() + " at "
                        + f.path("at").asText());
            }
        }
        return all;
    }

    private List<String> toMend(PlannedHouse house) throws Exception {
        return findings(house, "must-fix", "caution");
    }

    private List<String> asked(PlannedHouse house) throws Exception {
        return findings(house, "note");
    }

    static List<PlannedHouse> rightHouses() {
        return PlannedHouses.all();
    }

    @ParameterizedTest
    @MethodSource("rightHouses")
    void aHousePipedRightHasNothingToMendAndIsSized(PlannedHouse house) throws Exception {
        assertThat(toMend(house)).isEmpty();
        assertThat(review(house).path("sections"))
                .isNotEmpty()
                .allSatisfy(s -> assertThat(s.path("status").asText()).isEqualTo("sized"));
        assertThat(review(house).path("outlets"))
                .isNotEmpty()
                .allSatisfy(o -> assertThat(o.path("status").asText()).isEqualTo("enough"));
    }

    private static Arguments mistake(String name, PlannedHouse house, String rule) {
        return Arguments.of(Named.of(name, house), rule);
    }

    static Stream<Arguments> mistakes() {
        return Stream.of(
                mistake(
                        "the tank at 9 ft",
                        PlannedHouses.twoStage().set("/tank/toBuilding", "9 ft"),
                        "tank-to-building at tank"),
                mistake(
                        "the trap left out at a heater",
                        PlannedHouses.twoStage().without("/appliances/0/connection/1"),
                        "trap-missing at heater"),
                mistake(
                        "a connector through the wall",
                        PlannedHouses.twoPsi().set("/appliances/1/connection/1/throughWall", "true"),
                        "connector-through-wall at dryer"),
                mistake(
                        "a furnace for natural gas",
                        PlannedHouses.twoPsi().set("/appliances/0/gas", "natural"),
                        "gas-type at furnace"),
                mistake(
                        "the valve concealed",
                        PlannedHouses.allCopper().set("/appliances/0/connection/0/accessible", "false"),
                        "shutoff-access at boiler"),
                mistake(
                        "the manifold's valve without a label",
                        PlannedHouses.manifold().set("/appliances/0/connection/0/labelled", "false"),
                        "shutoff-access at heater"),
                mistake(
                        "polyethylene run on into the house",
                        PlannedHouses.yardLine()
                                .set("/sections/0/setting", "indoors")
                                .set("/regulators/0/outlet", "5 psi")
                                .set("/regulators/1/minInlet", "2 psi")
                                .set("/regulators/1/capacityAtInlet", "2 psi"),
                        "pipe-plastic-indoors at Y1"),
                mistake(
                        "the relief over a window",
                        PlannedHouses.buriedTank().set("/regulators/1/ventToOpening", "2 ft"),
                        "regulator-vent-opening at R2"),
                mistake(
                        "a connector of 7 ft",
                        PlannedHouses.movableRange().set("/appliances/0/connection/1/length", "7 ft"),
                        "connector-length at range"),
                mistake(
                        "the trap's cap pointing up",
                        PlannedHouses.generator().set("/appliances/0/connection/1/capPointsDown", "false"),
                        "trap-cap-down at generator"));
    }

    @ParameterizedTest
    @MethodSource("mistakes")
    void aMistakeIsFoundOnceUnderItsName(PlannedHouse house, String found) throws Exception {
        assertThat(toMend(house)).containsExactly("must-fix " + found);
    }

    /** What was silent, or only a note, and could hurt someone. */
    static Stream<Arguments> passesThatAreNone() {
        return Stream.of(
                mistake(
                        "first stage straight to a range, no label",
                        straight().set("/appliances/0/maxInlet", "none"),
                        "appliance-line-pressure at range"),
                mistake(
                        "first stage straight to a range, a slip of the unit",
                        straight().set("/appliances/0/maxInlet", "14 psi"),
                        "appliance-line-pressure at range"),
                mistake(
                        "2 psi straight to a range",
                        straight().set("/regulators/0/outlet", "2 psi").set("/appliances/0/maxInlet", "none"),
                        "appliance-line-pressure at range"),
                mistake(
                        "steel at 10 psi indoors",
                        PlannedHouses.twoStage()
                                .set("/sections/0/material", "steel")
                                .set("/sections/0/setting", "indoors"),
                        "pressure-indoors at Y1"),
                mistake(
                        "copper at 10 psi under the house",
                        PlannedHouses.twoStage().set("/sections/0/under", "building"),
                        "pressure-indoors at Y1"),
                mistake(
                        "polyethylene under the house",
                        PlannedHouses.yardLine()
                                .set("/sections/0/under", "building")
                                .set("/regulators/0/outlet", "5 psi")
                                .set("/regulators/1/minInlet", "2 psi")
                                .set("/regulators/1/capacityAtInlet", "2 psi"),
                        "pipe-plastic-indoors at Y1"),
                mistake(
                        "polyethylene under a slab",
                        PlannedHouses.yardLine()
                                .set("/sections/0/under", "slab")
                                .set("/regulators/0/outlet", "5 psi")
                                .set("/regulators/1/minInlet", "2 psi")
                                .set("/regulators/1/capacityAtInlet", "2 psi"),
                        "pipe-plastic-indoors at Y1"),
                mistake(
                        "polyethylene through an outside wall",
                        PlannedHouses.yardLine()
                                .set("/sections/0/passes", "[{'what':'outside-wall','sleeved':true,'sealed':true}]"),
                        "pipe-plastic-indoors at Y1"),
                mistake(
                        "polyethylene all the way to the range",
                        PlannedHouses.movableRange()
                                .set("/sections/0/material", "pe-pipe")
                                .set("/sections/0/setting", "underground"),
                        "pipe-plastic-indoors at A"),
                mistake(
                        "a first stage indoors, its vent piped",
                        PlannedHouses.twoStage()
                                .set("/regulators/0/setting", "indoors")
                                .set("/regulators/0/vent", "piped"),
                        "regulator-kind at R1"),
                mistake(
                        "an integral two-stage regulator concealed",
                        PlannedHouses.allCopper()
                                .set("/regulators/0/setting", "concealed")
                                .set("/regulators/0/vent", "piped"),
                        "regulator-kind at R1"),
                mistake(
                        "a first stage below ground",
                        PlannedHouses.twoStage().set("/regulators/0/setting", "underground"),
                        "regulator-kind at R1"),
                mistake(
                        "a direct-vent terminal 4 ft off, entered at the regulator",
                        PlannedHouses.yardLine().set("/regulators/1/ventToVentTerminal", "4 ft"),
                        "regulator-vent-terminal at R2"),
                mistake(
                        "a direct-vent terminal 4 ft off, entered at the appliance",
                        PlannedHouses.yardLine().set("/appliances/0/terminalToRegulator", "4 ft"),
                        "vent-terminal at furnace"),
                mistake(
                        "the same distance entered on both sides",
                        PlannedHouses.yardLine()
                                .set("/regulators/1/ventToVentTerminal", "4 ft")
                                .set("/appliances/0/terminalToRegulator", "4 ft"),
                        "regulator-vent-terminal at R2"),
                mistake(
                        "a vent limiter on an outdoor second stage",
                        PlannedHouses.twoStage().set("/regulators/1/vent", "limiter"),
                        "line-regulator-vent at R2"),
                mistake(
                        "vent-free logs without a trap",
                        PlannedHouses.movableRange().set("/appliances/0/kind", "gas-logs"),
                        "trap-missing at range"),
                mistake(
                        "a regulator that needs more than the tank gives when it is cold",
                        PlannedHouses.twoStage().set("/regulators/0/minInlet", "45 psi"),
                        "regulator-min-inlet at R1"));
    }

    private static PlannedHouse straight() {
        return PlannedHouse.named("straight from the first stage")
                .tank("250 gal", "12 ft")
                .firstStage("R1")
                .pipe("A", "R1", "steel", "30 ft")
                .set("/sections/0/setting", "outdoors")
                .burns("range", "range", "A", "65000 Btu/h", "none");
    }

    @ParameterizedTest
    @MethodSource("passesThatAreNone")
    void whatLookedLikeAPassIsAMistakeFoundOnce(PlannedHouse house, String found) throws Exception {
        assertThat(toMend(house)).containsExactly("must-fix " + found);
    }

    @Test
    void aSettingFarAboveItsKindIsToldAtTheRegulatorAndInTheHouse() throws Exception {
        for (String setting : List.of("10 psi", "20 psi")) {
            assertThat(toMend(PlannedHouses.twoPsi().set("/regulators/1/outlet", setting)))
                    .contains("must-fix regulator-setting at R2", "must-fix pressure-indoors at L1")
                    .doesNotHaveDuplicates();
        }
        assertThat(toMend(PlannedHouses.allCopper()
                        .set("/regulators/0/outlet", "10 psi")
                        .set("/regulators/0/allowedDrop", "1 psi")
                        .lineRegulator("R9", "A")
                        .pipe("D", "R9", "copper", "4 ft")
                        .set("/sections/1/from", "R9")
                        .set("/sections/2/from", "D")))
                .contains("must-fix regulator-setting at R1", "must-fix pressure-indoors at A");
    }

    @Test
    void aPlaceNotEnteredIsAsked() throws Exception {
        assertThat(asked(PlannedHouses.twoStage().without("/regulators/0/setting")))
                .contains("note regulator-kind at R1");
        assertThat(asked(PlannedHouses.twoStage().without("/sections/0/setting")))
                .contains("note pressure-indoors at Y1");
        assertThat(asked(PlannedHouses.twoStage().without("/sections/0/under")))
                .contains("note pressure-indoors at Y1");
        assertThat(asked(PlannedHouses.yardLine().without("/sections/0/under"))).anyMatch(n -> n.endsWith("at Y1"));
        assertThat(asked(PlannedHouses.twoStage().without("/regulators/1/vent")))
                .contains("note line-regulator-vent at R2");
        assertThat(asked(PlannedHouses.twoStage().without("/regulators/0/minInlet")))
                .contains("note regulator-min-inlet at R1");
        assertThat(asked(PlannedHouses.movableRange()
                        .set("/appliances/0/kind", "gas-logs")
                        .without("/appliances/0/vent")))
                .contains("note trap-missing at range");
    }

    /** One valve at the pipe's end but far off, one in reach but after the connector: neither meets the rules. */
    @Test
    void twoShutoffsThatEachFailSomethingAreNoPass() throws Exception {
        String far = "{'part':'shutoff','distance':'12 ft','sameRoom':true,'accessible':true,'size':'3/4'}";
        String near = "{'part':'shutoff','distance':'1 ft','sameRoom':true,'accessible':true,'size':'3/4'}";
        String hose = "{'part':'flexible-connector','length':'3 ft','throughWall':false,'concealed':false,"
                + "'capacity':'400000 Btu/h','capacityGas':'propane','ratedDrop':'0.5 in w.c.','size':'3/4'}";
        assertThat(toMend(PlannedHouses.movableRange()
                        .set("/appliances/0/connection", "[" + far + "," + hose + "," + near + "]")))
                .singleElement()
                .asString()
                .matches("must-fix shutoff-(within-reach|upstream-of-connector) at range");
        assertThat(toMend(PlannedHouses.movableRange()
                        .set("/appliances/0/connection", "[" + near + "," + far + "," + hose + "]")))
                .isEmpty();
    }

    /** What was told as a mistake and is none. */
    @Test
    void severalTanksAndAGrillsHoseAreNoMistake() throws Exception {
        assertThat(toMend(PlannedHouses.twoStage().set("/tank/count", "2").set("/tank/betweenTanks", "3 ft")))
                .isEmpty();
        String small = "{'kind':'asme','waterCapacity':'120 gal','placement':'above-ground','orientation':'vertical',"
                + "'refillAt':'30 %','toBuilding':'2 ft','betweenTanks':'4 ft','toPropertyLine':'60 ft',"
                + "'toOpeningBelow':'none','toIntake':'none','toIgnition':'none'}";
        String large =
                "{'kind':'asme','waterCapacity':'1000 gal','placement':'above-ground','orientation':'horizontal',"
                        + "'refillAt':'30 %','toBuilding':'12 ft','betweenTanks':'4 ft','toPropertyLine':'60 ft',"
                        + "'toOpeningBelow':'none','toIntake':'none','toIgnition':'none'}";
        assertThat(toMend(PlannedHouses.twoStage().without("/tank").set("/tanks", "[" + large + "," + small + "]")))
                .isEmpty();
        assertThat(toMend(PlannedHouses.generator().set("/appliances/1/connection/1/length", "16 ft")))
                .containsExactly("caution connector-length at grill");
    }

    /** NFPA 54 11.1.2: above 2,000 ft the label or the kit must cover the height, whatever it is that burns. */
    @Test
    void aLabelThatCoversTheAltitudeClearsItsCaution() throws Exception {
        for (String kind : List.of("range", "clothes-dryer", "standby-generator", "furnace")) {
            PlannedHouse high = PlannedHouse.named(kind + " at 5,000 ft")
                    .set("/site/elevation", "5000 ft")
                    .tank("500 gal", "14 ft")
                    .integral("R1")
                    .pipe("A", "R1", "copper", "12 ft")
                    .burns("it", kind, "A", "60000 Btu/h", "direct");
            assertThat(toMend(high)).as(kind).containsExactly("caution altitude at it");
            assertThat(toMend(high.set("/appliances/0/altitudeLabel", "none")))
                    .as(kind)
                    .hasSize(1);
            assertThat(toMend(high.set("/appliances/0/altitudeLabel", "4900 ft")))
                    .as(kind)
                    .hasSize(1);
            assertThat(toMend(high.set("/appliances/0/altitudeLabel", "5000 ft")))
                    .as(kind)
                    .isEmpty();
        }
    }
}
