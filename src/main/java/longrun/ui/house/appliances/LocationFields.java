package longrun.ui.house.appliances;

import com.vaadin.flow.dom.Element;
import java.util.LinkedHashMap;
import java.util.Map;
import longrun.draft.entry.ApplianceEntry;
import longrun.review.Review;
import longrun.rules.limit.State;
import longrun.ui.field.Field;
import longrun.ui.frame.Dom;
import longrun.ui.place.HousePage;

/** What is asked of an appliance by where it stands: only what the rules ask of one of its kind, vent and room. */
final class LocationFields {

    private final HousePage desk;

    /** By the field's name: the rule that reads it, where the rule looks, and the field. */
    private final Map<String, Asked> asked = new LinkedHashMap<>();

    private final Element element;

    private record Asked(String rule, String place, Element field) {}

    LocationFields(HousePage desk, ApplianceFields all, String at) {
        this.desk = desk;
        Element grid = Dom.el("div", "grid");
        for (ApplianceEntry entry : ApplianceEntry.listAll(ApplianceEntry.Group.LOCATION)) {
            Field field = all.make(entry);
            grid.appendChild(field.element());
            asked.put(field.pointer(), new Asked(entry.rule(), at + entry.place(), field.element()));
        }
        element = Dom.el("details", "more", Dom.text("summary", "", "More about where it stands"), grid);
    }

    Element element() {
        return element;
    }

    /** Shows what can concern it; what is entered already stays in sight. */
    void show() {
        boolean any = false;
        for (Map.Entry<String, Asked> each : asked.entrySet()) {
            boolean shown = !desk.session().text(each.getKey()).isEmpty()
                    || desk.session()
                            .review()
                            .filter(r -> isFree(r, each.getValue()))
                            .isEmpty();
            Dom.show(each.getValue().field(), shown);
            any |= shown;
        }
        Dom.show(element, any);
    }

    /** Whether the rule has nothing to ask there. */
    private static boolean isFree(Review review, Asked asked) {
        return review.rules().states().stream()
                .filter(s -> s.rule().equals(asked.rule()) && s.pointer().equals(asked.place()))
                .anyMatch(s -> s.state() == State.NOT_FOR_THIS_PLAN);
    }
}
