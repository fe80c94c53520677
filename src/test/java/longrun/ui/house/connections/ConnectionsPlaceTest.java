package longrun.ui.house.connections;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.flow.component.UI;
import java.util.List;
import longrun.Samples;
import longrun.draft.PlaceKind;
import longrun.draft.entry.DraftTree;
import longrun.finding.Finding;
import longrun.store.DraftStore;
import longrun.ui.Shown;
import longrun.ui.field.Field;
import longrun.ui.house.HouseView;
import longrun.ui.house.OpenHouses;
import longrun.ui.house.findings.FindingReply;
import longrun.ui.house.findings.FindingsPlace;
import longrun.ui.house.home.HousePlace;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** Connections and Findings without a browser. */
class ConnectionsPlaceTest extends OpenHouses {

    @Autowired
    DraftStore store;

    private long id;

    @BeforeEach
    void begin() {
        id = store.create("Fernbank", Samples.text("sample-plan.json")).id();
    }

    private HouseView open(String place) {
        UI.getCurrent().navigate("house/" + id + "/" + place);
        return (HouseView) UI.getCurrent().getCurrentView();
    }

    private static HookupEditor bench(HouseView page) {
        return (HookupEditor) ((ConnectionsPlace) page.placeShown()).bench();
    }

    private static List<String> rules(HouseView page) {
        return page.session().findings().stream().map(Finding::rule).toList();
    }

    @Test
    void aTrapMovedAheadOfTheShutoffIsToldAndPutRightAgain() {
        HouseView page = open("connections");
        bench(page).move(1, 0);
        assertThat(rules(page)).contains("trap-downstream-of-shutoff");
        assertThat(bench(page).board().shown()).contains("mark-wrong", "belongs here");
        assertThat(bench(page).orderShown()).contains("comes before the shutoff", "In the right order");
        bench(page).putRight();
        assertThat(rules(page)).doesNotContain("trap-downstream-of-shutoff");
        assertThat(bench(page).orderShown()).isEmpty();
        page.session().undo();
        assertThat(rules(page)).contains("trap-downstream-of-shutoff");
    }

    @Test
    void aPartAddedTakesItsPlaceInTheRow() {
        HouseView page = open("connections");
        bench(page).add("union");
        assertThat(page.session().text("/appliances/0/connection/2/part")).isEqualTo("union");
        assertThat(bench(page).blocks()).hasSize(4);
    }

    @Test
    void theEntryOfAFindingIsFoundInItsPlace() {
        assertThat(PlaceKind.find("/appliances/0/connection/1/nipple")).contains(PlaceKind.CONNECTIONS);
        assertThat(PlaceKind.find("/appliances/0/input")).contains(PlaceKind.APPLIANCES);
        assertThat(PlaceKind.find("/site/mainShutoff/outdoors")).contains(PlaceKind.CONNECTIONS);
        assertThat(PlaceKind.find("/regulators/1/ventToIntake")).contains(PlaceKind.CONNECTIONS);
        assertThat(PlaceKind.find("/regulators/1/outlet")).contains(PlaceKind.HOUSE);
        assertThat(PlaceKind.find("/nowhere")).isEmpty();
    }

    @Test
    void goingToAnEntryTakesItsRegulatorInHand() {
        HouseView page = open("findings");
        page.goTo("/regulators/1/ventToIntake");
        PartsEditor bench = ((ConnectionsPlace) page.placeShown()).bench();
        assertThat(bench).isInstanceOf(RegulatorEditor.class);
        assertThat(((RegulatorEditor) bench).drawn()).contains(">10 ft<");
    }

    @Test
    void aWrongEntryLeavesTheDrawingAsItCanBeDrawn() {
        HouseView page = open("connections");
        page.session().set("/appliances/0/connection/0/distance", "2 furlongs");
        assertThat(page.session().isCurrent()).isFalse();
        assertThat(bench(page).board().shown()).contains("data-part='2'").doesNotContain("furlongs");
    }

