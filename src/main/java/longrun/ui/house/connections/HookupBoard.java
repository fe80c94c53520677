package longrun.ui.house.connections;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.component.dependency.JsModule;
import com.vaadin.flow.dom.Element;
import elemental.json.JsonObject;
import java.util.function.IntConsumer;
import longrun.ui.frame.Dom;

/** The drawing of a connection, whose parts the mouse moves along the pipe. */
@Tag("hookup-board")
@JsModule("context://frontend/hookup.js")
final class HookupBoard extends Component {

    /** Takes a part from its place to another. */
    interface Mover {
        void move(int from, int to);
    }

    private static final String DETAIL = "event.detail";
    private String shown = "";

    HookupBoard(Mover mover, IntConsumer chosen) {
        getElement()
                .addEventListener("part-moved", e -> {
                    JsonObject d = e.getEventData().getObject(DETAIL);
                    mover.move((int) d.getNumber("from"), (int) d.getNumber("to"));
                })
                .addEventData(DETAIL);
        getElement()
                .addEventListener(
                        "part-chosen",
                        e -> chosen.accept(
                                (int) e.getEventData().getObject(DETAIL).getNumber("part")))
                .addEventData(DETAIL);
        getElement().setAttribute("tabindex", "0").setAttribute("role", "group");
        getElement().setAttribute("aria-label", "The connection, drawn");
    }

    /** @param narrow the same for a phone; the style sheet shows one of the two */
    void draw(String svg, String narrow) {
        if (!svg.equals(shown)) {
            shown = svg;
            Element e = getElement();
            e.removeAllChildren();
            e.appendChild(
                    Dom.el("div", "for-wide", Dom.drawing(svg)), Dom.el("div", "for-narrow", Dom.drawing(narrow)));
        }
    }
}
