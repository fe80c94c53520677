package longrun.rules.regulator;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.List;
import java.util.stream.Collectors;
import longrun.finding.Finding;
import longrun.rules.Edits;
import longrun.rules.shape.House;
import org.junit.jupiter.api.Test;

/** No pipe inside a house carries more than 5 psi (2018 IFGC 402.6), told once a stage. */
class PressureIndoorsTest {

    private static List<Finding> told(String edit) {
        House house = Edits.house("whole-house.json", edit);
        return new PressureIndoors()
                .judge(house).stream().flatMap(v -> v.finding().stream()).toList();
    }

    private static String states(String edit) {
        return new PressureIndoors()
                .judge(Edits.house("whole-house.json", edit)).stream()
                        .map(v -> v.state().state().written())
                        .distinct()
                        .collect(Collectors.joining(" "));
    }

    private static String found(String edit) {
        assertThat(told(edit)).hasSize(1);
        return told(edit).get(0).found();
    }

    @Test
    void stageIndoorsIsToldOnceAndNamesTheOtherSections() {
        assertThat(found("/sections/0/setting = \"indoors\""))
                .isEqualTo(
                        "Section Y1 is inside the house (where it runs: indoors) and carries 10 psi, the setting of R1");
        assertThat(found("/sections/0/under = \"building\""))
                .isEqualTo(
                        "Section Y1 lies under the house (what is over it: building) and carries 10 psi, the setting of"
                                + " R1");
        assertThat(found("/regulators/1/setting = \"indoors\""))
                .isEqualTo("Section Y1 ends at R2 inside the house (where it hangs: indoors) and carries 10 psi, the"
                        + " setting of R1");
        assertThat(found("/sections/0/setting = \"indoors\" & /sections/1/setting = \"indoors\""))
                .endsWith(" carries 10 psi, the setting of R1; so do Y2");
    }

    @Test
    void ofALongStageFourOthersAreNamed() {
        String six = "/regulators/1/outlet = \"6 psi\"";
        assertThat(found(six)).endsWith(" carries 6 psi, the setting of R2; so do B, C, D, E");
        String more = six + " & /sections/11 insert { \"id\": \"F\", \"from\": \"A\", \"setting\": \"indoors\" }";
        assertThat(found(more)).endsWith("; so do B, C, D, E and 1 more");
        assertThat(found(more + " & /sections/12 insert { \"id\": \"G\", \"from\": \"A\", \"setting\": \"indoors\" }"))
                .endsWith("; so do B, C, D, E and 2 more");
    }

    private static void assertAsked(String edit, String found, String question) {
        assertThat(told(edit))
                .extracting(Finding::found, f -> f.ask().orElseThrow())
                .containsExactly(tuple(found, question));
    }

    @Test
    void pipeWhosePlaceIsNotEnteredIsAskedByWhereItMayLie() {
        assertAsked(
                "/sections/0/under gone",
                "Section Y1 carries 10 psi, and whether it lies under a building is not entered",
                "Does section Y1 pass under a building, a slab or a drive anywhere?");
        assertAsked(
                "/sections/0/setting gone",
                "Section Y1 carries 10 psi, and whether it lies indoors is not entered",
                "Does section Y1 run outdoors, in the ground, indoors or concealed?");
        assertAsked(
                "/regulators/1/setting gone",
                "Section Y1 carries 10 psi and ends at R2; whether that is outdoors is not entered",
                "Is R2 outdoors?");
    }

    @Test
    void pipeOfAStageWhoseSettingIsNotEnteredAsksUnlessItIsOutside() {
        assertThat(states("/regulators/0/outlet gone")).isEqualTo("holds");
        assertThat(told("/regulators/1/outlet gone"))
                .extracting(Finding::field)
                .containsOnly("/regulators/1/outlet")
                .hasSize(5);
    }

    @Test
    void pipeThatHangsOnNothingIsNotJudged() {
        assertThat(states("/sections/0/from gone")).isEqualTo("not-for-this-plan holds");
    }
}
