package longrun.ui.house.figure;

import com.vaadin.flow.dom.Element;
import longrun.ui.frame.Dom;

/** A part of a place under its heading. */
public final class PlacePart {

    private PlacePart() {}

    /** @param note a line under the heading, or empty */
    public static Element of(String id, String title, String note, Element... content) {
        Element part = Dom.el("section", "part", Dom.text("h3", "", title).setAttribute("id", "h-" + id))
                .setAttribute("aria-labelledby", "h-" + id);
        if (!note.isEmpty()) {
            part.appendChild(Dom.text("p", "lede", note));
        }
        return part.appendChild(content);
    }
}
