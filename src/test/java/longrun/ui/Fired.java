package longrun.ui;

import com.vaadin.flow.dom.DomEvent;
import com.vaadin.flow.dom.Element;
import com.vaadin.flow.internal.nodefeature.ElementListenerMap;
import elemental.json.Json;
import elemental.json.JsonObject;

/** What a browser would tell of an element. */
public final class Fired {

    private Fired() {}

    public static void click(Element element) {
        event(element, "click");
    }

    /** Presses the first button in sight that says so. */
    public static void press(Element place, String says) {
        click(button(place, says));
    }

    /** The first button in sight that says so. */
    public static Element button(Element place, String says) {
        return Shown.all(place, "button").stream()
                .filter(b -> Shown.text(b).equals(says) && !b.hasAttribute("hidden"))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no button says " + says));
    }

    public static void event(Element element, String event) {
        event(element, event, Json.createObject());
    }

    /** @param data what the browser tells with it */
    public static void event(Element element, String event, JsonObject data) {
        element.getNode().getFeature(ElementListenerMap.class).fireEvent(new DomEvent(element, event, data));
    }
}
