package longrun.words;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** How figures are said. */
class FigureTextTest {

    @Test
    void daysBeyondAYearAreOverAYear() {
        assertThat(FigureText.words(1649.2, "days", UnitSystem.CUSTOMARY)).isEqualTo("over a year");
        assertThat(FigureText.words(365, "days", UnitSystem.CUSTOMARY)).isEqualTo("365 days");
    }
}
