package longrun.ui.house.route;

import static org.assertj.core.api.Assertions.assertThat;

import longrun.ui.Fired;
import longrun.ui.Shown;
import longrun.ui.house.HouseShown;
import longrun.ui.house.HouseView;
import longrun.ui.house.OpenHouse;
import org.junit.jupiter.api.Test;

/** What is asked of the section in hand hangs on its material and its place. */
class SectionFactsTest extends OpenHouse {

    private static final String LAID = ".laid";

    private static final String HOUSE = """
            {"format":"longrun-plan/1","fittingAllowance":"counted",
             "regulators":[{"id":"R1","kind":"integral-two-stage","fedBy":"tank","outlet":"11 in w.c."}],
             "sections":[{"id":"A","from":"R1","material":"%s","setting":"%s","legs":["40 ft"]}]}
            """;

    private String asked(String material, String setting) {
        id = store.create("", HOUSE.formatted(material, setting)).id();
        HouseView page = open("route");
        return Shown.text(page.getElement(), LAID);
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
    void anOutsideWallIsAskedItsSleeveAndItsSealAndAnInsideWallIsNot() {
        id = store.create("", HOUSE.formatted("steel", "indoors")).id();
        HouseView page = open("route");
        page.goTo("/sections/0/passes");
        Fired.press(page.getElement(), "Add what it passes");
        page.session().choose("/sections/0/passes/0/what", "inside-wall");
        assertThat(Shown.wordsInSight(page.getElement(), LAID)).doesNotContain("In a sleeve");
        page.session().choose("/sections/0/passes/0/what", "outside-wall");
        assertThat(Shown.wordsInSight(page.getElement(), LAID))
                .contains("In a sleeve", "gap round it", "Below the ground");
        page.session().choose("/sections/0/passes/0/sleeved", true);
        page.session().choose("/sections/0/passes/0/sealed", false);
        assertThat(page.session().findings())
                .filteredOn(f -> f.rule().equals("pipe-wall-passage"))
                .extracting(longrun.finding.Finding::field)
                .containsExactly("/sections/0/passes/0/sealed");
    }

    @Test
    void aRiserAtOneEndAndMetalBelowGroundAtTheOtherAreEachSaid() {
        com.fasterxml.jackson.databind.node.ObjectNode draft =
                (com.fasterxml.jackson.databind.node.ObjectNode) tree(HOUSE.formatted("pe-pipe", "underground"));
        longrun.draft.sections.RouteDraft.put(
                new longrun.draft.entry.DraftEdit(draft), 0, "ends", "anodeless-riser, transition-fitting");
        assertThat(draft.at("/sections/0/ends")).hasToString("[\"anodeless-riser\",\"transition-fitting\"]");
        longrun.draft.sections.RouteDraft.put(new longrun.draft.entry.DraftEdit(draft), 0, "ends", "none");
        assertThat(new longrun.draft.sections.RouteLines(longrun.draft.entry.DraftValue.of(draft))
                        .at(0)
                        .orElseThrow()
                        .ends())
                .isEqualTo("none");
    }

    @Test
    void nothingIsAskedOfASectionWithoutMaterialAndPlace() {
        id = store.create("", "{\"format\":\"longrun-plan/1\",\"sections\":[{\"id\":\"A\",\"legs\":[\"40 ft\"]}]}")
                .id();
        HouseView page = open("route");
        assertThat(Shown.count(page.getElement(), LAID + " .fld")).isZero();
    }

    @Test
    void theQuestionOfCoverLeadsToItsField() {
        id = store.create("", HOUSE.formatted("pe-pipe", "underground")).id();
        HouseView page = open("route");
        page.goTo("/sections/0/depth");
        assertThat(HouseShown.entry(page, "/sections/0/depth").text()).isEmpty();
        page.session().set("/sections/0/depth", "11 in");
        assertThat(page.session().findings()).anyMatch(f -> f.rule().equals("pipe-burial-depth"));
    }
}
