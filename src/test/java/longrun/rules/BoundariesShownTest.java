package longrun.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertAll;

import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What a rule finds beyond its limit also stands among the findings of the whole house. */
class BoundariesShownTest {

    @ParameterizedTest(name = "{0}")
    @MethodSource("listTopics")
    void faultOfATopicIsAmongTheFindingsOfTheHouse(String topic) {
        assertAll(Boundary.byTopic().get(topic).stream()
                .filter(row -> !row.severity().isEmpty())
                .map(row -> () -> assertThat(Rules.check(row.house()).findings())
                        .as(row.toString())
                        .anyMatch(f -> f.rule().equals(row.rule()))));
    }

    static Set<String> listTopics() {
        return Boundary.byTopic().keySet();
    }
}
