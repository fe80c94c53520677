package longrun.ui.house.appliances;

import static org.assertj.core.api.Assertions.assertThat;

import longrun.ui.house.HouseView;
import longrun.ui.house.OpenHouse;
import org.junit.jupiter.api.Test;

/** Appliances entered a line each; what cannot be read is said and adds nothing. */
class OneLineTest extends OpenHouse {

    @Test
    void appliancesAreAddedALineEach() {
        HouseView page = open("appliances");
        OneLine line = appliances(page).oneLine();
        line.typed("furnace 80k");
        line.typed("furnace 40k");
        line.typed("water heater 40k");
        assertThat(line.saidShown()).contains("which heater");
        assertThat(page.session().at("/appliances")).hasSize(2);
        assertThat(page.session().text("/appliances/1/input")).isEqualTo("40 kBtu/h");
        assertThat(page.session().errors()).isEmpty();
        page.session().undo();
        assertThat(page.session().at("/appliances")).hasSize(1);
    }
}
