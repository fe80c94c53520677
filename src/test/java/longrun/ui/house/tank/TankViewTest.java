package longrun.ui.house.tank;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.flow.component.UI;
import elemental.json.Json;
import elemental.json.JsonObject;
import longrun.Samples;
import longrun.store.DraftStore;
import longrun.ui.Fired;
import longrun.ui.house.HouseShown;
import longrun.ui.house.HouseView;
import longrun.ui.house.OpenHouses;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** The place of the tank, without a browser: a 500 gal tank lying above ground, refilled at 30 %, 8 degF. */
class TankViewTest extends OpenHouses {

    @Autowired
    DraftStore store;

    private HouseView page;

    private TankView open(String json) {
        long id = store.create("", json).id();
        UI.getCurrent().navigate("house/" + id + "/tank");
        page = (HouseView) UI.getCurrent().getCurrentView();
        return (TankView) page.placeShown();
    }

    private static String demo() {
        return Samples.text("data/demo/orchard-house.json");
    }

    @Test
    void theRuleAndTheDoubtBesideItAreShown() {
        TankView place = open(demo());
        assertThat(HouseShown.inPlace(page, "rule")).isEqualTo("433,000 Btu/h");
        assertThat(HouseShown.inPlace(page, "planned")).isEqualTo("219,000 Btu/h");
        assertThat(HouseShown.drawing(page, "Vapour against the temperature of the air"))
                .contains(">need<", "design temperature", ">keeps 20 psig<");
    }

    @Test
    void aTankAtTheRefillGaugeHoldsWhatIsUsableLess() {
        TankView place = open(demo());
        assertThat(HouseShown.inPlace(page, "usable")).isEqualTo("250 gal");
        assertThat(HouseShown.inPlace(page, "usable-low")).isEqualTo("225 gal");
        assertThat(HouseShown.inPlace(page, "now")).isEqualTo("310 gal");
    }

    @Test
    void playingMovesTheFiguresAndLeavesTheDraftAlone() {
        TankView place = open(demo());
        String before = page.session().draft().toString();
        HouseShown.slide(page, "play-air", "-10");
        assertThat(HouseShown.inPlace(page, "rule")).isEqualTo("155,000 Btu/h");
        assertThat(HouseShown.inPlace(page, "planned")).isEqualTo("0 Btu/h");
        HouseShown.slide(page, "play-gauge", "80");
        assertThat(HouseShown.inPlace(page, "rule")).isNotEqualTo("155,000 Btu/h");
        assertThat(page.session().draft().toString()).isEqualTo(before);
    }

    @Test
    void aReadingIsKeptWithItsDayOnlyWhenAskedTo() {
        TankView place = open(demo());
        HouseShown.slide(page, "play-gauge", "47");
        JsonObject today = Json.createObject();
        today.put(TankPlay.TODAY, "2026-11-03");
        Fired.event(Fired.button(page.getElement(), "Keep this reading"), "click", today);
        assertThat(page.session().text("/tank/gauge")).isEqualTo("47 %");
        assertThat(page.session().text("/tank/gaugeDate")).isEqualTo("2026-11-03");
        page.session().undo();
        assertThat(page.session().text("/tank/gauge")).isEqualTo("62 %");
    }

    @Test
    void anEmptyPlaceSaysWhatIsMissingAndDrawsNoZero() {
        TankView place = open("{\"format\":\"longrun-plan/1\"}");
        assertThat(HouseShown.inPlace(page, "rule")).isEqualTo("not known");
        assertThat(HouseShown.drawing(page, "Vapour against the temperature of the air"))
                .contains("Missing: the tank")
                .doesNotContain(">a short time<");
        assertThat(HouseShown.inPlace(page, "usable")).isEqualTo("not known");
        assertThat(HouseShown.part(page, "smallest")).contains("not known; needs");
    }

