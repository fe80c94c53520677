package longrun.ui.frame;

import com.vaadin.flow.dom.Element;
import longrun.words.CautionWords;

/** The safety caution: the same words on every page and sheet; it cannot be folded or closed. */
public final class Caution {

    /** The caution, word for word. */
    public static final String TEXT = CautionWords.TEXT;

    /** The sentence on alarms, added where there is room. */
    public static final String ALARMS = CautionWords.ALARMS;

    private Caution() {}

    static Element element() {
        Element words = Dom.el(
                "p",
                "c",
                sentence("Gas can kill.", CautionWords.CARE),
                Dom.words(" "),
                sentence("Smell gas?", CautionWords.SMELL));
        Element inside = Dom.el(
                "div",
                "",
                Dom.text("p", "w", "Before anything else"),
                Dom.el("div", "", words, Dom.text("p", "more", ALARMS)));
        return Dom.el("section", "danger", inside).setAttribute("aria-label", "Caution");
    }

    private static Element sentence(String lead, String rest) {
        return Dom.el("span", "", Dom.text("b", "", lead), Dom.words(" " + rest));
    }
}
