package longrun.ui.run;

import com.vaadin.flow.dom.Element;
import longrun.ui.frame.Dom;

/** Says that another window of this browser changed the run, and lets the person choose; nothing is overwritten in silence. */
final class OtherWindow {

    private final Element notice = Dom.el("div", "notice").setAttribute("role", "status");

    OtherWindow() {
        Dom.show(notice, false);
    }

    Element element() {
        return notice;
    }

    void ask(Runnable take, Runnable keep) {
        notice.removeAllChildren();
        notice.appendChild(
                Dom.text(
                        "p",
                        "",
                        "This run was changed in another window of this browser. Here it stands as you left it."),
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
