package longrun.rules.regulator;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import longrun.Samples;
import longrun.finding.Finding;
import longrun.finding.Severity;
import longrun.rules.Rules;
import longrun.rules.shape.House;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which regulator belongs where: NFPA 58 (2017) 6.10.2, UL 144 (2021). */
class RegulatorKindsTest {

    private static List<Finding> kinds(String plan) {
        return Rules.check(House.of(Samples.plan(plan))).findings().stream()
                .filter(f -> f.rule().equals("regulator-kind"))
                .toList();
    }

    private static String grill(String input) {
        return "{ \"format\": \"longrun-plan/1\", \"regulators\": [ { \"id\": \"R\", \"kind\": \"single-stage\","
                + " \"fedBy\": \"tank\", \"setting\": \"outdoors\", \"outlet\": \"11 in w.c.\" } ],"
                + " \"sections\": [ { \"id\": \"A\", \"from\": \"R\" } ],"
                + " \"appliances\": [ { \"id\": \"grill\", \"kind\": \"outdoor-grill\", \"fedBy\": \"A\"" + input
                + " } ] }";
    }

    @Test
    void singleStageServesAnOutdoorGrillUpToItsLimit() {
        assertThat(kinds(grill(", \"input\": \"100000 Btu/h\""))).isEmpty();
        assertThat(kinds(grill(", \"input\": \"100001 Btu/h\"")))
                .extracting(Finding::severity)
                .containsExactly(Severity.MUST_FIX);
        assertThat(kinds(grill(""))).extracting(Finding::severity).containsOnly(Severity.NOTE);
    }

    /** What a regulator is that follows another: fed by the pipe that leaves it. */
    @ParameterizedTest
    @CsvSource({
        "first-stage, second-stage, true",
        "first-stage, two-psi, true",
        "first-stage, line, false",
        "first-stage, first-stage, false",
        "integral-two-stage, second-stage, false",
        "integral-two-stage, line, true",
        "integral-two-stage, integral-two-stage, false"
    })
    void regulatorFollowsTheRightOne(String before, String kind, boolean fits) {
        String plan = "{ \"format\": \"longrun-plan/1\", \"regulators\": [ { \"id\": \"R1\", \"kind\": \"" + before
                + "\", \"fedBy\": \"tank\", \"setting\": \"outdoors\", \"outlet\": \"5 psi\" }, { \"id\": \"R2\","
                + " \"kind\": \""
                + kind
                + "\", \"fedBy\": \"Y\", \"setting\": \"outdoors\", \"outlet\": \"11 in w.c.\" } ],"
                + " \"sections\": [ { \"id\": \"Y\", \"from\": \"R1\" } ] }";
        assertThat(kinds(plan)).extracting(Finding::at).isEqualTo(fits ? List.of() : List.of("R2"));
    }

    @Test
    void regulatorWhosePipeLeadsNowhereAsks() {
        String plan = "{ \"format\": \"longrun-plan/1\", \"regulators\": [ { \"id\": \"R2\", \"kind\": \"line\","
                + " \"fedBy\": \"Y\" } ], \"sections\": [ { \"id\": \"Y\" } ] }";
        assertThat(kinds(plan)).extracting(Finding::field).containsExactly("/regulators/0/fedBy");
    }
}
