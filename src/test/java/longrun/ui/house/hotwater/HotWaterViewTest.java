package longrun.ui.house.hotwater;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.dom.Element;
import elemental.json.Json;
import elemental.json.JsonObject;
import longrun.Samples;
import longrun.plan.choice.Arrangement;
import longrun.store.DraftStore;
import longrun.ui.Fired;
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

    private static void slide(Element slider, String value) {
        JsonObject data = Json.createObject();
        data.put("element.value", value);
        data.put("for", "trailing");
        Fired.event(slider, "input", data);
    }

    @Test
    void onDemandAloneKeepsTwoShowersForAnHourAndStorageAloneDoesNot() {
        HotWaterView place = open(demo());
        assertThat(place.play().said()).startsWith("In series: comfortable for all 60 minutes.");
        place.position(Arrangement.STORAGE_ONLY);
        assertThat(place.play().said()).startsWith("Storage alone: ").contains("of 60 minutes are comfortable");
        assertThat(place.play().plot().shown()).contains("does not fire", "scald, 120");
        place.position(Arrangement.ON_DEMAND_ONLY);
        assertThat(place.play().said()).contains("burns 145,000 Btu/h at most");
    }

    @Test
    void theDrawingSaysWhichValvesStandOpenAndWhichAreNeverClosed() {
        HotWaterView place = open(demo());
        assertThat(place.waterSide().shown())
                .contains("Valves open 1 2 4 5; closed 3 6", "relief valves R1 and R2 never closed", ">3 closed<");
        place.position(Arrangement.ON_DEMAND_ONLY);
        assertThat(place.waterSide().shown()).contains("Valves open 3 4 5; closed 1 2 6", ">1 closed<");
        place.position(Arrangement.STORAGE_ONLY);
        assertThat(place.waterSide().shown())
                .contains("Valves open 1 2 6; closed 3 4 5", ">7 open, always<")
                .doesNotContain("7 closed");
    }

    @Test
    void aSliderChangesTheEveningAndNotTheDraft() {
        HotWaterView place = open(demo());
        String before = page.session().draft().toString();
        place.position(Arrangement.STORAGE_ONLY);
        String said = place.play().said();
        slide(place.play().storage().input(), "160");
        assertThat(place.play().said()).isNotEqualTo(said);
        slide(place.play().minutes().input(), "10");
        assertThat(place.play().said()).contains("comfortable for all 10 minutes");
        assertThat(page.session().draft().toString()).isEqualTo(before);
    }

    @Test
    void whatIsTrulySavedIsSaidWithTheRoomsHeatTakenOff() {
        HotWaterView place = open(demo());
        assertThat(place.verdict()).startsWith("In series it saves 72").contains("that heating makes up for");
        assertThat(place.tables().savingsTable().shown()).contains("In series, 0, 1,371");
        HotWaterView dear = open(demo().replace("0.14", "0.40"));
        assertThat(dear.verdict()).contains("it does not pay");
        HotWaterView unpriced = open(demo().replace(", \"pricePerKwh\": 0.14", ""));
        assertThat(unpriced.verdict()).contains("needs price of a kilowatt-hour");
    }

    @Test
    void theMonthsSayHowManyShowersAtOnceAndAHalf() {
        HotWaterView place = open(demo());
        assertThat(place.tables().monthsTable().shown()).contains("Jan, 2\u00bd, 6.8 gal/min, 5.3 gal/min, 51 \u00b0F");
        assertThat(WaterTables.halves(0.7)).isEqualTo("\u00bd");
        assertThat(WaterTables.halves(1.99)).isEqualTo("1\u00bd");
        assertThat(WaterTables.halves(3)).isEqualTo("3");
        assertThat(WaterTables.halves(0.2)).isEqualTo("0");
    }

    @Test
    void aMissingEntryIsNamedAndNothingIsZero() {
        HotWaterView place = open(demo().replace("\"volume\": \"80 gal\", ", ""));
        assertThat(place.tables().arrangementsTable().shown())
                .contains("In series, out")
                .doesNotContain("NaN");
        assertThat(place.play().said()).contains("not drawn");
        assertThat(place.verdict()).contains("not known; needs what the storage heater holds");
        HotWaterView empty = open("{\"format\":\"longrun-plan/1\"}");
        assertThat(empty.waterSide().shown()).contains("set to ?");
    }

    @Test
    void drawsAreAddedAndTheUsualValvesTakenWithOneKey() {
        HotWaterView place = open("{\"format\":\"longrun-plan/1\"}");
        place.lists().addDraw();
        assertThat(page.session().at("/use/hotWater/draws")).hasSize(1);
        assertThat(place.fields().find("/use/hotWater/draws/0/flow")).isPresent();
        place.lists().takeUsual();
        assertThat(page.session().at("/use/hotWater/valves")).hasSize(5);
        assertThat(page.session().text("/use/hotWater/valves/0/what")).isEqualTo("mixing");
        page.session().undo();
        assertThat(page.session().at("/use/hotWater/valves")).isEmpty();
    }

    @Test
    void theAnswerSaysHowLongAShowerStaysComfortableInEachArrangement() {
        open(demo());
        assertThat(longrun.ui.Shown.text(page.getElement()))
                .contains("Shower in January")
                .contains("60 / 60 / 20");
    }
}
