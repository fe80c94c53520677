package longrun.ui.house.connections;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.flow.component.UI;
import elemental.json.Json;
import elemental.json.JsonObject;
import java.util.List;
import longrun.Samples;
import longrun.draft.PlaceKind;
import longrun.draft.entry.DraftTree;
import longrun.finding.Finding;
import longrun.store.DraftStore;
import longrun.ui.Fired;
import longrun.ui.Shown;
import longrun.ui.frame.Entry;
import longrun.ui.house.HouseShown;
import longrun.ui.house.HouseView;
import longrun.ui.house.OpenHouses;
import longrun.ui.house.findings.FindingReply;
import longrun.ui.house.findings.FindingsPlace;
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

    private static void move(HouseView page, int from, int to) {
        JsonObject detail = Json.createObject();
        detail.put("from", from);
        detail.put("to", to);
        JsonObject data = Json.createObject();
        data.put("event.detail", detail);
        Fired.event(Shown.first(page.getElement(), "hookup-board"), "part-moved", data);
    }

    private static String board(HouseView page) {
        return Shown.markUp(page.getElement(), "hookup-board");
    }

    private static String changes(HouseView page) {
        return Shown.wordsInSight(page.getElement(), ".changes");
    }

    private static String order(HouseView page) {
        return Shown.wordsInSight(page.getElement(), ".order");
    }

    private static List<String> rules(HouseView page) {
        return page.session().findings().stream().map(Finding::rule).toList();
    }

    @Test
    void aTrapMovedAheadOfTheShutoffIsToldAndPutRightAgain() {
        HouseView page = open("connections");
        move(page, 1, 0);
        assertThat(rules(page)).contains("trap-downstream-of-shutoff");
        assertThat(board(page)).contains("mark-wrong", "belongs here");
        assertThat(order(page)).contains("comes before the shutoff", "In the right order");
        Fired.press(page.getElement(), "Put the parts in the right order");
        assertThat(rules(page)).doesNotContain("trap-downstream-of-shutoff");
        assertThat(order(page)).isEmpty();
        page.session().undo();
        assertThat(rules(page)).contains("trap-downstream-of-shutoff");
    }

    @Test
    void aPartAddedTakesItsPlaceInTheRow() {
        HouseView page = open("connections");
        HouseShown.changed(Shown.first(page.getElement(), "#add-part"), "union");
        assertThat(page.session().text("/appliances/0/connection/2/part")).isEqualTo("union");
        assertThat(Shown.count(page.getElement(), ".part-b")).isEqualTo(4);
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
        assertThat(Shown.markUp(page.getElement(), "[aria-label='The regulator, drawn']"))
                .contains(">10 ft<");
    }

    @Test
    void aWrongEntryLeavesTheDrawingAsItCanBeDrawn() {
        HouseView page = open("connections");
        page.session().set("/appliances/0/connection/0/distance", "2 furlongs");
        assertThat(page.session().isCurrent()).isFalse();
        assertThat(board(page)).contains("data-part=\"2\"").doesNotContain("furlongs");
    }

    @Test
    void findingsAreSortedThreeWaysAndAllRulesStandBelow() {
        HouseView page = open("findings");
        FindingsPlace place = (FindingsPlace) page.placeShown();
        assertThat(HouseShown.findings(page)).contains("Questions for you");
        place.sort(FindingsPlace.Sorting.WHOM);
        assertThat(HouseShown.findings(page)).contains("For the fitter");
        place.sort(FindingsPlace.Sorting.PLACE);
        assertThat(HouseShown.findings(page)).contains("The house and its ground");
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
        assertThat(HouseShown.findings(page)).contains("Answered", "Accepted by the inspector");
    }

    @Test
    void anotherCodeShowsAtOnceWhatItChangesAndWhy() {
        HouseView page = open("house");
        assertThat(changes(page)).isEmpty();
        page.session()
                .change(d -> DraftTree.put(
                        d.root(),
                        "/code/amendments/0",
                        d.root()
                                .objectNode()
                                .put("rule", "shutoff-within-reach")
                                .put("limit", "1 ft")
                                .put("source", "county ordinance")));
        assertThat(changes(page)).contains("held, now broken", "county ordinance");
        page.session().undo();
        assertThat(changes(page)).isEmpty();
    }

    @Test
    void aSizeOfAPartIsOneThatPartsHave() {
        HouseView page = open("connections");
        String at = "/appliances/0/connection/0/size";
        page.kept("", java.util.Map.of(at + " size", "half"), java.util.Optional.empty());
        Entry field = HouseShown.entry(page, at);
        assertThat(field.isWrong()).isTrue();
        assertThat(Shown.saying(field).orElseThrow()).contains("1/4, 3/8, 1/2");
        page.kept("", java.util.Map.of(at + " size", "half inch"), java.util.Optional.empty());
        assertThat(page.session().text(at)).isEqualTo("1/2");
        assertThat(Shown.saying(field)).contains("1/2 in.");
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
        assertThat(HouseShown.findings(page)).contains("Has whoever decides answered?");
    }
}
