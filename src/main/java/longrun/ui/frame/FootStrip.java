package longrun.ui.frame;

import com.vaadin.flow.dom.Element;

/** The strip at the foot of a phone's screen: the next step, on pages that have one, and three figures; it opens the answer. */
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

    /** Sets what happens when the next step is pressed. */
    public void onNext(Runnable goes) {
        next.addEventListener("click", e -> goes.run());
    }

    /** Shows the next step: where it is done, and what. */
    public void next(String words) {
        Dom.retext(next, words);
        Dom.show(next, true);
    }

    /** Shows three figures with their names, on a page without findings. */
    public void show(String first, String figure, String second, String figure2, String third, String figure3) {
        Dom.retext(label, first);
        Dom.retext(size, figure);
        Dom.retext(mustName, second);
        Dom.retext(mustFix, figure2);
        Dom.retext(questionsName, third);
        Dom.retext(questions, figure3);
    }

    /** Shows the size selected and the numbers of must-fix findings and of open questions. */
    public void show(String what, String selectedSize, int mustFixCount, int openQuestions) {
        Dom.retext(label, what);
        Dom.retext(size, selectedSize);
        Dom.retext(mustFix, String.valueOf(mustFixCount));
        Dom.retext(questions, String.valueOf(openQuestions));
        Dom.setClass(mustSlot, "must", mustFixCount > 0);
    }
}
