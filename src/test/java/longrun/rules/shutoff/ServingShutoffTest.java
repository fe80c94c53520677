package longrun.rules.shutoff;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import longrun.rules.Edits;
import longrun.rules.Rules;
import org.junit.jupiter.api.Test;

/**
 * Of several shutoffs at an appliance one serves: one that keeps every rule, else one that breaks fewest, else one that
 * leaves fewest open (2018 IFGC 409.5.1: within 6 ft, in the same room, with access).
 */
class ServingShutoffTest {

    private static final String RIGHT =
            "{\"part\":\"shutoff\",\"distance\":\"5 ft\",\"sameRoom\":true,\"accessible\":true,\"size\":\"3/4\"}";

    /** Of the heater, whose shutoffs these are: every finding about them, where it is mended and how grave it is. */
    private static List<String> found(String... shutoffs) {
        String edit = "/appliances/0/connection/0 gone";
        for (int i = 0; i < shutoffs.length; i++) {
            edit += " & /appliances/0/connection/" + i + " insert " + shutoffs[i];
        }
        return Rules.check(Edits.house("whole-house.json", edit)).findings().stream()
                .filter(f -> f.rule().startsWith("shutoff"))
                .map(f -> f.field() + " " + f.severity().written())
                .toList();
    }

    private static String near(String was, String is) {
        return RIGHT.replace("5 ft", "1 ft").replace(was, is);
    }

    @Test
    void nearerShutoffInAnotherRoomIsNoFaultBesideARightOne() {
        assertThat(found(near("\"sameRoom\":true", "\"sameRoom\":false"), RIGHT))
                .isEmpty();
        assertThat(found(RIGHT, near("\"sameRoom\":true", "\"sameRoom\":false")))
                .isEmpty();
    }

    @Test
    void shutoffOfWhichSomethingIsNotKnownServesBeforeOneThatIsWrong() {
        assertThat(found(
                        near("\"sameRoom\":true", "\"sameRoom\":false"),
                        RIGHT.replace("\"sameRoom\":true,", "").replace("\"accessible\":true,", "")))
                .containsExactlyInAnyOrder(
                        "/appliances/0/connection/1/sameRoom note", "/appliances/0/connection/1/accessible note");
    }

    @Test
    void shutoffOfWhichLessIsToBeAskedServes() {
        assertThat(found(near("\"sameRoom\":true,\"accessible\":true,", ""), RIGHT.replace("\"sameRoom\":true,", "")))
                .containsExactly("/appliances/0/connection/1/sameRoom note");
    }

    @Test
    void twoShutoffsThatEachLackSomethingAreNoPass() {
        assertThat(found(
                        near("\"sameRoom\":true", "\"sameRoom\":false"),
                        RIGHT.replace("\"accessible\":true", "\"accessible\":false")))
                .containsExactly("/appliances/0/connection/0/sameRoom must-fix");
    }
}
