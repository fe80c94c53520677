package longrun.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import longrun.Samples;
import longrun.finding.Finding;
import longrun.finding.Severity;
import longrun.rules.shape.House;
import org.junit.jupiter.api.Test;

/** Several tanks on one site: NFPA 58 (2020) table 6.4.1.1, its note on totals and 6.4.1.3. */
class SeveralTanksTest {

    private static String tank(String gallons, String toBuilding, String apart) {
        return "{ \"kind\": \"asme\", \"placement\": \"above-ground\", \"waterCapacity\": \"" + gallons
                + " gal\", \"toBuilding\": \"" + toBuilding + "\", \"toPropertyLine\": \"none\","
                + " \"toOpeningBelow\": \"none\", \"toIgnition\": \"none\", \"toIntake\": \"none\"" + apart + " }";
    }

    private static List<Finding> check(String... tanks) {
        return Rules.check(House.of(Samples.plan("{ \"format\": \"longrun-plan/1\", \"code\": { \"profile\":"
                        + " \"fuel-gas-2018\" }, \"tanks\": [ " + String.join(", ", tanks) + " ] }")))
                .findings();
    }

    /** OSHA interpretation of 10 February 1975: two 500 gal tanks side by side each keep the 10 ft of one. */
    @Test
    void tanksOfFiveHundredGallonsSideBySideCountEachAlone() {
        String near = ", \"betweenTanks\": \"3 ft\"";
        assertThat(check(tank("500", "14 ft", near), tank("500", "10 ft", near)))
                .isEmpty();
        assertThat(check(tank("500", "14 ft", near), tank("500", "9.9 ft", near)))
                .extracting(Finding::rule, Finding::severity, Finding::field)
                .containsExactly(org.assertj.core.groups.Tuple.tuple(
                        "tank-to-building", Severity.MUST_FIX, "/tanks/1/toBuilding"));
    }

    @Test
    void tanksUnderOneHundredTwentyFiveGallonsTakeTheRowOfTheirTotal() {
        String near = ", \"betweenTanks\": \"2 ft\", \"count\": 5";
        assertThat(check(tank("120", "25 ft", near))).isEmpty();
        assertThat(check(tank("120", "24.9 ft", near)))
                .extracting(Finding::rule, Finding::severity)
                .containsExactly(org.assertj.core.groups.Tuple.tuple("tank-to-building", Severity.MUST_FIX));
        assertThat(check(tank("120", "2 ft", ", \"betweenTanks\": \"2 ft\", \"count\": 4")))
                .isEmpty();
    }

    @Test
    void aSmallTankBesideALargeOneTakesNoExceptionAway() {
        String near = ", \"betweenTanks\": \"5 ft\"";
        assertThat(check(tank("1000", "12 ft", near), tank("120", "1 ft", near)))
                .isEmpty();
        assertThat(check(tank("1000", "12 ft", near), tank("500", "12 ft", near)))
                .extracting(Finding::rule, Finding::field)
                .containsExactly(org.assertj.core.groups.Tuple.tuple("tank-to-building", "/tanks/0/toBuilding"));
    }

    @Test
    void twentyFiveFeetApartTheyCountAlone() {
        String far = ", \"betweenTanks\": \"25 ft\"";
        assertThat(check(tank("1000", "10 ft", far), tank("1000", "10 ft", far)))
                .isEmpty();
    }

    @Test
    void totalOfFiveHundredGallonsIsStillTheSmallerRow() {
        String near = ", \"betweenTanks\": \"1 ft\"";
        assertThat(check(tank("250", "10 ft", near), tank("250", "10 ft", near)))
                .isEmpty();
    }

    @Test
    void distanceBetweenThemIsAskedWhereItDecides() {
        assertThat(check(tank("1000", "12 ft", ""), tank("1000", "30 ft", "")))
                .extracting(Finding::field)
                .containsExactly("/tanks/0/betweenTanks", "/tanks/1/betweenTanks");
    }
}
