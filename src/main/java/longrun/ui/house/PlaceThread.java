package longrun.ui.house;

import com.vaadin.flow.dom.Element;
import java.util.EnumMap;
import java.util.Map;
import longrun.draft.HouseSession;
import longrun.draft.PlaceKind;
import longrun.draft.PlaceStatus;
import longrun.ui.frame.Dom;

/** The quiet numbered thread at the left: the places in any order, each with what it still lacks. */
final class PlaceThread {

    private final Element nav = Dom.el("nav", "thread-nav").setAttribute("aria-label", "Places");
    private final Map<PlaceKind, Knot> knots = new EnumMap<>(PlaceKind.class);

    private record Knot(Element item, Element link, Element lack) {}

    PlaceThread() {
        Element list = Dom.el("ol", "thread");
        int number = 1;
        for (PlaceKind each : PlaceKind.values()) {
            Element lack = Dom.text("span", "lack", "");
            Element link = Dom.el(
                            "a",
                            "",
                            Dom.text("span", "n", String.valueOf(number++)),
                            Dom.text("span", "t", each.title()),
                            lack)
                    .setAttribute("router-link", true);
            Element item = Dom.el("li", "", link);
            list.appendChild(item);
            knots.put(each, new Knot(item, link, lack));
        }
        nav.appendChild(list);
    }

    Element element() {
        return nav;
    }

    void show(HouseSession session, PlaceKind here) {
        Map<PlaceKind, PlaceStatus> open = PlaceStatus.all(session);
        knots.forEach((place, knot) -> {
            PlaceStatus lack = open.getOrDefault(place, new PlaceStatus("", false));
            Dom.retext(knot.lack(), lack.words());
            Dom.setClass(knot.lack(), "must", lack.must());
            Dom.setClass(knot.item(), "on", place == here);
            knot.link()
                    .setAttribute("href", "house/" + session.id() + "/" + place.slug())
                    .setAttribute("aria-label", place.title() + ", " + lack.words());
            if (place == here) {
                knot.link().setAttribute("aria-current", "page");
            } else {
                knot.link().removeAttribute("aria-current");
            }
        });
    }
}
