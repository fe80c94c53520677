package longrun.ui.frame;

import com.vaadin.flow.dom.Element;

/** Says that something is assumed and not seen, with a button that confirms it; hidden once it is seen. */
public final class NotSeenLine {

    private final Element words = Dom.text("span", "", "");
    private final Element seen;
    private final Element element;

    /** @param of what is confirmed, for the accessible name of the button */
    public NotSeenLine(String says, String of, Runnable confirmed) {
        seen = Dom.button("act", says).setAttribute("aria-label", of.isEmpty() ? says : of + ": " + says);
        seen.addEventListener("click", e -> confirmed.run());
        element = Dom.el("p", "not-seen", words, seen);
        Dom.show(element, false);
    }

    /** The element that shows it. */
    public Element element() {
        return element;
    }

    /** The element that takes the focus. */
    public Element target() {
        return seen;
    }

    /** @param says what is assumed; empty where nothing is assumed */
    public void show(String says) {
        Dom.retext(words, says);
        Dom.show(element, !says.isEmpty());
    }
}
