package longrun.ui.house.hotwater;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.flow.component.UI;
import longrun.Samples;
import longrun.plan.choice.Arrangement;
import longrun.store.DraftStore;
import longrun.ui.Fired;
import longrun.ui.Shown;
import longrun.ui.house.HouseShown;
import longrun.ui.house.HouseView;
import longrun.ui.house.OpenHouses;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** The place of hot water, without a browser: the demo house, an 80 gal storage heater before a burner of 199,000 Btu/h. */
class HotWaterViewTest extends OpenHouses {

    @Autowired
    DraftStore store;

    private HouseView page;

    private HotWaterView open(String json) {
        long id = store.create("", json).id();
        UI.getCurrent().navigate("house/" + id + "/hot-water");
        page = (HouseView) UI.getCurrent().getCurrentView();
        return (HotWaterView) page.placeShown();
    }

    private static String demo() {
        return Samples.text("data/demo/orchard-house.json");
    }

    @Test
    void onDemandAloneKeepsTwoShowersForAnHourAndStorageAloneDoesNot() {
        HotWaterView place = open(demo());
        assertThat(Shown.text(page.getElement(), "p.evening")).startsWith("In series: comfortable for all 60 minutes.");
        place.position(Arrangement.STORAGE_ONLY);
        assertThat(Shown.text(page.getElement(), "p.evening"))
                .startsWith("Storage alone: ")
                .contains("of 60 minutes are comfortable");
        assertThat(HouseShown.drawing(page, "Temperature at the shower, minute by minute"))
                .contains("does not fire", "scald, 120");
        place.position(Arrangement.ON_DEMAND_ONLY);
        assertThat(Shown.text(page.getElement(), "p.evening")).contains("burns 145,000 Btu/h at most");
    }

    @Test
    void theDrawingSaysWhichValvesStandOpenAndWhichAreNeverClosed() {
        HotWaterView place = open(demo());
        assertThat(HouseShown.drawing(page, "The water side and its valves"))
                .contains("Valves open 1 2 4 5; closed 3 6", "both relief valves never closed", ">3 closed<");
        place.position(Arrangement.ON_DEMAND_ONLY);
        assertThat(HouseShown.drawing(page, "The water side and its valves"))
                .contains("Valves open 3 4 5; closed 1 2 6", ">1 closed<");
        place.position(Arrangement.STORAGE_ONLY);
        assertThat(HouseShown.drawing(page, "The water side and its valves"))
                .contains("Valves open 1 2 6; closed 3 4 5", ">7 open, always<")
                .doesNotContain("7 closed");
    }

    @Test
    void aSliderChangesTheEveningAndNotTheDraft() {
        HotWaterView place = open(demo());
        String before = page.session().draft().toString();
        place.position(Arrangement.STORAGE_ONLY);
        String said = Shown.text(page.getElement(), "p.evening");
        HouseShown.slide(page, "play-storage", "160");
        assertThat(Shown.text(page.getElement(), "p.evening")).isNotEqualTo(said);
        HouseShown.slide(page, "play-minutes", "10");
        assertThat(Shown.text(page.getElement(), "p.evening")).contains("comfortable for all 10 minutes");
        assertThat(page.session().draft().toString()).isEqualTo(before);
    }

    @Test
    void whatIsTrulySavedIsSaidWithTheRoomsHeatTakenOff() {
        HotWaterView place = open(demo());
        assertThat(Shown.text(page.getElement(), "[aria-labelledby=h-saves] .verdict"))
                .startsWith("In series it saves 72")
                .contains("that heating makes up for");
        assertThat(Shown.rows(page.getElement(), "[aria-labelledby=h-saves] table"))
                .contains("In series, 0, 1,371");
        open(demo().replace("0.14", "0.40"));
        assertThat(Shown.text(page.getElement(), "[aria-labelledby=h-saves] .verdict"))
                .contains("it does not pay");
        open(demo().replace(", \"pricePerKwh\": 0.14", ""));
        assertThat(Shown.text(page.getElement(), "[aria-labelledby=h-saves] .verdict"))
                .contains("needs price of a kilowatt-hour");
    }

    @Test
    void theMonthsSayHowManyShowersAtOnceAndAHalf() {
        HotWaterView place = open(demo());
        assertThat(Shown.rows(page.getElement(), "[aria-labelledby=h-flows] table"))
                .contains(
                        "Showers at once, 2.5 gal/min, 2\u00bd,",
                        "At the use temperature, gal/min, 6.8,",
                        "Through the heater, at its set point, gal/min, 5.3,",
                        "Cold water, \u00b0F, 51,");
        assertThat(WaterTables.halves(0.7)).isEqualTo("\u00bd");
        assertThat(WaterTables.halves(1.99)).isEqualTo("1\u00bd");
        assertThat(WaterTables.halves(3)).isEqualTo("3");
        assertThat(WaterTables.halves(0.2)).isEqualTo("0");
    }

    @Test
    void aMissingEntryIsNamedAndNothingIsZero() {
        HotWaterView place = open(demo().replace("\"volume\": \"80 gal\", ", ""));
        assertThat(Shown.rows(page.getElement(), "[aria-labelledby=h-side] table"))
                .contains("In series, out")
                .doesNotContain("NaN");
        assertThat(Shown.text(page.getElement(), "p.evening")).contains("not drawn");
        assertThat(Shown.text(page.getElement(), "[aria-labelledby=h-saves] .verdict"))
                .contains("not known; needs what the storage heater holds");
        open("{\"format\":\"longrun-plan/1\"}");
        assertThat(HouseShown.drawing(page, "The water side and its valves")).contains("set to ?");
    }

    @Test
    void drawsAreAddedAndTheUsualValvesTakenWithOneKey() {
        HotWaterView place = open("{\"format\":\"longrun-plan/1\"}");
        Fired.press(page.getElement(), "Add a draw");
        assertThat(page.session().at("/use/hotWater/draws")).hasSize(1);
        assertThat(HouseShown.entry(page, "/use/hotWater/draws/0/flow").text()).isEmpty();
        Fired.press(page.getElement(), "Take the valves of the drawing");
        assertThat(page.session().at("/use/hotWater/valves")).hasSize(5);
        assertThat(page.session().text("/use/hotWater/valves/0/what")).isEqualTo("mixing");
        page.session().undo();
        assertThat(page.session().at("/use/hotWater/valves")).isEmpty();
    }

    @Test
    void theAnswerSaysHowLongAShowerStaysComfortableInEachArrangement() {
        open(demo());
        assertThat(Shown.text(page.getElement())).contains("Shower in January").contains("60 / 60 / 20");
    }
}
