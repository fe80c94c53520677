package longrun.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import longrun.finding.Finding;
import longrun.finding.Severity;
import longrun.origin.Confidence;
import longrun.plan.choice.Says;
import longrun.rules.shape.House;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The chosen code decides; another code's stricter figure is a note; a local amendment replaces the limit. */
class CodesTest {

    private static List<Finding> findings(String edits) {
        return Rules.check(Edits.house("whole-house.json", edits)).findings();
    }

    private static String amended(String rule, String limit) {
        return "/code/amendments = [ { \"rule\": \"" + rule + "\", \"limit\": \"" + limit
                + "\", \"source\": \"county ordinance 12.4\" } ]";
    }

    @Test
    void noCodeEnteredIsANote() {
        Finding f = findings("/code gone").get(0);
        assertThat(f.rule()).isEqualTo("entry-missing");
        assertThat(f.severity()).isEqualTo(Severity.NOTE);
        assertThat(f.field()).isEqualTo("/code/profile");
    }

    @Test
    void stricterFigureOfAnotherCodeNamesBoth() {
        Finding f = findings("/appliances/0/connection/1/nipple = \"2.9 in\"").get(0);
        assertThat(f.severity()).isEqualTo(Severity.NOTE);
        assertThat(f.required()).contains("NFPA 54 figure 9.6.8", "3 in", "any length");
        assertThat(f.reference()).contains("IFGC 408.4", "NFPA 54 figure 9.6.8");
    }

    @Test
    void stricterAmendmentReplacesTheLimit() {
        List<Finding> found = findings(
                amended("shutoff-within-reach", "3 ft") + " & /appliances/0/connection/0/distance = \"3.1 ft\"");
        assertThat(found).hasSize(1);
        assertThat(found.get(0).severity()).isEqualTo(Severity.MUST_FIX);
        assertThat(found.get(0).required()).contains("3 ft");
        assertThat(found.get(0).reference()).contains("county ordinance 12.4", "409.5.1");
        assertThat(found.get(0).confidence()).isEqualTo(Confidence.OWN);
    }

    @Test
    void amendmentIsKeptAtItsLimit() {
        assertThat(findings(amended("shutoff-within-reach", "3 ft"))).isEmpty();
    }

    @Test
    void looserAmendmentPassesAndKeepsANote() {
        List<Finding> found =
                findings(amended("shutoff-within-reach", "8 ft") + " & /appliances/0/connection/0/distance = \"8 ft\"");
        assertThat(found).hasSize(1);
        assertThat(found.get(0).rule()).isEqualTo("shutoff-within-reach");
        assertThat(found.get(0).severity()).isEqualTo(Severity.NOTE);
        assertThat(found.get(0).field()).isEqualTo("/code/amendments/0/limit");
    }

    @Test
    void amendmentOfAnyLengthSetsALeastLength() {
        assertThat(findings(amended("trap-nipple-length", "4 in")))
                .extracting(Finding::rule, Finding::at)
                .containsExactlyInAnyOrder(
                        org.assertj.core.groups.Tuple.tuple("trap-nipple-length", "furnace"),
                        org.assertj.core.groups.Tuple.tuple("trap-nipple-length", "boiler"));
    }

    @Test
    void amendmentLeavesTheManifoldValveAlone() {
        assertThat(findings(amended("shutoff-within-reach", "3 ft"))).noneMatch(f -> f.at().equals("boiler"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"gas-type", "no-such-rule"})
    void amendmentOfARuleWithoutALimitAsks(String rule) {
        assertThat(findings(amended(rule, "3 ft")))
                .extracting(Finding::field)
                .containsExactly("/code/amendments/0/rule");
    }

    @Test
    void tankSideIsJudgedByNfpa58UnderEveryCode() {
        for (String profile : List.of("fuel-gas-2018", "nfpa-54-58", "plumbing-code")) {
            Finding f = findings("/code/profile = \"" + profile + "\" & /tank/toBuilding = \"9.9 ft\"").stream()
                    .filter(x -> x.at().equals("tank"))
                    .findFirst()
                    .orElseThrow();
            assertThat(f.reference()).startsWith("NFPA 58");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"accepted", "refused"})
    void answerKeepsTheSeverityAndLeavesTheOpenCount(String says) {
        Finding f = findings("/tank/toBuilding = \"9.9 ft\" & /answers = [ { \"rule\": \"tank-to-building\","
                        + " \"at\": \"tank\", \"says\": \"" + says + "\", \"who\": \"inspector\","
                        + " \"date\": \"2026-09-01\" } ]")
                .get(0);
        assertThat(f.severity()).isEqualTo(Severity.MUST_FIX);
        assertThat(f.isOpen()).isFalse();
        assertThat(f.answer().orElseThrow().says().written()).isEqualTo(says);
        assertThat(f.answer().orElseThrow().who()).isEqualTo("inspector");
        assertThat(f.answer().orElseThrow().date()).isEqualTo("2026-09-01");
    }

    @Test
    void answerToAnotherPlaceChangesNothing() {
        assertThat(findings("/appliances/0/connection/0/sameRoom = false & /answers = [ { \"rule\":"
                        + " \"shutoff-same-room\", \"at\": \"range\", \"says\": \"accepted\" } ]"))
                .allMatch(Finding::isOpen);
    }

    @Test
    void naturalGasApplianceAndOpenOutletCannotBeAccepted() {
        List<Finding> found = findings("/appliances/1/gas = \"natural\" & /sections/6/capped = false & /answers = ["
                + " { \"rule\": \"gas-type\", \"at\": \"range\", \"says\": \"accepted\" },"
                + " { \"rule\": \"outlet-uncapped\", \"at\": \"E\", \"says\": \"accepted\" } ]");
        assertThat(found)
                .hasSize(2)
                .allMatch(Finding::isOpen)
                .allSatisfy(f -> assertThat(f.remedy()).containsOnlyOnce("Nobody can accept this one"));
        House house = Edits.house(
                "whole-house.json",
                "/answers = [ { \"rule\": \"gas-type\", \"at\": \"range\"," + " \"says\": \"accepted\" } ]");
        assertThat(Answers.apply(house.plan(), found)).isEqualTo(found);
    }

    @Test
    void refusalOfANaturalGasApplianceIsKept() {
        Finding f = findings("/appliances/1/gas = \"natural\" & /answers = [ { \"rule\": \"gas-type\","
                        + " \"at\": \"range\", \"says\": \"refused\" } ]")
                .get(0);
        assertThat(f.answer().orElseThrow().says()).isEqualTo(Says.REFUSED);
    }
}
