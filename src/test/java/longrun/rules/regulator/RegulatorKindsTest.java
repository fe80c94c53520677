package longrun.rules.regulator;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import longrun.Samples;
import longrun.finding.Finding;
import longrun.finding.Severity;
import longrun.rules.Rules;
import longrun.rules.shape.House;
import longrun.rules.shape.Precedence;
import longrun.rules.shape.Rule;
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

    private static String chain(String first, String second, String third) {
        return "{ \"format\": \"longrun-plan/1\", \"regulators\": [ { \"id\": \"R1\"" + first
                + ", \"fedBy\": \"tank\", \"setting\": \"outdoors\" }, { \"id\": \"R2\", \"kind\": \"" + second
                + "\", \"fedBy\": \"Y\", \"setting\": \"outdoors\" }, { \"id\": \"R3\", \"kind\": \"" + third
                + "\", \"fedBy\": \"Z\", \"setting\": \"outdoors\" } ], \"sections\": [ { \"id\": \"Y\", \"from\":"
                + " \"R1\" }, { \"id\": \"Z\", \"from\": \"R2\" } ] }";
    }

    /** Which of three regulators in a row is told of. */
    @ParameterizedTest
    @CsvSource({
        "integral-two-stage, second-stage, second-stage, R2",
        "first-stage, second-stage, second-stage, R3",
        "first-stage, second-stage, line, ''",
        "second-stage, second-stage, second-stage, R1",
        "line, second-stage, second-stage, R1",
        "'', second-stage, second-stage, R1 R3"
    })
    void whatFollowsAMisplacedRegulatorIsNotToldAsWell(String first, String second, String third, String told) {
        String kind = first.isEmpty() ? "" : ", \"kind\": \"" + first + "\"";
        assertThat(kinds(chain(kind, second, third)).stream()
                        .map(Finding::field)
                        .distinct())
                .extracting(f -> "R" + (Character.getNumericValue(f.charAt("/regulators/".length())) + 1))
                .containsExactly(told.isEmpty() ? new String[0] : told.split(" "));
    }

    @Test
    void singleStageThatServesNothingIsNoGrillRegulator() {
        String nothing = "{ \"format\": \"longrun-plan/1\", \"regulators\": [ { \"id\": \"R\", \"kind\":"
                + " \"single-stage\", \"fedBy\": \"tank\", \"setting\": \"outdoors\" } ] }";
        assertThat(kinds(nothing)).extracting(Finding::severity).containsExactly(Severity.MUST_FIX);
    }

    @Test
    void grillWithoutInputAsksWhileTheOthersStayWithinTheLimit() {
        String second = "\"outdoor-grill\", \"fedBy\": \"A\", \"input\": \"%s Btu/h\" }, { \"id\": \"other\","
                + " \"kind\": \"outdoor-grill\", \"fedBy\": \"B\"";
        String two = grill("")
                .replace(
                        "{ \"id\": \"A\", \"from\": \"R\" }",
                        "{ \"id\": \"A\", \"from\": \"R\" }, { \"id\": \"B\", \"from\": \"R\" }")
                .replace("\"outdoor-grill\", \"fedBy\": \"A\"", second);
        assertThat(kinds(two.formatted("100000"))).extracting(Finding::field).containsExactly("/appliances/1/input");
        assertThat(kinds(two.formatted("100001"))).extracting(Finding::severity).containsExactly(Severity.MUST_FIX);
    }

    @Test
    void singleStageThatMustGoIsAskedForNoPlace() {
        assertThat(kinds(grill(", \"input\": \"100001 Btu/h\"").replace("\"setting\": \"outdoors\", ", "")))
                .extracting(Finding::field)
                .containsExactly("/regulators/0/kind");
        assertThat(kinds(chain(", \"kind\": \"two-psi\"", "line", "line")
                        .replace(", \"setting\": \"outdoors\" }", " }")))
                .extracting(Finding::field)
                .contains("/regulators/0/kind", "/regulators/0/setting");
    }

    @Test
    void secondStageAtTheTankIsToldByItsKindAlone() {
        assertThat(kinds(grill("").replace("single-stage", "second-stage").replace("\"setting\": \"outdoors\", ", "")))
                .extracting(Finding::field)
                .containsExactly("/regulators/0/kind");
    }

    /** What lacks comes first, since it changes what has a size. */
    @ParameterizedTest
    @CsvSource({"regulator-kind, MISSING", "line-regulator-tee, MISSING", "regulator-min-inlet, SIZE"})
    void kindAndTeeComeBeforeTheSize(String rule, Precedence precedence) {
        assertThat(Rules.all().stream().filter(r -> r.name().equals(rule)).map(Rule::precedence))
                .isNotEmpty()
                .containsOnly(precedence);
    }
}
