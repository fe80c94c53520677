package longrun.ui.house.figure;

import com.vaadin.flow.dom.Element;
import longrun.ui.frame.Dom;

/** A picture that changes: written only where it differs; on a phone it keeps its letters and slides sideways. */
public final class Drawing {

    private final Element picture = Dom.el("div", "draw-box");
    private final Element element;
    private String shown = "";

    /** @param what it is, for those who reach it by keyboard to slide it */
    public Drawing(String what) {
        Element box = Dom.el("div", "pan-box", picture)
                .setAttribute("tabindex", "0")
                .setAttribute("role", "group")
                .setAttribute("aria-label", what);
        element = Dom.el("div", "", box, ScrollHint.hint(box));
    }

    public Element element() {
        return element;
    }

    public void show(String svg) {
        if (!svg.equals(shown)) {
            shown = svg;
            picture.setProperty("innerHTML", svg);
        }
    }
}