    @Test
    void findingsAreSortedThreeWaysAndAllRulesStandBelow() {
        HouseView page = open("findings");
        FindingsPlace place = (FindingsPlace) page.placeShown();
        assertThat(place.groupsShown()).contains("Questions and notes");
        place.sort(FindingsPlace.Sorting.WHOM);
        assertThat(place.groupsShown()).contains("For the fitter");
        place.sort(FindingsPlace.Sorting.PLACE);
        assertThat(place.groupsShown()).contains("The house and its ground");
        assertThat(Shown.text(place.element())).contains("All rules", "holds", "not for this plan");
    }

    @Test
    void anAnswerTakesAFindingOutOfTheOpenOnes() {
        HouseView page = open("findings");
        long open = page.session().findings().size();
        Finding asked = page.session().findings().stream()
                .filter(f -> f.rule().equals("connector-concealed"))
                .findFirst()
                .orElseThrow();
        page.session()
                .change(d -> DraftTree.put(
                        d.root(),
                        "/answers/" + d.root().path("answers").size(),
                        d.root()
                                .objectNode()
                                .put("rule", asked.rule())
                                .put("at", asked.at())
                                .put("says", "accepted")
                                .put("who", "inspector")
                                .put("date", "2026-09-01")));
        assertThat(page.session().findings()).hasSizeLessThan((int) open);
        assertThat(page.session().review().orElseThrow().findings())
                .filteredOn(f -> !f.isOpen())
                .isNotEmpty();
        assertThat(((FindingsPlace) page.placeShown()).groupsShown()).contains("Answered", "Accepted by the inspector");
    }

    @Test
    void anotherCodeShowsAtOnceWhatItChangesAndWhy() {
        HouseView page = open("house");
        HousePlace place = (HousePlace) page.placeShown();
        assertThat(place.changed().shown()).isEmpty();
        page.session()
                .change(d -> DraftTree.put(
                        d.root(),
                        "/code/amendments/0",
                        d.root()
                                .objectNode()
                                .put("rule", "shutoff-within-reach")
                                .put("limit", "1 ft")
                                .put("source", "county ordinance")));
        assertThat(place.changed().shown()).contains("held, now broken", "county ordinance");
        page.session().undo();
        assertThat(place.changed().shown()).isEmpty();
    }

    @Test
    void aSizeOfAPartIsOneThatPartsHave() {
        HouseView page = open("connections");
        String at = "/appliances/0/connection/0/size";
        page.kept("", java.util.Map.of(at + " size", "half"), java.util.Optional.empty());
        Field field = bench(page).fields().find(at).orElseThrow();
        assertThat(field.entry().orElseThrow().isWrong()).isTrue();
        assertThat(field.entry().orElseThrow().saying().orElseThrow()).contains("1/4, 3/8, 1/2");
        page.kept("", java.util.Map.of(at + " size", "half inch"), java.util.Optional.empty());
        assertThat(page.session().text(at)).isEqualTo("1/2");
        assertThat(field.entry().orElseThrow().saying()).contains("1/2 in.");
    }

    @Test
    void onlyWhatSomebodyDecidesCanBeAcceptedOrRefused() {
        HouseView page = open("findings");
        assertThat(page.session().findings()).isNotEmpty().allSatisfy(f -> {
            boolean fact = f.severity() == longrun.finding.Severity.NOTE
                    && f.askWhom().isPresent()
                    && f.askWhom().get() != longrun.finding.AskWhom.INSPECTOR;
            assertThat(FindingReply.isForADecision(f))
                    .isEqualTo(!fact && !f.rule().equals("entry-missing"));
        });
        page.session()
                .change(d -> DraftTree.put(
                        d.root(),
                        "/appliances/0/connection/0/sameRoom",
                        d.root().booleanNode(false)));
        assertThat(page.session().findings())
                .filteredOn(f -> f.rule().equals("shutoff-same-room"))
                .singleElement()
                .matches(FindingReply::isForADecision);
        FindingsPlace place = (FindingsPlace) page.placeShown();
        assertThat(place.groupsShown()).contains("Has whoever decides answered?");
    }
}
