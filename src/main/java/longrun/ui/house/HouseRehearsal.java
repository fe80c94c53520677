package longrun.ui.house;

import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import longrun.draft.HouseSession;
import longrun.draft.PlaceKind;
import longrun.draft.demo.DemoHouse;
import longrun.review.Reviewer;
import longrun.store.Draft;
import longrun.store.DraftStore;
import longrun.ui.frame.Rehearsal;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

/**
 * Types legs and a load longer and shorter by a digit into the demo house, open in a page nobody sees. It is in no store,
 * so nothing of it is kept; the store rehearses its own part.
 */
@Component
@Order(2)
class HouseRehearsal extends Rehearsal<HouseView> {

    private static final int KEYS = 200;

    /** No stored house has it. */
    private static final long NO_HOUSE = -1;

    private final DraftStore store;

    HouseRehearsal(DraftStore store) {
        super(KEYS);
        this.store = store;
    }

    @Override
    protected HouseView open() {
        HouseView opened = new HouseView(store);
        Draft demo = new Draft(NO_HOUSE, "", DemoHouse.json(), 1, Instant.EPOCH, 0, 0);
        opened.open(HouseSession.of(store, Reviewer.standard(), demo));
        opened.show(PlaceKind.ROUTE);
        opened.kept("", Map.of(), Optional.empty());
        store.rehearse(demo.json(), KEYS / 2);
        return opened;
    }

    @Override
    protected void key(HouseView page, int number) {
        if (number == KEYS / 2) {
            page.show(PlaceKind.APPLIANCES);
        }
        if (number < KEYS / 2) {
            page.placeShown()
                    .typedBefore("legs 1", number % 2 == 0 ? "up 4, north 6, east 1" : "up 4, north 6, east 10");
        } else {
            page.session().set("/appliances/0/input", number % 2 == 0 ? "19,900 Btu/h" : "199,000 Btu/h");
        }
    }
}
