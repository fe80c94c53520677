package longrun.ui.frame;

import com.vaadin.flow.dom.Element;
import java.util.function.Supplier;

/** What an answer begins with, on every page: whose it is, what is in hand, how far it has come and why. */
public final class AnswerHead {

    private final Element whose = Dom.text("p", "whose", "");
    private final Element hand = Dom.el("div", "hand").setAttribute("data-fig", "");
    private final Element state = Dom.text("p", "state", "");
    private final Element because = Dom.text("p", "q s because", "");
    private String handShown = "";

    /** Puts it into a panel, something of the page's own below what is in hand. */
    public void into(Element panel, Element... belowHand) {
        panel.appendChild(whose, hand);
        panel.appendChild(belowHand);
        panel.appendChild(state, because);
    }

    public void whose(String words) {
        Dom.retext(whose, words);
    }

    public void state(String words, String why) {
        Dom.retext(state, words);
        Dom.retext(because, why);
    }

    /**
     * What is in hand, drawn anew only where it differs.
     *
     * @param key tells one from another
     */
    public void hand(String key, Supplier<Element[]> content) {
        if (!key.equals(handShown)) {
            handShown = key;
            Dom.fill(hand, content.get());
        }
    }
}
