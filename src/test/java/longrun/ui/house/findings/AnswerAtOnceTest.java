package longrun.ui.house.findings;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.flow.dom.Element;
import java.util.List;
import java.util.stream.Stream;
import longrun.draft.OpenQuestions;
import longrun.ui.Fired;
import longrun.ui.house.HouseView;
import longrun.ui.house.OpenHouse;
import org.junit.jupiter.api.Test;

/** What many parts are asked alike is answered for all of them by one key, or for each at its field. */
class AnswerAtOnceTest extends OpenHouse {

    private static final List<String> SAME_ROOM =
            List.of("/appliances/0/connection/0/sameRoom", "/appliances/1/connection/0/sameRoom");

    private HouseView twoValves() {
        id = store.create("", """
                        {"format":"longrun-plan/1",
                         "appliances":[
                          {"id":"a","kind":"furnace","input":"80000 Btu/h",
                           "connection":[{"part":"shutoff","distance":"2 ft","accessible":true}]},
                          {"id":"b","kind":"boiler","input":"90000 Btu/h",
                           "connection":[{"part":"shutoff","distance":"2 ft","accessible":true}]}]}
                        """).id();
        return open("findings");
    }

    @Test
    void oneKeySaysOfBothValvesWhereTheyStandAndOneUndoTakesItBack() {
        HouseView page = twoValves();
        OpenQuestions.Asked asked = OpenQuestions.of(page.session()).now().stream()
                .filter(a -> a.first().field().endsWith("/sameRoom"))
                .findFirst()
                .orElseThrow();
        assertThat(asked.alike()).hasSize(2);
        assertThat(asked.isAnsweredAtOnce(page.session())).isTrue();
        asked.answer(page.session(), true);
        assertThat(SAME_ROOM).allMatch(at -> page.session().at(at).isYes());
        assertThat(asked.isAnsweredAtOnce(page.session())).isFalse();
        page.session().undo();
        assertThat(SAME_ROOM).allMatch(at -> page.session().at(at).isNothing());
    }

    @Test
    void theKeyStandsInTheLineOfTheQuestion() {
        HouseView page = twoValves();
        Element no = below(page.getElement())
                .filter(e -> e.hasAttribute("class") && e.getAttribute("class").contains("at-once"))
                .filter(e -> e.getAttribute("aria-label").startsWith("Of both: "))
                .filter(e -> e.getAttribute("aria-label").contains("room"))
                .flatMap(AnswerAtOnceTest::below)
                .filter(e -> e.getTag().equals("button") && e.getText().equals("no"))
                .findFirst()
                .orElseThrow();
        Fired.click(no);
        assertThat(SAME_ROOM).allMatch(at -> page.session().text(at).equals("false"));
    }

    private static Stream<Element> below(Element element) {
        return Stream.concat(
                Stream.of(element),
                element.getChildren().filter(e -> !e.isTextNode()).flatMap(AnswerAtOnceTest::below));
    }
}
