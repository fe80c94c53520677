package longrun.ui.house.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import longrun.origin.Confidence;
import longrun.origin.Origin;
import longrun.ui.frame.WhereFrom;
import org.junit.jupiter.api.Test;

/** Where from, as it is told: each figure first, then what it came from. */
class OriginStepsTest {

    @Test
    void aSumEndsWithItsTotal() {
        List<WhereFrom.Step> steps = OriginSteps.of(Origin.derived(
                "connected load",
                "264,000 Btu/h",
                "sum of the inputs",
                Confidence.PRINT,
                List.of(
                        Origin.entered("input of heater", "199,000 Btu/h"),
                        Origin.entered("input of range", "65,000 Btu/h"))));
        assertThat(steps).hasSize(1);
        assertThat(steps.get(0).text()).isEqualTo("sum of the inputs; held as print.");
        assertThat(steps.get(0).sum()).last().isEqualTo(List.of("connected load", "264,000 Btu/h"));
    }

    @Test
    void legsAreToldAsTheyWerePaced() {
        Origin legs = Origin.entered("legs of A", "[\"up 4 ft\",\"north 6 ft\"]");
        Origin measured = Origin.derived("A, measured", "10 ft", "sum of its legs", Confidence.PRINT, List.of(legs));
        assertThat(OriginSteps.of(measured).get(0).text())
                .isEqualTo("sum of its legs; from legs of A: up 4 ft, north 6 ft; held as print.");
    }

    @Test
    void aFigureThatWasWorkedOutIsAnsweredToo() {
        Origin legs = Origin.entered("legs of A", "[\"10 ft\"]");
        Origin a = Origin.derived("A, measured", "10 ft", "sum of its legs", Confidence.PRINT, List.of(legs));
        Origin run = Origin.derived("longest run", "10 ft", "longest length method", Confidence.PRINT, List.of(a));
        assertThat(OriginSteps.of(run))
                .extracting(WhereFrom.Step::title)
                .containsExactly("longest run: 10 ft", "A, measured: 10 ft");
    }
}
