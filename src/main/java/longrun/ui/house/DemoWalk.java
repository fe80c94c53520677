package longrun.ui.house;

import com.vaadin.flow.dom.Element;
import com.vaadin.flow.server.VaadinSession;
import java.util.Optional;
import longrun.draft.HouseSession;
import longrun.draft.PlaceKind;
import longrun.draft.demo.DemoHouse;
import longrun.draft.demo.DemoStep;
import longrun.ui.frame.Dom;

/** What to look at in the demo house, a sentence a place; it can be put away, and stays away until the browser is closed. */
final class DemoWalk {

    private static final String AWAY = "demo walk put away";

    private final Element words = Dom.text("span", "", "");
    private final Element next = Dom.text("a", "", "").setAttribute("router-link", true);
    private final Element element;

    DemoWalk() {
        Element away = Dom.button("ask", "Put away");
        away.setAttribute("aria-label", "Put the walk through the demo away");
        away.addEventListener("click", e -> putAway());
        element = Dom.el("aside", "walk screen-only", words, Dom.words(" "), next, Dom.words(" "), away)
                .setAttribute("aria-label", "A walk through the demo");
    }

    Element element() {
        return element;
    }

    void putAway() {
        VaadinSession.getCurrent().setAttribute(AWAY, true);
        Dom.show(element, false);
    }

    void show(HouseSession session, PlaceKind here) {
        boolean away =
                VaadinSession.getCurrent() != null && VaadinSession.getCurrent().getAttribute(AWAY) != null;
        boolean demo = session.text("/name").equals(DemoHouse.NAME);
        Dom.show(element, demo && !away);
        if (!demo || away) {
            return;
        }
        DemoStep step = DemoStep.at(here);
        boolean elsewhere = step.place() != here;
        Dom.retext(
                words,
                step.number() + " of " + DemoStep.TOUR.size()
                        + (elsewhere ? ", on " + step.place().title() : "") + ". " + step.words());
        Optional<DemoStep> then = elsewhere ? Optional.of(step) : step.next();
        Dom.show(next, then.isPresent());
        then.ifPresent(s -> {
            Dom.retext(next, "Go to " + s.place().title());
            next.setAttribute("href", "house/" + session.id() + "/" + s.place().slug());
        });
    }
}
