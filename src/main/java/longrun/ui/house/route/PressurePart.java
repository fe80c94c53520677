package longrun.ui.house.route;

import com.vaadin.flow.dom.Element;
import java.util.Optional;
import longrun.draft.sections.RouteAnswer;
import longrun.ui.frame.Dom;
import longrun.ui.place.HousePage;

/** Pressure on the page of the route: at the burners and at the regulators. */
final class PressurePart {

    private final HousePage desk;
    private final PressurePane pane;
    private final RegulatorSchedule regulators;
    private final Element element;

    PressurePart(HousePage desk) {
        this.desk = desk;
        pane = new PressurePane(desk);
        regulators = new RegulatorSchedule(desk);
        element = Dom.el("div", "", pane.element(), regulators.element());
    }

    Element element() {
        return element;
    }

    void show(Optional<RouteAnswer> answer) {
        pane.show(answer);
        regulators.show(desk.session().review());
    }
}
