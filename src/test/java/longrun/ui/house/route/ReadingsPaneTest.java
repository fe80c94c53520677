package longrun.ui.house.route;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.flow.dom.Element;
import java.util.List;
import longrun.Samples;
import longrun.ui.Shown;
import longrun.ui.house.valve.ReadingsPane;
import org.junit.jupiter.api.Test;

/**
 * Gauge readings entered beside what was predicted. R2 of the orchard house is set to 11 in. w.c.; it falls, by the
 * default, 2 in. x 324,000 / 800,000 = 0.81 in. w.c.; lock-up is 120 %, 13.2 in. w.c.
 */
class ReadingsPaneTest extends OpenRoutes {

    private ReadingsPane pane;

    private String read(String at, String what, String pressure) {
        int index = desk.session().at("/readings").size();
        pane().add();
        desk.session().choose("/readings/" + index + "/at", at);
        desk.session().choose("/readings/" + index + "/what", what);
        desk.session().set("/readings/" + index + "/pressure", pressure);
        assertThat(desk.session().errors()).isEmpty();
        return shown().get(index);
    }

    private ReadingsPane pane() {
        if (pane == null) {
            pane = new ReadingsPane(desk);
        }
        pane.show(true);
        return pane;
    }

    private String regulator(int index) {
        return String.join(" | ", Shown.texts(view.element(), ".schedule tbody tr:nth-child(" + (index + 1) + ") > *"));
    }

    private String regulatorWords(int index) {
        return Shown.text(view.element(), ".from-regulators > dd:nth-of-type(" + (index + 1) + ") > span:first-child");
    }

    private List<String> shown() {
        Element element = pane().element();
        return Shown.count(element, ".verdict") == 0 ? List.of() : Shown.texts(element, ".verdict > span:first-child");
    }

    private void openOrchard() {
        open(Samples.text("drawing/orchard-house.json"));
    }

    @Test
    void readingThatAgreesAndOneThatDiffersStandBesideThePrediction() {
        openOrchard();
        assertThat(read("R2", "lock-up", "12.5 in w.c.")).isEqualTo("Predicted 13.2 in. w.c.; the gauge agrees.");
        assertThat(read("R2", "lock-up", "14 in w.c."))
                .isEqualTo("Predicted 13.2 in. w.c.; the gauge differs: look at the setting of R2 and whether its seat"
                        + " closes.");
        assertThat(read("heater", "flowing-all", "7 in w.c."))
                .startsWith("Predicted ")
                .contains("the gauge differs: look at the shutoff, the connector");
    }

    @Test
    void flowingPressureReadAtTheRegulatorTakesThePlaceOfTheDefaultFall() {
        openOrchard();
        view.hand().inHand(2);
        String before = pressures().get(1);
        String words = read("R2", "flowing-all", "10.9 in w.c.");
        assertThat(words)
                .isEqualTo("Predicted 10.19 in. w.c.; the gauge agrees. From here on R2 is taken to fall as this gauge"
                        + " read, no more by the default.");
        assertThat(pressures().get(1)).isNotEqualTo(before);
        assertThat(regulatorWords(1))
                .contains("falls by 0.1 in. w.c., as measured with a gauge; that replaces the default");
    }

    @Test
    void makersOwnFallOutweighsTheReading() {
        openOrchard();
        desk.session().set("/regulators/1/droopAtCapacity", "1 in w.c.");
        assertThat(read("R2", "flowing-all", "10.7 in w.c."))
                .endsWith("Its maker\u2019s own fall is entered for R2, and is what counts.");
    }

    @Test
    void halfEnteredReadingIsAskedForAndATestStandsInTheTestPlan() {
        openOrchard();
        pane().add();
        assertThat(shown()).containsExactly("Enter where it was read, in which state, and what the gauge showed.");
        assertThat(read("R2", "test", "15 psi")).startsWith("A test is held against the test plan");
    }

    @Test
    void wrongFigureIsSaidAtItsFieldAndTheReadingWaits() {
        openOrchard();
        read("R2", "static", "11 in w.c.");
        desk.session().endStep();
        desk.session().set("/readings/0/pressure", "eleven");
        assertThat(desk.session().error("/readings/0/pressure")).isPresent();
        assertThat(shown().get(0)).startsWith("An entry waits to be corrected");
        desk.session().undo();
        assertThat(desk.session().text("/readings/0/pressure")).isEqualTo("11 in w.c.");
    }

    @Test
    void removedReadingComesBackByUndo() {
        openOrchard();
        read("R2", "static", "11 in w.c.");
        pane().remove(0);
        assertThat(shown()).isEmpty();
        desk.session().undo();
        assertThat(shown()).hasSize(1);
    }

    @Test
    void scheduleTellsInletSettingFallLockUpRatingLoadAndSpare() {
        openOrchard();
        assertThat(regulator(0)).startsWith("R1 | the tank | 10 psi | ");
        assertThat(regulatorWords(0)).contains("falls by 0.59 psi, a default held from memory");
        String r2 = regulator(1);
        assertThat(r2)
                .startsWith("R2 | ")
                .contains(" psi | 11 in. w.c. | 10.19 in. w.c. | 13.2 in. w.c. | 800,000 | 324,000 | 476,000, 60 %");
        assertThat(regulatorWords(1)).contains("the inlet pressure for which its capacity is rated is not entered");
        desk.session().set("/regulators/1/capacityAtInlet", "5 psi");
        assertThat(regulatorWords(1)).contains("the rating applies");
        desk.session().set("/regulators/1/capacityAtInlet", "10 psi");
        assertThat(regulatorWords(1)).contains("the rating does not apply");
    }
}
