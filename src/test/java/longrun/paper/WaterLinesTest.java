package longrun.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import longrun.Samples;
import longrun.paper.page.SheetWords;
import longrun.review.ReviewParts;
import longrun.review.Reviewer;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;

/** The block of hot water on the fitter's sheet. */
class WaterLinesTest {

    private static final String DEMO = Samples.text("data/demo/orchard-house.json");

    private static List<Element> of(String plan) {
        return WaterLines.elements(Reviewer.standard().review(Samples.plan(plan), ReviewParts.ALL));
    }

    private static String words(List<Element> elements) {
        return elements.stream().map(Element::text).collect(Collectors.joining(" "));
    }

    @Test
    void itSaysHowTheValvesStandWhatToTurnToAndWhichAreNeverClosed() {
        assertThat(words(of(DEMO)))
                .contains("In series open 1 2 4 5; closed 3 6 140 \u00b0F 130 \u00b0F 60 0 gal")
                .contains("On-demand alone open 3 4 5; closed 1 2 6 out 130 \u00b0F 60 106 gal 0 kWh")
                .contains("Storage alone open 1 2 6; closed 3 4 5 140 \u00b0F out 20")
                .contains("Never closed in any position: 7, and each heater's relief valve");
    }

    @Test
    void whatIsNotKnownIsABlankAndAHouseWithOneHeaterHasNoBlock() {
        assertThat(words(of(DEMO.replace("\"volume\": \"80 gal\", ", ""))))
                .contains("On-demand alone open 3 4 5")
                .contains(SheetWords.BLANK)
                .doesNotContain("NaN");
        assertThat(of(DEMO.replaceFirst("(?s)\"storage\": \\{[^}]*\\},\\s*", "")))
                .isEmpty();
    }
}
