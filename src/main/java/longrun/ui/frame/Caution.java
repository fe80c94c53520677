package longrun.ui.frame;

import com.vaadin.flow.dom.Element;

/** The caution: the same words on every page and every sheet, never folded up, never closable. */
public final class Caution {

    private static final String CARE = "This is preparation, not permission. A licensed gas fitter does or checks the"
            + " work; the local code and the inspector decide; the supplier makes the leak check before the tank valve"
            + " is opened.";
    private static final String SMELL = "Touch no switch or phone inside, no flame. Everyone out. Close the tank valve"
            + " only if it is safe. Call the supplier or the fire service from outside. Do not go back in.";

    /** Word for word. */
    public static final String TEXT = "Gas can kill. " + CARE + " Smell gas? " + SMELL;

    /** What belongs with it where it fits. */
    public static final String WITH_IT = "Propane detectors low, near the floor. Carbon monoxide alarms where the code"
            + " and their maker say: each floor, outside bedrooms. A new steel tank can take the smell out of the gas.";

    private Caution() {}

    static Element element() {
        Element words =
                Dom.el("p", "c", sentence("Gas can kill.", CARE), Dom.words(" "), sentence("Smell gas?", SMELL));
        Element inside = Dom.el(
                "div",
                "",
                Dom.text("p", "w", "Before anything else"),
                Dom.el("div", "", words, Dom.text("p", "more", WITH_IT)));
        return Dom.el("section", "danger", inside).setAttribute("aria-label", "Caution");
    }

    private static Element sentence(String lead, String rest) {
        return Dom.el("span", "", Dom.text("b", "", lead), Dom.words(" " + rest));
    }
}
