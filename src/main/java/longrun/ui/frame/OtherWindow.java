package longrun.ui.frame;

import com.vaadin.flow.dom.Element;

/** Says that another window of this browser changed the draft, and lets the person choose; nothing is overwritten without asking. */
public final class OtherWindow {

    private final Element notice = Dom.el("div", "notice").setAttribute("role", "status");

    private final String what;

    /** @param what what was changed, in a word such as "run" */
    public OtherWindow(String what) {
        this.what = what;
        Dom.show(notice, false);
    }

    /** The element that shows it. */
    public Element element() {
        return notice;
    }

    /** Asks which version to keep. */
    public void ask(Runnable take, Runnable keep) {
        notice.removeAllChildren();
        notice.appendChild(
                Dom.text(
                        "p",
                        "",
                        "This " + what
                                + " was changed in another window of this browser. This window still shows it as you left it."),
                Dom.el(
                        "div",
                        "acts",
                        button("Take what the other window has", take),
                        button("Keep what is here", keep)));
        Dom.show(notice, true);
    }

    private Element button(String says, Runnable does) {
        Element button = Dom.button("act", says);
        button.addEventListener("click", e -> {
            Dom.show(notice, false);
            does.run();
        });
        return button;
    }
}
