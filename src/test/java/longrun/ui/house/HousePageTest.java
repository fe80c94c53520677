package longrun.ui.house;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.flow.component.UI;
import java.util.Map;
import java.util.Optional;
import longrun.plan.json.PlanReader;
import longrun.store.DraftStore;
import longrun.ui.Shown;
import longrun.ui.frame.Caution;
import longrun.ui.frame.Entry;
import longrun.ui.frame.UnitSystem;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** The page of a whole house, without a browser. */
class HousePageTest extends OpenHouses {

    @Autowired
    DraftStore store;

    private long id;

    @BeforeEach
    void begin() {
        id = store.create("", "{\"format\":\"longrun-plan/1\"}").id();
    }

    private HouseView open(String place) {
        UI.getCurrent().navigate("house/" + id + "/" + place);
        HouseView page = (HouseView) UI.getCurrent().getCurrentView();
        page.kept("", Map.of(), Optional.empty());
        return page;
    }

    private static Entry entry(FieldList fields, String pointer) {
        return fields.find(pointer).flatMap(Field::entry).orElseThrow();
    }

    private static com.fasterxml.jackson.databind.JsonNode tree(String json) {
        try {
            return PlanReader.tree(json);
        } catch (com.fasterxml.jackson.core.JsonProcessingException e) {
            throw new IllegalArgumentException(e);
        }
    }

    private AppliancesPlace appliances(HouseView page) {
        return (AppliancesPlace) page.placeShown();
    }

    @Test
    void anEmptyHouseSaysWhereToBegin() {
        HouseView page = open("house");
        assertThat(page.panel().stateShown()).startsWith("Nothing to size yet");
        assertThat(page.threadShown().lackShown(PlaceKind.APPLIANCES)).isEqualTo("not begun");
    }

    @Test
    void theCautionStandsOnTheHouseWordForWord() {
        assertThat(Shown.text(open("house").getElement())).contains(Caution.TEXT);
    }

    @Test
    void aPictureFillsRegulatorsDropsAndThePipeBetween() {
        HouseView page = open("house");
        page.session().change(PressureCut.WALL::into);
        assertThat(page.session().text("/regulators/0/outlet")).isEqualTo("10 psi");
        assertThat(page.session().text("/regulators/1/outlet")).isEqualTo("11 in w.c.");
        assertThat(page.session().text("/regulators/1/fedBy")).isEqualTo("Y1");
        assertThat(page.session().errors()).isEmpty();
        HousePlace place = (HousePlace) page.placeShown();
        assertThat(place.cuts().value()).contains(PressureCut.WALL);
        assertThat(entry(place.fields(), "/regulators/1/outlet").text()).isEqualTo("11");
        page.session().undo();
        assertThat(place.cuts().value()).isEmpty();
    }

    @Test
    void whileEntriesAreMissingItSpeaksOfOpenQuestions() {
        HouseView page = open("house");
        page.session().change(PressureCut.WALL::into);
        assertThat(page.panel().stateShown()).matches("[0-9]+ questions open: .*");
    }

    @Test
    void anApplianceAddedAsksForItsRatingPlate() {
        HouseView page = open("appliances");
        appliances(page).add("range");
        assertThat(appliances(page).blocks()).hasSize(1);
        assertThat(page.panel().openSlot().noteShown()).contains("rating plate");
        assertThat(page.threadShown().lackShown(PlaceKind.APPLIANCES)).contains("question");
    }

    @Test
    void twoOfAKindHaveNamesOfTheirOwn() {
        HouseView page = open("appliances");
        appliances(page).add("range");
        appliances(page).add("range");
        assertThat(page.session().errors()).isEmpty();
    }

    @Test
    void aBareNumberHasTheUnitBesideItsLabel() {
        HouseView page = open("appliances");
        appliances(page).add("range");
        page.kept("", Map.of("/appliances/0/input Btu/h", "65,000"), Optional.empty());
        assertThat(page.session().text("/appliances/0/input")).isEqualTo("65,000 Btu/h");
        assertThat(page.panel().loadSlot().figureShown()).isEqualTo("65,000Btu/h");
    }

    @Test
    void anInputTenTimesTooLargeIsAskedAgain() {
        HouseView page = open("appliances");
        appliances(page).add("range");
        page.session().set("/appliances/0/input", "650,000 Btu/h");
        assertThat(Shown.text(page.getElement())).contains("32,500 to 130,000 Btu/h");
    }

