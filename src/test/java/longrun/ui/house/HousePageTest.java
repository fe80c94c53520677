package longrun.ui.house;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.flow.component.UI;
import java.util.Map;
import java.util.Optional;
import longrun.draft.HouseSession;
import longrun.draft.OpenQuestions;
import longrun.draft.PlaceKind;
import longrun.draft.PlaceStatus;
import longrun.draft.PressureReduction;
import longrun.draft.demo.DemoHouse;
import longrun.draft.demo.DemoStep;
import longrun.draft.entry.DraftTree;
import longrun.plan.json.PlanReader;
import longrun.ui.Fired;
import longrun.ui.Shown;
import longrun.ui.frame.Caution;
import longrun.ui.frame.Entry;
import longrun.ui.house.findings.FindingsPlace;
import longrun.words.UnitSystem;
import org.junit.jupiter.api.Test;

/** The page of a whole house, without a browser. */
class HousePageTest extends OpenHouse {

    @Test
    void anEmptyHouseSaysWhereToBegin() {
        HouseView page = open("house");
        assertThat(HouseShown.state(page)).startsWith("Nothing to size yet");
        assertThat(HouseShown.status(page, PlaceKind.APPLIANCES)).isEqualTo("not entered yet");
    }

    @Test
    void theCautionStandsOnTheHouseWordForWord() {
        assertThat(Shown.text(open("house").getElement())).contains(Caution.TEXT);
    }

    @Test
    void aPictureFillsRegulatorsDropsAndThePipeBetween() {
        HouseView page = open("house");
        page.session().change(PressureReduction.WALL::into);
        assertThat(page.session().text("/regulators/0/outlet")).isEqualTo("10 psi");
        assertThat(page.session().text("/regulators/1/outlet")).isEqualTo("11 in w.c.");
        assertThat(page.session().text("/regulators/1/fedBy")).isEqualTo("Y1");
        assertThat(page.session().errors()).isEmpty();
        assertThat(Shown.chosen(page.getElement(), "h-cut")).contains(PressureReduction.WALL.name());
        assertThat(HouseShown.entry(page, "/regulators/1/outlet").text()).isEqualTo("11");
        page.session().undo();
        assertThat(Shown.chosen(page.getElement(), "h-cut")).isEmpty();
    }

    @Test
    void whatComesNextIsSaidInOneSentenceFromTheFirstEntryOn() {
        HouseView page = open("house");
        assertThat(HouseShown.next(page)).isEqualTo("Say how the pressure is reduced between tank and house.");
        page.session().change(PressureReduction.WALL::into);
        assertThat(HouseShown.next(page)).isEqualTo("Enter the first appliance, from its rating plate.");
        page.session()
                .change(d -> DraftTree.put(d.root(), "/appliances/0", tree("{\"id\":\"a\",\"kind\":\"furnace\"}")));
        assertThat(HouseShown.next(page)).isEqualTo("Enter the input of the furnace, from its rating plate.");
        page.session().set("/appliances/0/input", "80000 Btu/h");
        assertThat(HouseShown.next(page)).isEqualTo("Enter the length of section Y1.");
        assertThat(HouseShown.status(page, PlaceKind.ROUTE)).isNotEqualTo("nothing missing");
        assertThat(HouseShown.status(page, PlaceKind.TANK)).isEqualTo("not entered yet");
    }

    @Test
    void undoSaysWhatItTookBackWhereThatIsInAnotherPlace() {
        HouseView page = open("appliances");
        appliances(page).add("furnace");
        page.session().set("/appliances/0/input", "80000 Btu/h");
        page.session().endStep();
        Fired.event(page.getElement(), "sheet-undo");
        assertThat(HouseShown.step(page)).isEmpty();
        Fired.event(page.getElement(), "sheet-redo");
        page.show(PlaceKind.TANK);
        Fired.event(page.getElement(), "sheet-undo");
        assertThat(HouseShown.step(page)).isEqualTo("Taken back: Appliances, furnace, input. ");
        Fired.event(page.getElement(), "sheet-redo");
        assertThat(HouseShown.step(page)).isEqualTo("Done again: Appliances, furnace, input. ");
        page.session().set("/tank/size", "500 gal");
        assertThat(HouseShown.step(page)).isEmpty();
    }

