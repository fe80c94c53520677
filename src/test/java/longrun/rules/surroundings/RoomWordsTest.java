package longrun.rules.surroundings;

import static org.assertj.core.api.Assertions.assertThat;

import longrun.rules.Edits;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A finding about a room says which room it is and of what kind. */
class RoomWordsTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "appliance-bedroom-or-bath|/rooms/0/kind = \"bath\"|in a bathroom",
                "appliance-bedroom-or-bath|/rooms/0/kind = \"bath\"|from a bathroom",
                "appliance-bedroom-or-bath|/rooms/0/kind = \"bedroom\"|from a bedroom",
                "appliance-below-grade|/rooms/0/belowGrade = true|in the room utility, whose floor",
                "appliance-below-grade|/rooms/0/belowGrade gone|the floor of the room utility is",
            })
    void roomIsNamed(String rule, String edit, String words) {
        assertThat(Surroundings.rules().stream()
                        .filter(r -> r.name().equals(rule))
                        .flatMap(r -> r.judge(Edits.house("whole-house.json", edit)).stream())
                        .flatMap(v -> v.finding().stream())
                        .map(f -> f.found() + " " + f.ask().orElse("")))
                .anySatisfy(text -> assertThat(text).contains(words));
    }
}
