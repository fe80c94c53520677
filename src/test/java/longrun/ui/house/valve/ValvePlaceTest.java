package longrun.ui.house.valve;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.flow.component.UI;
import longrun.Samples;
import longrun.draft.HouseSession;
import longrun.draft.PlaceKind;
import longrun.holdpoint.HoldPoint;
import longrun.store.DraftStore;
import longrun.ui.Shown;
import longrun.ui.house.HouseView;
import longrun.ui.house.OpenHouses;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** What was recorded before the valve, by whom, and what is open; a point behind a fault wants its reason written. */
class ValvePlaceTest extends OpenHouses {

    @Autowired
    DraftStore store;

    private HouseView page;

    private ValvePlace open(String json) {
        long id = store.create("", json).id();
        UI.getCurrent().navigate("house/" + id + "/" + PlaceKind.VALVE.slug());
        page = (HouseView) UI.getCurrent().getCurrentView();
        return (ValvePlace) page.placeShown();
    }

    private static String recorded(ValvePlace place, HoldPoint point) {
        return Shown.all(place.element(), ".point").stream()
                .filter(p -> Shown.text(p, "h4").equals(point.title()))
                .map(p -> Shown.text(p, ".point-said .verdict"))
                .findFirst()
                .orElseThrow();
    }

    private HouseSession session() {
        return page.session();
    }

    @Test
    void aPointIsRecordedByWhoDidIt() {
        ValvePlace place = open(Samples.text("drawing/orchard-house.json"));
        assertThat(recorded(place, HoldPoint.GAS_TYPE)).isEqualTo("Not recorded as done.");
        place.record(HoldPoint.GAS_TYPE);
        session().choose("/holdPoints/0/done", true);
        session().set("/holdPoints/0/who", "fitter");
        assertThat(recorded(place, HoldPoint.GAS_TYPE)).startsWith("Recorded as done by fitter");
        session().undo();
        session().undo();
        assertThat(recorded(place, HoldPoint.GAS_TYPE)).isEqualTo("Not recorded as done.");
    }

    @Test
    void aPointBehindAFaultIsNotTakenAsDoneUntilItsReasonIsWritten() {
        ValvePlace place = open(Samples.text("drawing/orchard-house.json"));
        session().choose("/appliances/0/gas", "natural");
        place.record(HoldPoint.PURGE);
        session().choose("/holdPoints/0/done", true);
        assertThat(recorded(place, HoldPoint.PURGE)).contains("no reason is written, so it does not count as done");
        session().set("/holdPoints/0/reason", "the range is not connected, its outlet is capped");
        assertThat(recorded(place, HoldPoint.PURGE)).contains("Reason: the range is not connected");
    }

    @Test
    void theTestOfASideIsReadWithItsTemperatures() {
        ValvePlace place = open(Samples.text("drawing/orchard-house.json"));
        session().change(d -> {
            var all = d.root().putArray("readings");
            all.addObject()
                    .put("at", "R2")
                    .put("what", "test")
                    .put("pressure", "3 psi")
                    .put("temp", "60 degF");
            all.addObject()
                    .put("at", "R2")
                    .put("what", "test")
                    .put("pressure", "2.3 psi")
                    .put("temp", "40 degF");
        });
        assertThat(place.element().getTextRecursively()).contains("No loss that this gauge could show is left.");
    }
}