    @Test
    void theDemoSaysWhatToLookAtInWhicheverPlaceOneIsAndCanBePutAway() {
        id = store.create("", DemoHouse.json()).id();
        for (DemoStep step : DemoStep.TOUR) {
            assertThat(HouseShown.walk(open(step.place().slug()))).contains(step.words());
        }
        assertThat(HouseShown.walk(open("fuel"))).startsWith("5 of 6, on Findings. ");
        HouseView page = open("house");
        Fired.press(page.getElement(), "Put away");
        assertThat(HouseShown.walk(page)).isEmpty();
        assertThat(HouseShown.walk(open("tank"))).isEmpty();
        id = store.create("", "{\"format\":\"longrun-plan/1\",\"name\":\"Hill house\"}")
                .id();
        assertThat(HouseShown.walk(open("house"))).isEmpty();
    }

    @Test
    void noMoreThanSevenQuestionsStandBeforeAPersonAtOnce() {
        HouseView page = open("findings");
        page.session().change(PressureReduction.WALL::into);
        page.session()
                .change(d -> DraftTree.put(
                        d.root(),
                        "/appliances",
                        tree("[{\"id\":\"a\",\"kind\":\"furnace\"},{\"id\":\"b\",\"kind\":\"range\"},"
                                + "{\"id\":\"c\",\"kind\":\"furnace\"},{\"id\":\"d\",\"kind\":\"range\"}]")));
        OpenQuestions open = OpenQuestions.of(page.session());
        assertThat(open.next()).hasSizeLessThanOrEqualTo(OpenQuestions.AT_ONCE);
        assertThat(open.now())
                .filteredOn(a -> a.first().field().endsWith("/input"))
                .as("four plates are one question")
                .singleElement()
                .satisfies(a -> assertThat(a.alike()).hasSize(4));
        assertThat(HouseShown.findings(page)).contains("The same is asked of").contains("Not entered yet");
    }

    @Test
    void whileEntriesAreMissingItSpeaksOfOpenQuestions() {
        HouseView page = open("house");
        page.session().change(PressureReduction.WALL::into);
        assertThat(HouseShown.state(page)).matches("[0-9]+ questions open: .*");
    }

    @Test
    void anApplianceAddedAsksForItsRatingPlate() {
        HouseView page = open("appliances");
        appliances(page).add("range");
        assertThat(Shown.count(page.getElement(), ".appliance")).isEqualTo(1);
        assertThat(HouseShown.note(page, "open")).contains("rating plate");
        assertThat(HouseShown.status(page, PlaceKind.APPLIANCES)).contains("question");
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
        assertThat(HouseShown.figure(page, "load")).isEqualTo("65,000 Btu/h");
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
        Entry input = HouseShown.entry(page, "/appliances/0/input");
        assertThat(input.text()).isEqualTo("65,000 Btu/h");
        assertThat(Shown.saying(input)).contains("19 kW");
        assertThat(page.session().text("/appliances/0/input")).isEqualTo("65,000 Btu/h");
    }

    @Test
    void aWrongEntryIsSaidAtItsFieldAndTheAnswerBeforeItStays() {
        HouseView page = open("appliances");
        appliances(page).add("range");
        page.session().set("/appliances/0/input", "65,000 Btu/h");
        page.session().endStep();
        page.session().set("/appliances/0/input", "65,000 elephants");
        assertThat(HouseShown.entry(page, "/appliances/0/input").isWrong()).isTrue();
        assertThat(HouseShown.state(page)).startsWith("Waiting for an entry");
        assertThat(HouseShown.figure(page, "load")).isEqualTo("65,000 Btu/h");
    }

