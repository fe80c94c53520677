package longrun.rules.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import longrun.Samples;
import longrun.rules.limit.State;
import longrun.rules.shape.Case;
import longrun.rules.shape.House;
import longrun.rules.shape.Question;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Which row of NFPA 58 (2020) table 6.4.1.1 each tank of a site falls under, with its note on totals (TK-07) and 6.4.1.3
 * (TK-06). A row: the tanks as water capacity in gallons (or "cylinder", with its pounds of propane behind a colon),
 * placement, distance to the next tank in feet and how many, "-" for not entered; then the rows of the table that may
 * hold and, where several may, the entry that decides.
 */
class TanksTest {

    private static String entry(String name, String value, String unit) {
        return value.equals("-") ? "" : ",\"" + name + "\":\"" + value + unit + "\"";
    }

    private static String tank(String text) {
        String[] words = text.strip().split(" ");
        String[] holds = words[0].split(":");
        boolean cylinder = holds[0].equals("cylinder");
        String placement = switch (words[1]) {
            case "above" -> "above-ground";
            case "buried" -> "underground";
            default -> words[1];
        };
        return "{\"kind\":\"" + (cylinder ? "cylinder" : "asme") + "\""
                + (cylinder ? "" : entry("waterCapacity", holds[0], " gal"))
                + (holds.length > 1 ? entry("propaneWeight", holds[1], " lb") : "") + entry("placement", placement, "")
                + entry("betweenTanks", words[2].replace(">", "> "), " ft")
                + (words.length > 3 ? ",\"count\":" + words[3].substring(1) : "") + "}";
    }

    private static House house(String tanks) {
        return plan("\"tanks\":["
                + Stream.of(tanks.split(";")).map(TanksTest::tank).collect(Collectors.joining(",")) + "]");
    }

    private static House plan(String tanks) {
        return House.of(Samples.plan("{\"format\":\"longrun-plan/1\"," + tanks + "}"));
    }

    private static List<Case<String>> cases(String tanks) {
        House house = house(tanks);
        Tanks.Site site = Tanks.Site.of(house);
        return Tanks.listIn(house).stream()
                .map(at -> Tanks.byTable(site, at, at.place().at()))
                .toList();
    }

    private static String say(Case<String> at) {
        String rows = at.settled().map(State::written).orElseGet(() -> String.join(" or ", at.variants()));
        return rows
                + at.doubt()
                        .map(d -> " " + d.field().substring("/tanks/".length()))
                        .orElse("");
    }