    @Test
    void theSmallestTankIsToldWithItsDistances() {
        TankView place = open(demo());
        assertThat(HouseShown.part(page, "smallest")).contains("Above ground: 1,000 gal", "25 ft from a building");
    }

    @Test
    void aGaugeTypedIsWorkedOutAMomentAfterTheKey() {
        TankView place = open(demo());
        page.session().set("/tank/refillAt", "20 %");
        assertThat(HouseShown.inPlace(page, "usable")).isEqualTo("250 gal");
        place.work();
        assertThat(HouseShown.inPlace(page, "usable")).isEqualTo("300 gal");
    }

    @Test
    void aWrongEntryKeepsTheFiguresBeforeIt() {
        TankView place = open(demo());
        page.session().set("/tank/waterCapacity", "five hundred");
        place.work();
        assertThat(HouseShown.inPlace(page, "rule")).isEqualTo("433,000 Btu/h");
        assertThat(page.session().error("/tank/waterCapacity")).isPresent();
    }

    @Test
    void everyTankOfAListHasItsFields() {
        String two =
                "[{\"kind\":\"asme\",\"waterCapacity\":\"500 gal\"},{\"kind\":\"asme\",\"waterCapacity\":\"320 gal\"}]";
        TankView place = open("{\"format\":\"longrun-plan/1\",\"tanks\":" + two + "}");
        assertThat(HouseShown.entry(page, "/tanks/1/toBuilding").text()).isEmpty();
    }

    @Test
    void aSecondTankUnlikeTheFirstHasItsOwnMeasures() {
        TankView place = open(demo());
        String first = page.session().text("/tank/waterCapacity");
        place.addTank();
        assertThat(page.session().at("/tank").isNothing()).isTrue();
        assertThat(page.session().text("/tanks/0/waterCapacity")).isEqualTo(first);
        page.session().set("/tanks/1/diameter", "37 in");
        page.session().set("/tanks/1/length", "120 in");
        assertThat(page.session().errors()).isEmpty();
        assertThat(page.session().review().orElseThrow().plan().allTanks()).hasSize(2);
        assertThat(HouseShown.entry(page, "/tanks/1/diameter").text()).isEmpty();
        place.removeTank(1);
        assertThat(page.session().review().orElseThrow().plan().allTanks()).hasSize(1);
        assertThat(page.session().text("/tanks/0/waterCapacity")).isEqualTo(first);
    }

    @Test
    void eachOfTheTwoFiguresSaysWhatItIs() {
        TankView place = open(demo());
        assertThat(HouseShown.besideInPlace(page, "planned"))
                .contains("refill gauge", "keeping 20 psig", "88 hours a year");
        assertThat(HouseShown.besideInPlace(page, "rule")).contains("10.7 psig").doesNotContain("88 hours");
    }

    @Test
    void theDesignTemperatureIsNotCalledTheColdestMorning() {
        TankView place = open(demo());
        String all = longrun.ui.Shown.text(place.element());
        assertThat(all).doesNotContainIgnoringCase("coldest morning");
        assertThat(all.split("88 hours", -1)).hasSize(2);
    }

    @Test
    void everythingFiringIsHeldForHoursAndNotWithoutEnd() {
        TankView place = open(demo());
        assertThat(longrun.ui.Shown.text(place.element()))
                .contains("23 h", "balance point of 62", "3,800 Btu/h")
                .doesNotContain("without end");
    }

    @Test
    void howLongIsTheSameInTheTableAndInTheFinding() {
        TankView place = open(demo().replace("199,000 Btu/h", "640,000 Btu/h"));
        String found = page.session().findings().stream()
                .map(f -> f.found())
                .filter(f -> f.contains("; held for "))
                .findFirst()
                .orElseThrow();
        String minutes = found.replaceAll(".*held for ([0-9,]+ (min|h)) .*", "$1");
        assertThat(longrun.ui.Shown.text(place.element())).contains(minutes);
    }
}
