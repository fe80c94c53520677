package longrun.ui.frame;

import com.vaadin.flow.dom.Element;

/** Says that something is assumed and not seen, with the one key that confirms it; not there once it is seen. */
public final class NotSeenLine {

    private final Element words = Dom.text("span", "", "");
    private final Element seen;
    private final Element element;

    /** @param of what is confirmed, for the name of the key */
    public NotSeenLine(String says, String of, Runnable confirmed) {
        seen = Dom.button("act", says).setAttribute("aria-label", of.isEmpty() ? says : of + ": " + says);
        seen.addEventListener("click", e -> confirmed.run());
        element = Dom.el("p", "not-seen", words, seen);
        Dom.show(element, false);
    }

    public Element element() {
        return element;
    }

    /** What takes the cursor. */
    public Element target() {
        return seen;
    }

    /** @param says what is assumed; empty where nothing is */
    public void show(String says) {
        Dom.retext(words, says);
        Dom.show(element, !says.isEmpty());
    }
}
