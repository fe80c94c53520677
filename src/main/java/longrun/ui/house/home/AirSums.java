package longrun.ui.house.home;

import com.vaadin.flow.dom.Element;
import java.util.List;
import longrun.plan.Plan;
import longrun.review.Review;
import longrun.rules.surroundings.AirWay;
import longrun.rules.surroundings.RoomAir;
import longrun.ui.frame.Dom;
import longrun.ui.place.HousePage;

/** The air a room's burners want by each way the code knows, with its arithmetic. */
final class AirSums {

    private final HousePage desk;
    private final String at;
    private final Element list = Dom.el("ul", "");
    private final Element element =
            Dom.el("div", "fld", Dom.text("p", "lab", "Air for its burners, by each way of the code"), list);
    private List<String> shown = List.of();

    /** @param at pointer of the room */
    AirSums(HousePage desk, String at) {
        this.desk = desk;
        this.at = at;
        Dom.show(element, false);
    }

    Element element() {
        return element;
    }

    void show() {
        List<String> now =
                desk.session().review().map(Review::plan).map(this::sums).orElse(List.of());
        if (!now.equals(shown)) {
            shown = now;
            list.removeAllChildren();
            now.forEach(each -> list.appendChild(Dom.text("li", "", each)));
            Dom.show(element, !now.isEmpty());
        }
    }

    private List<String> sums(Plan plan) {
        int index = Integer.parseInt(at.substring(at.lastIndexOf('/') + 1));
        return index >= plan.rooms().size()
                ? List.of()
                : RoomAir.waysOf(plan, index).stream().map(AirSums::words).toList();
    }

    private static String words(AirWay way) {
        String outcome = switch (way.outcome()) {
            case ENOUGH -> "Enough: ";
            case SHORT -> "Too little: ";
            case OPEN -> "Not known: ";
        };
        return outcome + way.sum() + ".";
    }
}