    private static void assertRows(String tanks, String rows) {
        assertThat(cases(tanks).stream().map(TanksTest::say).collect(Collectors.joining("; ")))
                .as(tanks)
                .isEqualTo(rows);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "124 above -, not-for-this-plan",
        "125 above -, to-500",
        "500 above -, to-500",
        "501 above -, single",
        "1200 above -, single",
        "1201 above -, to-2000",
        "2000 above -, to-2000",
        "2001 above -, to-30000",
        "30000 above -, to-30000",
        "30001 above -, asks 0/waterCapacity",
        "124 buried -, buried",
        "500 buried -, buried",
        "501 buried -, buried-2000",
        "2000 buried -, buried-2000",
        "2001 buried -, to-30000",
        "30000 buried -, to-30000",
        "30001 buried -, asks 0/waterCapacity",
        "124 - -, under-125 or buried 0/placement",
        "500 - -, to-500 or buried 0/placement",
        "1000 - -, single or buried-2000 0/placement",
        "2001 - -, to-30000",
        "- above -, asks 0/waterCapacity",
        "cylinder above -, not-for-this-plan"
    })
    void tankByItselfTakesTheRowOfItsWaterCapacity(String tanks, String rows) {
        assertRows(tanks, rows);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "1000 above 3 x2, to-2000",
        "1000 above 24.9 x2, to-2000",
        "1000 above 25 x2, single",
        "1000 above >25 x2, single",
        "1000 above >5 x2, to-2000 or single 0/betweenTanks",
        "1000 above - x2, to-2000 or single 0/betweenTanks",
        "1000 - 3 x2, to-2000 or buried-2000 0/placement",
        "1000 buried 3 x2, buried-2000",
        "1000 above 3; 200 above 3, to-2000; to-500",
        "1000 above 3; 126 above 3, to-2000; to-500",
        "1000 above 3; 125 above 3, single; to-500",
        "1000 above 3; 120 above 3, single; not-for-this-plan",
        "1000 above 3; 1000 above 3; 120 above 3,"
                + " to-2000 or single 0/betweenTanks; to-2000 or single 1/betweenTanks; not-for-this-plan"
    })
    void loneTankKeepsTenFeetWhereNoneOfMoreThan125GallonsIsNear(String tanks, String rows) {
        assertRows(tanks, rows);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "120 above 2 x5, to-2000",
        "120 above 2 x4, not-for-this-plan",
        "100 above 2 x5, not-for-this-plan",
        "120 above 25 x5, not-for-this-plan",
        "120 above >25 x5, not-for-this-plan",
        "120 above >5 x5, to-2000 or under-125 0/betweenTanks",
        "120 above - x5, to-2000 or under-125 0/betweenTanks",
        "120 buried 2 x5, buried-2000",
        "120 buried >5 x5, buried-2000 or buried 0/betweenTanks",
        "124 above 2 x17, to-30000",
        "124 above 2 x300, asks 0/waterCapacity",
        "125 above 2 x5, to-500",
        "120 above 2 x3; 110 above 2 x2, to-2000; to-2000",
        "cylinder:100 above 2 x5, not-for-this-plan",
        "cylinder:1000 above 2 x5, to-2000"
    })
    void tanksUnder125GallonsTakeTheRowOfTheirTotalFrom501Gallons(String tanks, String rows) {
        assertRows(tanks, rows);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "1000 above 3; - above 3, to-2000 or single 1/waterCapacity; asks 1/waterCapacity",
        "1000 above 3; - above 3 x2, to-2000 or single 1/waterCapacity; asks 1/waterCapacity",
        "1000 above 25; - above 25, single; asks 1/waterCapacity",
        "1000 above -; 1000 above -; - above -,"
                + " to-2000 or single 0/betweenTanks; to-2000 or single 1/betweenTanks; asks 2/waterCapacity",
        "1000 above 3; cylinder above 3, single; not-for-this-plan",
        "120 above 2 x4; - above 2, to-2000 or under-125 1/waterCapacity; asks 1/waterCapacity",
        "120 above 2 x5; - above 2, to-2000; asks 1/waterCapacity",
        "120 above >5 x5; - above >5, to-2000 or under-125 0/betweenTanks; asks 1/waterCapacity",
        "120 above 2; - above 2, not-for-this-plan; asks 1/waterCapacity",
        "120 above 2 x3; - above 2, not-for-this-plan; asks 1/waterCapacity",
        "cylinder above 2 x5, to-2000 or under-125 0/waterCapacity",
        "120 above >5 x5; 1000 above >5; - above >5, to-2000 or under-125 0/betweenTanks;"
                + " to-2000 or single 2/waterCapacity; asks 2/waterCapacity"
    })
    void tankWhoseCapacityIsNotEnteredLeavesTheOthersOpenWhereItDecides(String tanks, String rows) {
        assertRows(tanks, rows);
    }

    @Test
    void siteCountsItsTanksBySize() {
        Tanks.Site site = Tanks.Site.of(house(
                "1000 above - x2; 100 above - x3; 125 above -; - above - x2; cylinder above - x4; cylinder:100 above - x2;"
                        + " - above -"));
        double cylinder = 100 / (0.42 * 8.33);
        assertThat(site.containers()).isEqualTo(15);
        assertThat(site.over125()).isEqualTo(2);
        assertThat(site.unknown()).isEqualTo(3);
        assertThat(site.underGallons()).isCloseTo(300 + 2 * cylinder, within(1e-9));
        assertThat(site.underGallonsAtMost()).isCloseTo(300 + 3 * 125 + 4 * 119.9 + 2 * cylinder, within(1e-9));
        assertThat(site.unknownAt()).contains("/tanks/3/waterCapacity");
        assertThat(site.holdsSeveral()).isTrue();
        assertThat(Tanks.Site.of(house("1000 above -")).holdsSeveral()).isFalse();
    }

    @ParameterizedTest
    @CsvSource({"cylinder:100, 28.58", "cylinder:419, 119.76", "cylinder:1000, 119.9", "cylinder, 119.9", "500, 500"})
    void cylinderHoldsFortyTwoPercentOfItsWaterByWeight(String tank, double gallons) {
        assertThat(Tanks.gallons(house(tank + " above -").plan().tanks().get(0)).orElseThrow())
                .isCloseTo(gallons, within(0.005));
    }

    @Test
    void weightOfPropaneDoesNotSayWhatAnAsmeTankHolds() {
        House house = house("-:100 above -");
        assertThat(Tanks.gallons(house.plan().tanks().get(0))).isEqualTo(Optional.empty());
        assertThat(Tanks.Site.of(house).unknown()).isEqualTo(1);
    }

    @Test
    void eachOfSeveralTanksIsNamedByItsNumber() {
        assertThat(names(house("500 above -; cylinder above -")))
                .containsExactly("/tanks/0 the tank number 1", "/tanks/1 the cylinder number 2");
        assertThat(names(house("500 above -"))).containsExactly("/tanks/0 the tank");
        assertThat(names(plan("\"tank\":" + tank("cylinder above -")))).containsExactly("/tank the cylinder");
        assertThat(names(plan("\"tank\":[" + tank("500 above -") + "," + tank("500 above -") + "]")))
                .containsExactly("/tank/0 the tank number 1", "/tank/1 the tank number 2");
    }

    private static List<String> names(House house) {
        return Tanks.listIn(house).stream()
                .map(at -> at.place().pointer() + " " + at.place().label())
                .toList();
    }

    @Test
    void questionNamesTheTankThatCounts() {
        assertThat(questions("1000 above - x2"))
                .containsExactly("How far is {who} from the next tank of more than 125 gal?");
        assertThat(questions("120 above - x5")).containsExactly("How far is {who} from the next tank?");
        assertThat(questions("1000 above 3; - above 3"))
                .containsExactly(
                        "What is the water capacity of each tank in gallons?",
                        "What is the water capacity of {who} in gallons?");
        assertThat(questions("30001 above -")).containsExactly("Which distances hold for {who}?");
    }

    private static List<String> questions(String tanks) {
        return cases(tanks).stream()
                .map(at ->
                        at.doubt().map(Case.Doubt::question).map(Question::text).orElse(""))
                .toList();
    }
}
