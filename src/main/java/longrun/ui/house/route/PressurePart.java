package longrun.ui.house.route;

import com.vaadin.flow.dom.Element;
import java.util.Map;
import java.util.Optional;
import longrun.draft.sections.RouteAnswer;
import longrun.ui.frame.Dom;
import longrun.ui.place.HousePage;

/** Pressure on the page of the route: at the burners, at the regulators, and on the gauge. */
final class PressurePart {

    private final HousePage desk;
    private final PressurePane pane;
    private final RegulatorSchedule regulators;
    private final ReadingsPane readings;
    private final Element element;

    PressurePart(HousePage desk) {
        this.desk = desk;
        pane = new PressurePane(desk);
        regulators = new RegulatorSchedule(desk);
        readings = new ReadingsPane(desk);
        element = Dom.el("div", "", pane.element(), regulators.element(), readings.element());
    }

    Element element() {
        return element;
    }

    PressurePane pane() {
        return pane;
    }

    RegulatorSchedule regulators() {
        return regulators;
    }

    ReadingsPane readings() {
        return readings;
    }

    void show(Optional<RouteAnswer> answer, boolean write) {
        pane.show(answer);
        regulators.show(desk.session().review());
        boolean begun = !desk.session().at("/regulators").isEmpty()
                || !desk.session().at(ReadingsPane.READINGS).isEmpty();
        Dom.show(readings.element(), begun);
        readings.show(write);
    }

    void focus(String pointer) {
        readings.focus(pointer);
    }

    Map<String, String> heard() {
        return readings.heard();
    }
}