    @Test
    void otherUnitsLeaveWhatWasTypedAsTyped() {
        HouseView page = open("appliances");
        appliances(page).add("range");
        page.session().set("/appliances/0/input", "65,000 Btu/h");
        page.kept("", Map.of(), Optional.of(UnitSystem.METRIC));
        Entry input = entry(appliances(page).fields(), "/appliances/0/input");
        assertThat(input.text()).isEqualTo("65,000 Btu/h");
        assertThat(input.saying()).contains("19 kW");
        assertThat(page.session().text("/appliances/0/input")).isEqualTo("65,000 Btu/h");
    }

    @Test
    void aWrongEntryIsSaidAtItsFieldAndTheAnswerBeforeItStays() {
        HouseView page = open("appliances");
        appliances(page).add("range");
        page.session().set("/appliances/0/input", "65,000 Btu/h");
        page.session().endStep();
        page.session().set("/appliances/0/input", "65,000 elephants");
        assertThat(entry(appliances(page).fields(), "/appliances/0/input").isWrong())
                .isTrue();
        assertThat(page.panel().stateShown()).startsWith("Waiting for an entry");
        assertThat(page.panel().loadSlot().figureShown()).isEqualTo("65,000Btu/h");
    }

    @Test
    void noneOnThePlateIsAnAnswerAndNotKnowingIsAnother() {
        HouseView page = open("appliances");
        appliances(page).add("range");
        long asked = questionsAbout(page, "/appliances/0/minInlet");
        page.session().choose("/appliances/0/minInlet", "none");
        assertThat(asked).isPositive();
        assertThat(Shown.text(page.getElement())).contains("Looked; there is none.");
        page.session().remove("/appliances/0/minInlet");
        assertThat(questionsAbout(page, "/appliances/0/minInlet")).isEqualTo(asked);
    }

    private static long questionsAbout(HouseView page, String pointer) {
        return page.session().findings().stream()
                .filter(f -> f.field().equals(pointer))
                .count();
    }

    @Test
    void aRoomRemovedLeavesNoApplianceInIt() {
        HouseView page = open("house");
        ((HousePlace) page.placeShown()).rooms().add();
        page.session().set("/appliances/0/kind", "range");
        page.session().choose("/appliances/0/room", "room");
        ((HousePlace) page.placeShown()).rooms().remove(0);
        assertThat(page.session().errors()).isEmpty();
        assertThat(page.session().at("/appliances/0/room").isMissingNode()).isTrue();
    }

    @Test
    void aFindingLeadsToThePlaceOfItsField() {
        HouseView page = open("findings");
        page.session().set("/appliances/0/kind", "range");
        page.goTo("/appliances/0/input");
        assertThat(((HouseView) UI.getCurrent().getCurrentView()).getPageTitle())
                .startsWith("Appliances");
    }

    @Test
    void theQuestionsToTakeAlongAreSortedByWhoCanAnswer() {
        HouseView page = open("findings");
        page.session().set("/appliances/0/kind", "range");
        ((FindingsPlace) page.placeShown()).sort(FindingsPlace.Sorting.WHOM);
        assertThat(Shown.text(page.getElement())).contains("From the rating plates");
    }

    @Test
    void theConnectedLoadTellsWhereItIsFrom() {
        HouseView page = open("appliances");
        appliances(page).add("range");
        page.session().set("/appliances/0/input", "65,000 Btu/h");
        page.panel().loadSlot().whereFrom().open(true);
        assertThat(Shown.text(page.panel().loadSlot().whereFrom().list()))
                .contains("2018 International Fuel Gas Code, 402.2", "65,000 Btu/h");
    }

    @Test
    void anotherTabsChangeIsToldAndAsked() {
        HouseView page = open("house");
        HouseSession other =
                HouseSession.open(store, longrun.review.Reviewer.standard(), id).orElseThrow();
        other.set("/name", "Theirs");
        page.keptElsewhere("2");
        assertThat(page.noticeShown())
                .contains("Another tab changed this house", "Take what the other tab has", "Keep what is here");
        page.session().takeTheirs();
        assertThat(page.noticeShown()).isEmpty();
        assertThat(entry(((HousePlace) page.placeShown()).fields(), "/name").text())
                .isEqualTo("Theirs");
    }

    @Test
    void namesThatLookLikeMarkUpAreWords() {
        HouseView page = open("house");
        String name = "<script>alert(1)</script> \"O'Hara\" & \ud83d\udd25";
        page.session().set("/name", name);
        assertThat(Shown.text(page.getElement())).contains(name);
        assertThat(page.getElement().getOuterHTML()).doesNotContain("<script>alert");
    }

