package longrun.ui.house.connections;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.flow.component.UI;
import longrun.Samples;
import longrun.draft.hookup.AssumedRow;
import longrun.draft.hookup.HookupParts;
import longrun.store.DraftStore;
import longrun.ui.Fired;
import longrun.ui.Shown;
import longrun.ui.house.HouseView;
import longrun.ui.house.OpenHouses;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** Parts taken as usual stand as assumed until somebody says that they were seen. */
class AssumedPartsTest extends OpenHouses {

    @Autowired
    DraftStore store;

    private HouseView page;

    @BeforeEach
    void begin() {
        long id = store.create("Fernbank", Samples.text("sample-plan.json")).id();
        UI.getCurrent().navigate("house/" + id + "/connections");
        page = (HouseView) UI.getCurrent().getCurrentView();
    }

    private HookupParts parts(int appliance) {
        return new HookupParts(page.session(), "/appliances/" + appliance);
    }

    private long asked() {
        return page.session().findings().stream()
                .filter(f -> f.field().endsWith("/seen"))
                .count();
    }

    @Test
    void theUsualRowOfAKindIsAssumedUntilItIsSeen() {
        HookupParts heater = parts(0);
        heater.unknown();
        assertThat(heater.usual().get(0)).containsExactly("shutoff", "sediment-trap", "flexible-connector");
        heater.begin(heater.usual().get(0));
        assertThat(heater.countAssumed()).isEqualTo(3);
        assertThat(asked()).isEqualTo(1);
        assertThat(Shown.all(page.getElement(), ".part-b"))
                .hasSize(3)
                .allSatisfy(b -> assertThat(Shown.text(b)).contains("assumed, not seen"));
        Fired.press(Shown.all(page.getElement(), ".part-b").get(1), "seen");
        assertThat(heater.countAssumed()).isEqualTo(2);
        assertThat(page.session().at("/appliances/0/connection/1/seen").isYes()).isTrue();
        assertThat(asked()).isEqualTo(1);
        heater.markAllSeen();
        assertThat(heater.countAssumed()).isZero();
        assertThat(asked()).isZero();
        page.session().undo();
        assertThat(heater.countAssumed()).isEqualTo(2);
    }

    /** A range needs no sediment trap (2018 IFGC 408.4). */
    @Test
    void theUsualRowOfARangeHasNoTrap() {
        assertThat(parts(1).usual().get(0)).containsExactly("shutoff", "flexible-connector");
    }

    @Test
    void partsAsAtAnotherApplianceAreAssumedAndNothingMeasuredThereIsTaken() {
        HookupParts range = parts(1);
        assertThat(range.othersWithParts()).containsOnlyKeys("/appliances/0");
        range.copyFrom("/appliances/0");
        assertThat(range.list()).hasSize(3);
        assertThat(range.countAssumed()).isEqualTo(3);
        assertThat(page.session().at("/appliances/1/connection/0/distance").isNothing())
                .isTrue();
        assertThat(page.session().at("/appliances/1/connection/1/nipple").text())
                .isEqualTo("4 in");
    }

    @Test
    void theUsualPartsAreTakenAtAllAppliancesInOneStep() {
        parts(0).unknown();
        parts(1).unknown();
        AssumedRow.takeAll(page.session());
        assertThat(parts(0).countAssumed()).isEqualTo(3);
        assertThat(parts(1).countAssumed()).isEqualTo(2);
        assertThat(AssumedRow.listWithout(page.session())).isEmpty();
        page.session().undo();
        assertThat(AssumedRow.listWithout(page.session())).hasSize(2);
    }
}
