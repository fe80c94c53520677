package longrun.ui.house.route;

import static org.assertj.core.api.Assertions.assertThat;

import longrun.ui.Shown;
import longrun.ui.house.HouseView;
import longrun.ui.house.OpenHouse;
import org.junit.jupiter.api.Test;

/** What is asked of the section in hand hangs on its material and its place. */
class SectionFactsTest extends OpenHouse {

    private static final String HOUSE = """
            {"format":"longrun-plan/1","fittingAllowance":"counted",
             "regulators":[{"id":"R1","kind":"integral-two-stage","fedBy":"tank","outlet":"11 in w.c."}],
             "sections":[{"id":"A","from":"R1","material":"%s","setting":"%s","legs":["40 ft"]}]}
            """;

    private String asked(String material, String setting) {
        id = store.create("", HOUSE.formatted(material, setting)).id();
        HouseView page = open("route");
        return Shown.text(((RouteView) page.placeShown()).laid().element());
    }

    @Test
    void buriedPlasticIsAskedItsCoverAndItsTracerWire() {
        assertThat(asked("pe-pipe", "underground"))
                .contains("How section A is laid", "Cover over the pipe", "Tracer wire")
                .doesNotContain("Type of tube", "Bonding wire", "Held every");
    }

    @Test
    void buriedSteelIsAskedItsCoating() {
        assertThat(asked("steel", "underground"))
                .contains("Cover over the pipe", "Coated against rust")
                .doesNotContain("Tracer wire", "Held every");
    }

    @Test
    void copperIsAskedItsTypeAndHowItIsJoined() {
        assertThat(asked("copper", "indoors"))
                .contains("Type of tube", "Joined", "Held every")
                .doesNotContain("Cover over the pipe", "Jacket");
    }

    @Test
    void concealedCorrugatedTubingIsAskedItsPlatesFittingsAndBonding() {
        assertThat(asked("csst", "concealed"))
                .contains(
                        "Jacket",
                        "Bonding wire",
                        "Fittings inside walls",
                        "Behind the face of the framing",
                        "Steel plates")
                .doesNotContain("Held every", "Type of tube");
    }

    @Test
    void nothingIsAskedOfASectionWithoutMaterialAndPlace() {
        id = store.create("", "{\"format\":\"longrun-plan/1\",\"sections\":[{\"id\":\"A\",\"legs\":[\"40 ft\"]}]}")
                .id();
        HouseView page = open("route");
        assertThat(((RouteView) page.placeShown()).laid().fields().count()).isZero();
    }

    @Test
    void theQuestionOfCoverLeadsToItsField() {
        id = store.create("", HOUSE.formatted("pe-pipe", "underground")).id();
        HouseView page = open("route");
        page.goTo("/sections/0/depth");
        entry(((RouteView) page.placeShown()).laid().fields(), "/sections/0/depth");
        page.session().set("/sections/0/depth", "11 in");
        assertThat(page.session().findings()).anyMatch(f -> f.rule().equals("pipe-burial-depth"));
    }
}