    @Test
    void theDemoHouseIsSizedAsDrawn() throws Exception {
        try (var in = HousePageTest.class.getResourceAsStream("/longrun/data/demo/orchard-house.json")) {
            String json = PlanReader.tree(new String(in.readAllBytes(), java.nio.charset.StandardCharsets.UTF_8))
                    .toString();
            id = store.create("Orchard house", json).id();
        }
        HouseView page = open("appliances");
        assertThat(page.panel().stateShown()).startsWith("Sized, not approved").contains("D");
        assertThat(page.panel().loadSlot().figureShown()).isEqualTo("324,000Btu/h");
        assertThat(page.panel().runSlot().figureShown()).isEqualTo("59.5ft");
        assertThat(page.panel().runSlot().noteShown()).contains("47.0 measured, 12.5 for fittings");
    }

    @Test
    void aHouseThatIsNotThereLeadsToTheList() {
        UI.getCurrent().navigate("house/999999/house");
        assertThat(UI.getCurrent().getCurrentView().getClass().getSimpleName()).isEqualTo("HousesView");
    }

    @Test
    void aRoomsOpeningsAreNamedOrNoneOrNotKnown() {
        HouseView page = open("house");
        HousePlace place = (HousePlace) page.placeShown();
        place.rooms().add();
        place.rooms().add();
        assertThat(page.session().at("/rooms/0/openings").isMissingNode()).isTrue();
        OpeningList air = place.rooms().openings("/rooms/0");
        air.answerNone();
        assertThat(page.session().at("/rooms/0/openings")).isEmpty();
        assertThat(page.session().at("/rooms/0/openings").isArray()).isTrue();
        air.add();
        page.kept("", Map.of("/rooms/0/openings/0/area in2", "100"), Optional.empty());
        ((ChoiceField) place.fields().find("/rooms/0/openings/0/to").orElseThrow()).chosen("outdoors");
        assertThat(page.session().text("/rooms/0/openings/0/area")).isEqualTo("100 in2");
        assertThat(page.session().errors()).isEmpty();
        assertThat(Shown.text(page.getElement())).contains("100 sq in.", "outdoors", "into the rest of the house");
        air.remove(0);
        assertThat(page.session().at("/rooms/0/openings").isMissingNode()).isTrue();
        place.rooms().remove(0);
        place.rooms().remove(0);
        assertThat(page.session().at("/rooms")).isEmpty();
    }

    @Test
    void theTanksVapourCountsInItsPlaceTheAnswerAndTheFindings() {
        HouseView page = open("tank");
        page.session().set("/site/winterDesignTemp", "8 degF");
        assertThat(page.threadShown().lackShown(PlaceKind.TANK)).contains("question");
        page.session()
                .change(d -> DraftTree.put(
                        d, "/appliances/0", tree("{\"id\":\"a\",\"kind\":\"furnace\",\"input\":\"900,000 Btu/h\"}")));
        page.session()
                .change(
                        d -> DraftTree.put(
                                d,
                                "/tank",
                                tree(
                                        "{\"kind\":\"asme\",\"waterCapacity\":\"500 gal\",\"orientation\":\"horizontal\",\"placement\":\"above-ground\",\"refillAt\":\"30 %\"}")));
        assertThat(page.threadShown().lackShown(PlaceKind.TANK)).contains("caution");
        FindingsPlace findings = (FindingsPlace) open("findings").placeShown();
        assertThat(findings.groupsShown()).contains("Everything firing", "the tank gives");
    }

    @Test
    void whatTheYearWaitsForIsAskedInFuel() {
        HouseView page = open("fuel");
        page.session().set("/use/heating/designLoad", "38000 Btu/h");
        assertThat(page.threadShown().lackShown(PlaceKind.FUEL)).contains("question");
        int open = page.session().findings().size();
        assertThat(page.panel().openSlot().figureShown()).isEqualTo(String.valueOf(open));
    }

    @Test
    void coldWaterIsSaidWhereTheYearIs() {
        HouseView page = open("fuel");
        page.kept("", Map.of("/site/coldWater/temp degF", "51"), Optional.empty());
        assertThat(page.session().text("/site/coldWater/temp")).isEqualTo("51 degF");
        page.goTo("/site/coldWater/source");
        assertThat(PlaceKind.of("/site/coldWater/source")).isEqualTo(PlaceKind.FUEL);
        assertThat(page.session().errors()).isEmpty();
    }

