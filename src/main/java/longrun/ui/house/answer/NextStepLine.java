package longrun.ui.house.answer;

import com.vaadin.flow.dom.Element;
import longrun.draft.NextStep;
import longrun.draft.OpenQuestions;
import longrun.draft.PlaceKind;
import longrun.ui.frame.Dom;
import longrun.ui.place.HousePage;

/** What to do next, in one sentence, with the way there. */
final class NextStepLine {

    private final HousePage desk;
    private final Element where = Dom.text("b", "", "");
    private final Element words = Dom.text("span", "", "");
    private final Element go = Dom.button("ask", "go there");
    private final Element element =
            Dom.el("p", "next", where, words, Dom.words(" "), go).setAttribute("role", "status");
    private NextStep shown = new NextStep("", "");

    NextStepLine(HousePage desk) {
        this.desk = desk;
        go.addEventListener("click", e -> go());
    }

    Element element() {
        return element;
    }

    /** "Next, in Tank: " and what is done there. */
    String words() {
        return place() + shown.words();
    }

    private String place() {
        return PlaceKind.find(shown.pointer())
                .map(p -> "Next, in " + p.title() + ": ")
                .orElse("Next: ");
    }

    /** Goes to where it is done; nothing happens where nothing is left to enter. */
    void go() {
        if (isSomewhere()) {
            desk.goTo(shown.pointer());
        }
    }

    private boolean isSomewhere() {
        return PlaceKind.find(shown.pointer()).isPresent();
    }

    void show() {
        shown = NextStep.of(desk.session());
        Dom.retext(where, place());
        Dom.retext(words, shown.words());
        element.setAttribute("data-asks", shown.isAsked() ? OpenQuestions.about(shown.pointer()) : "");
        Dom.show(go, isSomewhere());
        go.setAttribute("aria-label", "go there: " + shown.words());
    }
}
