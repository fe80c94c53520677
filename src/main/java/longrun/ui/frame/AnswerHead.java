package longrun.ui.frame;

import com.vaadin.flow.dom.Element;
import java.util.function.Supplier;

/** The head of the answer panel, the same on every page: what it is the answer to, its main figure, its state and the reason. */
public final class AnswerHead {

    private final Element whose = Dom.text("p", "whose", "");
    private final Element hand = Dom.el("div", "hand").setAttribute("data-fig", "");
    private final Element state = Dom.text("p", "state", "");
    private final Element because = Dom.text("p", "q s because", "");
    private String keyShown = "";

    /** Adds the head to a panel, with the page's own elements below the main figure. */
    public void addTo(Element panel, Element... belowFigure) {
        panel.appendChild(whose, hand);
        panel.appendChild(belowFigure);
        panel.appendChild(state, because);
    }

    /** Shows what this is the answer to, such as a section or a line. */
    public void title(String words) {
        Dom.retext(whose, words);
    }

    /** Shows the state of the answer, and the reason for it. */
    public void state(String words, String why) {
        Dom.retext(state, words);
        Dom.retext(because, why);
    }

    /**
     * Shows the main figure of what is selected; drawn again only where the key differs.
     *
     * @param key identifies the content
     */
    public void selected(String key, Supplier<Element[]> content) {
        if (!key.equals(keyShown)) {
            keyShown = key;
            Dom.fill(hand, content.get());
        }
    }
}