    @Test
    void anInputMayBeWrittenInThousandsOrInBtuAndWhatIsTypedStaysInItsField() {
        HouseView page = open("appliances");
        appliances(page).add("furnace");
        Entry input = entry(appliances(page).fields(), "/appliances/0/input");
        input.getElement().setProperty("value", "199k");
        page.kept("", Map.of("/appliances/0/input Btu/h", "199k"), Optional.empty());
        assertThat(page.session().text("/appliances/0/input")).isEqualTo("199 kBtu/h");
        assertThat(input.text()).isEqualTo("199k");
        assertThat(input.saying()).contains("199,000 Btu/h");
        page.kept("", Map.of("/appliances/0/input Btu/h", "199,000 BTU"), Optional.empty());
        assertThat(page.session().text("/appliances/0/input")).isEqualTo("199,000 Btu/h");
        assertThat(page.session().errors()).isEmpty();
    }

    @Test
    void aCountTypedWhileTheProgramWasAwayIsANumber() {
        HouseView page = open("house");
        page.kept("", Map.of("/site/people number", "4"), Optional.empty());
        assertThat(page.session().at("/site/people").isNumber()).isTrue();
        assertThat(page.session().errors()).isEmpty();
    }

    @Test
    void aCountNobodyHasIsRefusedAndOneOutsideTheUsualIsAsked() {
        HouseView page = open("house");
        HousePlace place = (HousePlace) page.placeShown();
        Entry people = entry(place.fields(), "/site/people");
        page.kept("", Map.of("/site/people number", "9999999"), Optional.empty());
        assertThat(people.isWrong()).isTrue();
        assertThat(people.saying().orElseThrow()).contains("9,999,999", "up to 1,000");
        page.kept("", Map.of("/site/people number", "45"), Optional.empty());
        assertThat(people.isWrong()).isFalse();
        assertThat(page.session().findings()).anyMatch(f -> f.field().equals("/site/people"));
    }

    @Test
    void ofAnEmptyHouseItIsNeverSaidThatNothingIsLacking() {
        HouseView page = open("house");
        page.session().change(d -> {
            d.put("fittingAllowance", "counted");
            d.putArray("sections");
            d.putArray("appliances");
            d.putObject("tank");
            d.putObject("use").putArray("others").addObject();
        });
        for (PlaceKind place : PlaceKind.values()) {
            assertThat(page.threadShown().lackShown(place)).doesNotContain("nothing lacking");
        }
        assertThat(page.threadShown().lackShown(PlaceKind.ROUTE)).startsWith("not begun");
        assertThat(page.threadShown().lackShown(PlaceKind.CONNECTIONS)).startsWith("not begun");
        assertThat(page.threadShown().lackShown(PlaceKind.TANK)).startsWith("not begun");
        assertThat(page.threadShown().lackShown(PlaceKind.FUEL)).startsWith("not begun");
    }

    @Test
    void aClimateIsABeginningOfTheYear() {
        HouseView page = open("house");
        page.session().change(d -> DraftTree.put(d, "/site/coldWater/temp", d.textNode("50 degF")));
        assertThat(page.threadShown().lackShown(PlaceKind.FUEL)).doesNotContain("not begun");
    }

    @Test
    void whatWasNotUnderstoodStandsFirstAmongTheFindings() {
        HouseView page = open("appliances");
        appliances(page).add("furnace");
        page.session().set("/appliances/0/input", "65,000 elephants");
        page.kept("", Map.of("/site/people number", "four"), Optional.empty());
        page = open("findings");
        FindingsPlace place = (FindingsPlace) page.placeShown();
        assertThat(place.groupsShown())
                .startsWith("Not understood, 2")
                .contains("House, people", "\u201cfour\u201d is no number", "Appliances, furnace, input", "elephants")
                .contains("go to the entry")
                .doesNotContain("Nothing is found");
        assertThat(page.threadShown().lackShown(PlaceKind.FINDINGS)).contains("2 entries not understood");
        page.session().remove("/site/people");
        page.session().set("/appliances/0/input", "65,000 Btu/h");
        assertThat(place.groupsShown()).doesNotContain("Not understood");
    }

    @Test
    void aPieceOfPipeIsCalledASectionEverywhereInTheHouse() {
        id = store.create("", longrun.Samples.text("data/demo/orchard-house.json"))
                .id();
        for (PlaceKind place : PlaceKind.values()) {
            HouseView page = open(place.slug());
            String said = Shown.text(page.getElement()) + page.panel().handInShort();
            assertThat(said.replaceAll("(?i)(line regulator|propane line|property line|psi line|lines of date)", ""))
                    .doesNotContainPattern(
                            "\\b[Ll]ines? [A-Z][0-9]?\\b|Fed by line|[Rr]emove (this )?line|[0-9] lines\\b|No line");
        }
    }
}
