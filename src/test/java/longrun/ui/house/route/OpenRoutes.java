package longrun.ui.house.route;

import java.util.List;
import java.util.Optional;
import longrun.draft.HouseSession;
import longrun.review.Reviewer;
import longrun.store.DraftStore;
import longrun.ui.Shown;
import longrun.ui.house.OpenHouses;
import longrun.ui.place.HousePage;
import longrun.words.UnitSystem;
import org.springframework.beans.factory.annotation.Autowired;

/** The pipe route over a stored house, without a browser. */
abstract class OpenRoutes extends OpenHouses {

    @Autowired
    DraftStore store;

    Desk desk;
    RouteView view;

    final class Desk implements HousePage {
        final HouseSession session;
        UnitSystem units = UnitSystem.CUSTOMARY;
        Optional<String> inHand = Optional.empty();
        String gone = "";

        Desk(HouseSession session) {
            this.session = session;
            session.listen(change -> view.show(change == HouseSession.Change.CHANGED));
        }

        @Override
        public HouseSession session() {
            return session;
        }

        @Override
        public UnitSystem units() {
            return units;
        }

        @Override
        public Optional<String> lineInHand() {
            return inHand;
        }

        @Override
        public void takeInHand(String sectionId) {
            inHand = Optional.of(sectionId);
            view.show(false);
        }

        @Override
        public void goTo(String pointer) {
            gone = pointer;
            view.focus(pointer);
        }
    }

    void open(String json) {
        long id = store.create("", json).id();
        desk = new Desk(HouseSession.open(store, Reviewer.standard(), id).orElseThrow());
        view = new RouteView(desk);
        view.show(true);
    }

    /** What a column of a line shows. */
    String shown(int line, String column) {
        return Shown.spaced(view.table().rows().get(line).element(), "." + column);
    }

    /** The figures of the pressure: the setting first, then each inlet. */
    List<String> pressures() {
        return Shown.texts(view.element(), "[aria-labelledby=h-pressure] .slot .f");
    }

    /** What stands beside them. */
    List<String> pressureWords() {
        return Shown.texts(view.element(), "[aria-labelledby=h-pressure] .slot .w > span:first-child");
    }
}
