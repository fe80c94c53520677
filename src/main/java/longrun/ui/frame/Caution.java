package longrun.ui.frame;

import com.vaadin.flow.dom.Element;
import longrun.words.CautionWords;

/** The caution: the same words on every page and every sheet, never folded up, never closable. */
public final class Caution {

    /** Word for word. */
    public static final String TEXT = CautionWords.TEXT;

    /** What belongs with it where it fits. */
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
