package longrun.ui.house.appliances;

import static org.assertj.core.api.Assertions.assertThat;

import longrun.ui.Shown;
import longrun.ui.house.HouseView;
import longrun.ui.house.OpenHouse;
import org.junit.jupiter.api.Test;

/** What is asked of an appliance hangs on its kind, its vent and the room it stands in. */
class LocationFieldsTest extends OpenHouse {

    private String asked(String appliance) {
        id = store.create("", """
                {"format":"longrun-plan/1","site":{"winterDesignTemp":"8 degF"},
                 "regulators":[{"id":"R1","kind":"integral-two-stage","fedBy":"tank","outlet":"11 in w.c."}],
                 "rooms":[{"id":"utility","kind":"other"},{"id":"car","name":"garage","kind":"garage"}],
                 "appliances":[{"id":"a",%s}]}
                """.formatted(appliance)).id();
        HouseView page = open("appliances");
        return Shown.inSight(appliances(page).element());
    }

    @Test
    void aSealedHeaterIsAskedItsVentItsCondensateAndItsFrost() {
        assertThat(asked("\"kind\":\"on-demand-water-heater\",\"vent\":\"direct\",\"room\":\"utility\""))
                .contains("End of its vent above the ground", "to a regulator", "condensate", "works in an outage")
                .doesNotContain("spark or flame above the floor");
    }

    @Test
    void aDryerInAGarageIsAskedHowHighItLights() {
        assertThat(asked("\"kind\":\"clothes-dryer\",\"vent\":\"fan\",\"room\":\"car\""))
                .contains("spark or flame above the floor")
                .doesNotContain("works in an outage", "condensate is");
    }

    @Test
    void aRangeWithoutAVentIsAskedNothingOfAVent() {
        assertThat(asked("\"kind\":\"range\",\"vent\":\"none\",\"room\":\"utility\""))
                .doesNotContain("End of its vent", "condensate is", "works in an outage", "spark or flame above");
    }

    @Test
    void whatIsEnteredStaysInSight() {
        assertThat(asked("\"kind\":\"range\",\"vent\":\"none\",\"room\":\"utility\",\"condensate\":\"drained\""))
                .contains("condensate is");
    }

    @Test
    void anApplianceMayStandOutdoors() {
        asked("\"kind\":\"on-demand-water-heater\"");
        HouseView page = open("appliances");
        assertThat(Shown.text(appliances(page).element())).contains("Room");
        page.session().choose("/appliances/0/room", "none");
        assertThat(page.session()
                        .review()
                        .orElseThrow()
                        .plan()
                        .appliances()
                        .get(0)
                        .room()
                        .isNone())
                .isTrue();
        assertThat(page.session().findings()).noneMatch(f -> f.field().equals("/appliances/0/room"));
    }
}
