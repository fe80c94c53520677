package longrun.ui.house;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.flow.component.UI;
import longrun.store.DraftStore;
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
        return (HouseView) UI.getCurrent().getCurrentView();
    }

    @Test
    void anEmptyHouseSaysWhereToBegin() {
        HouseView page = open("house");
        assertThat(page.panel().stateShown()).startsWith("Nothing to size yet");
        assertThat(page.threadShown().lackShown(PlaceKind.APPLIANCES)).isEqualTo("not begun");
    }

    @Test
    void aPictureFillsRegulatorsDropsAndThePipeBetween() {
        HouseView page = open("house");
        page.session().change(PressureCut.WALL::into);
        assertThat(page.session().text("/regulators/0/outlet")).isEqualTo("10 psi");
        assertThat(page.session().text("/regulators/1/outlet")).isEqualTo("11 in w.c.");
        assertThat(page.session().text("/regulators/1/fedBy")).isEqualTo("Y1");
        assertThat(page.session().errors()).isEmpty();
        assertThat(page.panel().stateShown()).contains("open");
    }

    @Test
    void anApplianceAddedAsksForItsRatingPlate() {
        HouseView page = open("appliances");
        AppliancesPlace place = (AppliancesPlace) page.placeShown();
        place.add("range");
        assertThat(place.blocks()).hasSize(1);
        assertThat(page.panel().openSlot().noteShown()).contains("rating plate");
    }

    @Test
    void aHouseThatIsNotThereLeadsToTheList() {
        UI.getCurrent().navigate("house/999999/house");
        assertThat(UI.getCurrent().getCurrentView().getClass().getSimpleName()).isEqualTo("HousesView");
    }
}
