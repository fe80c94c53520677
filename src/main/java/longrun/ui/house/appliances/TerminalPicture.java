package longrun.ui.house.appliances;

import com.vaadin.flow.dom.Element;
import java.util.Optional;
import longrun.drawing.part.TerminalDrawing;
import longrun.plan.choice.ApplianceVent;
import longrun.review.Review;
import longrun.ui.frame.Dom;

/** Where the vent of an appliance ends in the wall, with the distances entered; of those that end in a wall. */
final class TerminalPicture {

    private final Element element = Dom.el("div", "terminal-picture");
    private String shown = "";

    Element element() {
        return element;
    }

    /** @param id of the appliance */
    void show(Optional<Review> review, String id) {
        String now = review.flatMap(r -> r.plan().appliances().stream()
                        .filter(a -> a.id().equals(id))
                        .filter(a -> a.vent().is(v -> v == ApplianceVent.DIRECT || v == ApplianceVent.FAN))
                        .findFirst()
                        .map(a -> TerminalDrawing.of(
                                a, r.piping().names().called(a), r.plan().site())))
                .orElse("");
        if (now.equals(shown)) {
            return;
        }
        shown = now;
        element.removeAllChildren();
        if (!now.isEmpty()) {
            element.appendChild(Dom.drawing(now));
        }
    }
}