    @Test
    void noneOnThePlateIsAnAnswerAndNotKnowingIsAnother() {
        HouseView page = open("appliances");
        appliances(page).add("range");
        long asked = questionsAbout(page, "/appliances/0/minInlet");
        page.session().choose("/appliances/0/minInlet", "none");
        assertThat(asked).isPositive();
        assertThat(Shown.text(page.getElement())).contains("You looked, and there is none.");
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
        Fired.press(page.getElement(), "Add a room");
        page.session().set("/appliances/0/kind", "range");
        page.session().choose("/appliances/0/room", "room");
        Fired.press(page.getElement(), "Remove this room");
        assertThat(page.session().errors()).isEmpty();
        assertThat(page.session().at("/appliances/0/room").isNothing()).isTrue();
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
        Fired.click(Shown.first(page.getElement(), "[aria-controls=from-load]"));
        assertThat(Shown.text(page.getElement(), "#from-load"))
                .contains("2018 International Fuel Gas Code, 402.2", "65,000 Btu/h");
    }

    @Test
    void anotherTabsChangeIsToldAndAsked() {
        HouseView page = open("house");
        HouseSession other =
                HouseSession.open(store, longrun.review.Reviewer.standard(), id).orElseThrow();
        other.set("/name", "Theirs");
        page.keptElsewhere("2");
        assertThat(HouseShown.notice(page))
                .contains("Another tab changed this house", "Take what the other tab has", "Keep what is here");
        page.session().saveChoices().takeTheirs();
        assertThat(HouseShown.notice(page)).isEmpty();
        assertThat(HouseShown.entry(page, "/name").text()).isEqualTo("Theirs");
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
        assertThat(HouseShown.state(page)).startsWith("Sized, not approved").contains("D");
        assertThat(HouseShown.figure(page, "load")).isEqualTo("324,000 Btu/h");
        assertThat(HouseShown.figure(page, "run")).isEqualTo("59.5 ft");
        assertThat(HouseShown.note(page, "run")).contains("47.0 measured, 12.5 for fittings");
    }

    @Test
    void aHouseThatIsNotThereLeadsToTheList() {
        UI.getCurrent().navigate("house/999999/house");
        assertThat(UI.getCurrent().getCurrentView().getClass().getSimpleName()).isEqualTo("HousesView");
    }

    /** 304.5.1: 50 ft3 for each 1,000 of 40,000 Btu/h; 304.6: an opening outdoors of 1 in2 for each 3,000. */
    @Test
    void theAirOfARoomIsWorkedOutInSight() {
        id = store.create("", """
                {"format":"longrun-plan/1","rooms":[{"id":"den","volume":"1900 ft3",
                 "openings":[{"to":"outdoors","area":"14 in2"}]}],
                 "appliances":[{"id":"a","kind":"space-heater","vent":"draft","room":"den","input":"40000 Btu/h"}]}
                """).id();
        HouseView page = open("house");
        assertThat(Shown.inSight(page.getElement()))
                .contains("Too little: 50 ft3 for each 1,000 of 40,000 Btu/h make 2,000 ft3", "Enough: outdoors");
    }

    @Test
    void aRoomsOpeningsAreNamedOrNoneOrNotKnown() {
        HouseView page = open("house");
        Fired.press(page.getElement(), "Add a room");
        Fired.press(page.getElement(), "Add a room");
        assertThat(page.session().at("/rooms/0/openings").isNothing()).isTrue();
        Fired.press(page.getElement(), "there is none");
        assertThat(page.session().at("/rooms/0/openings")).isEmpty();
        assertThat(page.session().at("/rooms/0/openings").isList()).isTrue();
        Fired.press(page.getElement(), "Add an opening");
        page.kept("", Map.of("/rooms/0/openings/0/area in2", "100"), Optional.empty());
        HouseShown.choose(page, "/rooms/0/openings/0/to", "outdoors");
        assertThat(page.session().text("/rooms/0/openings/0/area")).isEqualTo("100 in2");
        assertThat(page.session().errors()).isEmpty();
        assertThat(Shown.text(page.getElement())).contains("100 sq in.", "outdoors", "into the rest of the house");
        Fired.press(page.getElement(), "Remove this opening");
        assertThat(page.session().at("/rooms/0/openings").isNothing()).isTrue();
        Fired.press(page.getElement(), "Remove this room");
        Fired.press(page.getElement(), "Remove this room");
        assertThat(page.session().at("/rooms")).isEmpty();
    }

