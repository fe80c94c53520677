package longrun.rules.surroundings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import longrun.finding.Finding;
import longrun.plan.Plan;
import longrun.rules.Edits;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * How the ways to air for a range of 65,000 and logs of 35,000 Btu/h are told: 2018 IFGC 304.5.1 (50 ft3 a thousand),
 * 304.5.2, 304.5.3 and 304.6 (an in2 each 4,000, 2,000 or 3,000 Btu/h).
 */
class RoomAirTest {

    private static final String SMALL = "/rooms/0/volume = \"900 ft3\" & ";
    private static final String OWN =
            "50 ft3 for each 1,000 of 100,000 Btu/h make 5,000 ft3; the room utility has 900 ft3";

    private static Plan plan(String edits) {
        return Edits.house("whole-house.json", edits).plan();
    }

    private static List<String> sums(String edits) {
        return RoomAir.waysOf(plan(edits), 0).stream().map(AirWay::sum).toList();
    }

    private static Finding finding(String edits) {
        return new AirForCombustion()
                .judge(Edits.house("whole-house.json", edits)).stream()
                        .flatMap(v -> v.finding().stream())
                        .findFirst()
                        .orElseThrow();
    }

    @Test
    void sumOfOpeningsOutdoorsNamesTheThreeAreasTheCodeHas() {
        assertThat(sums(SMALL + "/rooms/0/openings = [{\"to\":\"outdoors\",\"area\":\"20.5 in2\"},"
                        + "{\"to\":\"outdoors\",\"area\":\"24 in2\"}]"))
                .containsExactly(
                        OWN,
                        "outdoors two openings of 25 in2 each (50 in2 by a horizontal duct), or one of 33.3 in2, are"
                                + " wanted for 100,000 Btu/h; the room utility has 20.5 in2, 24 in2");
    }

    @Test
    void openingWhoseAreaIsNotEnteredIsNotCountedAsNone() {
        assertThat(sums(SMALL + "/rooms/0/openings = [{\"to\":\"outdoors\"}]"))
                .containsExactly(OWN, "where an opening of the room utility leads, or how large it is, is not entered");
    }

    @Test
    void roomsTogetherAreNamedWithTheVolumeTheyHave() {
        String hall = SMALL + "/rooms/1 insert { \"id\": \"hall\", \"volume\": \"4100 ft3\" } & ";
        String first = "{\"to\":\"hall\",\"area\":\"100 in2\"}";
        assertThat(sums(hall + "/rooms/0/openings = [" + first + "," + first + "]"))
                .containsExactly(
                        OWN,
                        "50 ft3 for each 1,000 of 100,000 Btu/h make 5,000 ft3; the room utility with the room hall has"
                                + " 5,000 ft3");
        assertThat(sums(hall + "/rooms/0/openings = [" + first + ",{\"to\":\"hall\",\"area\":\"99 in2\"}]"))
                .containsExactly(
                        OWN, "into the room hall two openings of 100 in2 each are wanted; there are 100 in2, 99 in2");
    }

    @Test
    void burnersWithAFanAloneNameNoOthers() {
        assertThat(sums(
                        "/appliances/1/vent = \"fan\" & /appliances/2/vent = \"fan\" & /rooms/0/infiltration = \"0.39 ach\" & "
                                + SMALL + "/rooms/0/openings = []"))
                .first()
                .isEqualTo("15 ft3 for each 1,000 of 100,000 Btu/h with a fan, by 0.39 air changes an hour, make 3,846"
                        + " ft3; the room utility has 900 ft3");
    }

    @ParameterizedTest(name = "{0} in {1} ft3")
    @CsvSource({
        "0.40, 5250, ENOUGH",
        "0.40, 5249, SHORT",
        "0.50, 5000, ENOUGH",
        "0.50, 4999, SHORT",
        "0.39, 9000, SHORT"
    })
    void otherMethodForAVolumeIsHeldToItsOwnSum(String change, String volume, AirWay.Outcome expected) {
        List<AirWay> ways = RoomAir.waysOf(
                plan("/rooms/0/infiltration = \"" + change + " ach\" & /rooms/0/volume = \"" + volume + " ft3\""), 0);
        assertThat(ways.get(1).outcome()).isEqualTo(expected);
    }

    @Test
    void roomThatNoAirLeaksIntoIsNeverLargeEnough() {
        assertThat(sums("/rooms/0/infiltration = \"none\""))
                .first()
                .isEqualTo("21 ft3 for each 1,000 of 100,000 Btu/h, by 0.00 air changes an hour, make more than any"
                        + " room; the room utility has 9000 ft3");
    }

    @Test
    void noSumIsShownWhereNoInputIsEntered() {
        assertThat(sums("/appliances/1/input gone & /appliances/2/vent = \"direct\""))
                .isEmpty();
    }

    @Test
    void tooLittleAirIsMendedAtTheOpeningsWhereThereAreSome() {
        assertThat(finding(SMALL + "/rooms/0/openings = []").field()).isEqualTo("/rooms/0/volume");
        assertThat(finding(SMALL + "/rooms/0/openings = [{\"to\":\"outdoors\",\"area\":\"10 in2\"}]")
                        .field())
                .isEqualTo("/rooms/0/openings");
    }

    @Test
    void questionSaysWhichWaysAreShortAlready() {
        assertThat(finding(SMALL + "/rooms/0/openings gone").found())
                .isEqualToIgnoringCase(OWN + "; the openings of the room utility are not entered");
    }

    @Test
    void roomIsCalledByItsNameWhereItHasOne() {
        assertThat(sums("/rooms/0/name = \"laundry\" & " + SMALL + "/rooms/0/openings = []"))
                .containsExactly(OWN.replace("utility", "laundry"));
        assertThat(sums("/rooms/0/name = \" \" & " + SMALL + "/rooms/0/openings = []"))
                .containsExactly(OWN);
    }

    @Test
    void burnersOfTwoRoomsAreAddedUp() {
        Plan plan = plan("/appliances/2/vent = \"fan\" & /appliances/3/vent gone & /appliances/4/vent = \"fan\"");
        Burners one = Burners.in(plan, plan.rooms().get(0), true);
        assertThat(one).isEqualTo(new Burners(145_000, 95_000, List.of(), List.of("/appliances/3/vent"), 4));
        assertThat(one.btuh()).isEqualTo(240_000);
        assertThat(one.plus(new Burners(5_000, 2_000, List.of("/appliances/9/input"), List.of(), 2)))
                .isEqualTo(
                        new Burners(150_000, 97_000, List.of("/appliances/9/input"), List.of("/appliances/3/vent"), 6));
    }
}
