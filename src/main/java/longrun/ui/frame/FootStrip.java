package longrun.ui.frame;

import com.vaadin.flow.dom.Element;

/** The foot strip of a phone: what to do next, where a page says so, and three slots, which open upward into the answer. */
public final class FootStrip {

    private static final String ARROW =
            "<svg viewBox='0 0 24 44' aria-hidden='true'><path d='M5 26l7-8 7 8' fill='none'"
                    + " stroke='currentColor' stroke-width='2.5'/></svg>";

    private final Element label = Dom.text("span", "l", "Size");
    private final Element size = Dom.text("b", "", "").setAttribute("data-fig", "");
    private final Element mustFix = Dom.text("b", "", "0").setAttribute("data-fig", "");
    private final Element questions = Dom.text("b", "", "0").setAttribute("data-fig", "");
    private final Element mustName = Dom.text("span", "l", "Must fix");
    private final Element questionsName = Dom.text("span", "l", "Questions");
    private final Element next = Dom.button("next", "");
    private final Element mustSlot = Dom.el("div", "", mustName, mustFix);
    private final Element strip;

    FootStrip() {
        Element open = Dom.el("button", "", Dom.drawing(ARROW))
                .setAttribute("type", "button")
                .setAttribute("data-do", "answer")
                .setAttribute("aria-expanded", "false")
                .setAttribute("aria-controls", "answer")
                .setAttribute("aria-label", "Open the answer upward");
        strip = Dom.el(
                        "aside",
                        "foot",
                        next,
                        Dom.el("div", "", label, size),
                        mustSlot,
                        Dom.el("div", "", questionsName, questions),
                        open)
                .setAttribute("aria-label", "The answer in short");
        Dom.show(next, false);
    }

    Element element() {
        return strip;
    }

    /** What to do next goes there. */
    public void onNext(Runnable goes) {
        next.addEventListener("click", e -> goes.run());
    }

    /** Says what to do next. */
    public void next(String words) {
        Dom.retext(next, "Next: " + words);
        Dom.show(next, true);
    }

    /** Three slots of a page that mends nothing: each a name and its figure. */
    public void show(String first, String figure, String second, String figure2, String third, String figure3) {
        Dom.retext(label, first);
        Dom.retext(size, figure);
        Dom.retext(mustName, second);
        Dom.retext(mustFix, figure2);
        Dom.retext(questionsName, third);
        Dom.retext(questions, figure3);
    }

    public void show(String what, String sizeInHand, int toMend, int open) {
        Dom.retext(label, what);
        Dom.retext(size, sizeInHand);
        Dom.retext(mustFix, String.valueOf(toMend));
        Dom.retext(questions, String.valueOf(open));
        Dom.setClass(mustSlot, "must", toMend > 0);
    }
}