    @Test
    void theTanksVapourCountsInItsPlaceTheAnswerAndTheFindings() {
        HouseView page = open("tank");
        page.session().set("/site/winterDesignTemp", "8 degF");
        assertThat(HouseShown.status(page, PlaceKind.TANK)).isEqualTo("not entered yet");
        page.session()
                .change(d -> DraftTree.put(
                        d.root(),
                        "/appliances/0",
                        tree("{\"id\":\"a\",\"kind\":\"furnace\",\"input\":\"900,000 Btu/h\"}")));
        page.session()
                .change(d -> DraftTree.put(
                        d.root(),
                        "/tank",
                        tree("{\"kind\":\"asme\",\"waterCapacity\":\"500"
                                + " gal\",\"orientation\":\"horizontal\",\"placement\":\"above-ground\",\"refillAt\":\"30"
                                + " %\"}")));
        assertThat(HouseShown.status(page, PlaceKind.TANK)).contains("caution");
        assertThat(HouseShown.findings(open("findings"))).contains("Everything firing", "the tank gives");
    }

    @Test
    void whatTheYearWaitsForIsAskedInFuel() {
        HouseView page = open("fuel");
        page.session().set("/use/heating/designLoad", "38000 Btu/h");
        assertThat(HouseShown.status(page, PlaceKind.FUEL)).contains("question");
        OpenQuestions open = OpenQuestions.of(page.session());
        assertThat(HouseShown.figure(page, "open")).isEqualTo(String.valueOf(open.count()));
        assertThat(open.now()).noneMatch(a -> a.place() == PlaceKind.TANK);
    }

    @Test
    void aPriceOfElectricityIsNoHotWaterYet() {
        HouseView page = open("fuel");
        page.session().set("/use/pricePerKwh", "0.15");
        assertThat(PlaceStatus.isStarted(page.session(), PlaceKind.HOT_WATER)).isFalse();
        page.session().set("/use/hotWater/useTemp", "105 degF");
        assertThat(PlaceStatus.isStarted(page.session(), PlaceKind.HOT_WATER)).isTrue();
    }

    @Test
    void coldWaterIsSaidWhereHotWaterIs() {
        HouseView page = open("hot-water");
        page.kept("", Map.of("/site/coldWater/temp degF", "51"), Optional.empty());
        assertThat(page.session().text("/site/coldWater/temp")).isEqualTo("51 degF");
        page.goTo("/site/coldWater/source");
        assertThat(PlaceKind.of("/site/coldWater/source")).isEqualTo(PlaceKind.HOT_WATER);
        assertThat(page.session().errors()).isEmpty();
    }

    @Test
    void anApplianceThatNoSectionFeedsIsLackingInRouteAndAnswer() throws Exception {
        String demo = DemoHouse.json();
        com.fasterxml.jackson.databind.node.ObjectNode plan =
                (com.fasterxml.jackson.databind.node.ObjectNode) tree(demo);
        plan.withArray("appliances")
                .addObject()
                .put("id", "dryer")
                .put("name", "Dryer")
                .put("kind", "clothes-dryer");
        id = store.create("", plan.toString()).id();
        HouseView page = open("route");
        String sizes = Shown.text(page.getElement());
        assertThat(HouseShown.status(page, PlaceKind.ROUTE)).contains("question");
        assertThat(sizes).contains("No section feeds the Dryer yet.").contains("sections settled");
    }

    @Test
    void anAddressThatIsNoneGetsAPageOfOurs() {
        for (String address : java.util.List.of("house/abc/house", "house/1/nowhere", "nowhere/at/all")) {
            UI.getCurrent().navigate(address);
            assertThat(Shown.text(UI.getCurrent().getCurrentView().getElement()))
                    .as(address)
                    .contains("There is no page at this address")
                    .doesNotContain("Exception");
        }
    }
}
