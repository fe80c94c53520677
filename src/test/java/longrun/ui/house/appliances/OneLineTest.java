package longrun.ui.house.appliances;

import static org.assertj.core.api.Assertions.assertThat;

import elemental.json.Json;
import elemental.json.JsonObject;
import longrun.ui.Fired;
import longrun.ui.Shown;
import longrun.ui.house.HouseView;
import longrun.ui.house.OpenHouse;
import org.junit.jupiter.api.Test;

/** Appliances entered a line each; what cannot be read is said and adds nothing. */
class OneLineTest extends OpenHouse {

    @Test
    void appliancesAreAddedALineEach() {
        HouseView page = open("appliances");
        typed(page, "furnace 80k");
        typed(page, "furnace 40k");
        typed(page, "water heater 40k");
        assertThat(Shown.text(page.getElement(), "#add-line-said")).contains("which heater");
        assertThat(page.session().at("/appliances")).hasSize(2);
        assertThat(page.session().text("/appliances/1/input")).isEqualTo("40 kBtu/h");
        assertThat(page.session().errors()).isEmpty();
        page.session().undo();
        assertThat(page.session().at("/appliances")).hasSize(1);
    }

    private static void typed(HouseView page, String text) {
        JsonObject data = Json.createObject();
        data.put("event.detail", text);
        Fired.event(Shown.first(page.getElement(), "#add-line"), "line-typed", data);
    }
}
