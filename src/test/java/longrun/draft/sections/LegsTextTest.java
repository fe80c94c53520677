package longrun.draft.sections;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import longrun.words.UnitSystem;
import org.junit.jupiter.api.Test;

/** Legs as a fitter writes them. */
class LegsTextTest {

    private static final UnitSystem FEET = UnitSystem.CUSTOMARY;

    @Test
    void bareNumbersHaveTheColumnsUnit() {
        assertThat(LegsText.stored("up 4, north 6, east 10", FEET))
                .containsExactly("up 4 ft", "north 6 ft", "east 10 ft");
        assertThat(LegsText.stored("14", FEET)).containsExactly("14 ft");
        assertThat(LegsText.stored("east 2.5", UnitSystem.METRIC)).containsExactly("east 2.5 m");
    }

    @Test
    void firstLetterIsADirection() {
        assertThat(LegsText.stored("u 4, N6,e 10 ; d3", FEET))
                .containsExactly("up 4 ft", "north 6 ft", "east 10 ft", "down 3 ft");
    }

    @Test
    void commaBetweenThousandsPartsNothing() {
        assertThat(LegsText.stored("north 1,200, up 4", FEET)).containsExactly("north 1,200 ft", "up 4 ft");
        assertThat(LegsText.stored("up 4,120", FEET)).containsExactly("up 4,120 ft");
        assertThat(LegsText.stored("north 12,5", FEET)).containsExactly("north 12,5 ft");
        assertThat(LegsText.feet(LegsText.stored("north 12,5", FEET))).isEmpty();
    }

    @Test
    void writtenUnitsAndFeetAndInchesStay() {
        assertThat(LegsText.stored("up 3 m, east 5' 6\"", FEET)).containsExactly("up 3 m", "east 5' 6\"");
        assertThat(LegsText.inField(List.of("up 3 m", "east 5' 6\"", "north 4 ft"), FEET))
                .isEqualTo("up 3 m, east 5' 6\", north 4");
    }

    @Test
    void halfTypedLegIsKeptAsTyped() {
        assertThat(LegsText.stored("up 4, nor", FEET)).containsExactly("up 4 ft", "nor");
        assertThat(LegsText.feet(LegsText.stored("up 4, nor", FEET))).isEmpty();
    }

    @Test
    void feetAreTheSumOfTheLegs() {
        assertThat(LegsText.feet(LegsText.stored("up 4, north 6, east 10 ft 6 in", FEET)))
                .hasValue(20.5);
        assertThat(LegsText.feet(List.of())).isEmpty();
    }

    @Test
    void theNextDirectionPartsLegsWithoutAComma() {
        assertThat(LegsText.stored("up 3 east 6", FEET)).containsExactly("up 3 ft", "east 6 ft");
        assertThat(LegsText.stored("u 3 e6 n 12 1/2", FEET)).containsExactly("up 3 ft", "east 6 ft", "north 12-1/2 ft");
        assertThat(LegsText.stored("up 3 ft north 2 m", FEET)).containsExactly("up 3 ft", "north 2 m");
        assertThat(LegsText.stored("north 5'6 east 12\u00bd", FEET)).containsExactly("north 5' 6\"", "east 12-1/2 ft");
        assertThat(LegsText.stored("up 4 nor", FEET)).containsExactly("up 4 nor");
    }
}
