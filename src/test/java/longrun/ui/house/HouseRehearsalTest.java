package longrun.ui.house;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.flow.component.UI;
import longrun.store.DraftStore;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** The house nobody sees is typed into without a browser and without a session. */
class HouseRehearsalTest extends OpenHouses {

    @Autowired
    DraftStore store;

    @Test
    void aHouseNobodySeesIsSizedAndNotKept() {
        UI.setCurrent(null);
        int kept = store.list().size();
        int deleted = store.listDeleted().size();
        HouseRehearsal rehearsal = new HouseRehearsal(store);
        HouseView page = rehearsal.open();
        String before = HouseShown.figure(page, "run");
        rehearsal.key(page, 0);
        assertThat(HouseShown.figure(page, "run")).isNotEqualTo(before);
        rehearsal.run();
        assertThat(store.list()).hasSize(kept);
        assertThat(store.listDeleted()).hasSize(deleted);
    }
}
