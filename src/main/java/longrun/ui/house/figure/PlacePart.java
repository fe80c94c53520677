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

    /** A part whose heading alone stands until it is opened; it stays as it was left. */
    public static Element folded(String id, String title, String note, Element... content) {
        return folded(id, Dom.text("h3", "", title), note, content);
    }

    /** The same under a heading whose words change. */
    public static Element folded(String id, Element heading, String note, Element... content) {
        Element fold = Dom.el("details", "fold", Dom.el("summary", "", heading.setAttribute("id", "h-" + id)));
        if (!note.isEmpty()) {
            fold.appendChild(Dom.text("p", "lede", note));
        }
        return Dom.el("section", "part", fold.appendChild(content)).setAttribute("aria-labelledby", "h-" + id);
    }

    /** Entries at the left, the figures they make at their right. */
    public static Element beside(Element entries, Element figures) {
        return Dom.el("div", "beside", entries, figures);
    }
}
