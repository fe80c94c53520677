package longrun.ui.house;

import com.vaadin.flow.dom.Element;
import java.util.Optional;
import java.util.function.Consumer;
import longrun.draft.HouseSession;
import longrun.draft.PlaceKind;
import longrun.draft.StepChanges;
import longrun.ui.frame.Dom;

/** Says what undo or redo changed where that is in another place than the one in sight, with the way there. */
final class StepNotice {

    private final Element words = Dom.text("span", "", "");
    private final Element way = Dom.button("ask", "Show it");
    private final Element element =
            Dom.el("p", "said step screen-only", words, way).setAttribute("role", "status");
    private String pointer = "";

    StepNotice(Consumer<String> goTo) {
        way.addEventListener("click", e -> goTo.accept(pointer));
        clear();
    }

    Element element() {
        return element;
    }

    /**
     * Tells of a step.
     *
     * @param done what became of it, such as "Taken back"
     * @param here the place in sight
     */
    void tell(String done, Optional<StepChanges> step, PlaceKind here) {
        Optional<StepChanges> elsewhere = step.filter(s -> !s.isIn(here));
        Dom.show(way, elsewhere.isPresent());
        pointer = elsewhere.map(StepChanges::first).orElse("");
        Dom.retext(words, elsewhere.map(s -> done + ": " + s.where() + ". ").orElse(""));
    }

    /** Whatever is entered after makes it old; how the house stands with the store does not. */
    void hear(HouseSession.Change change) {
        if (change != HouseSession.Change.SAVE_STATE) {
            clear();
        }
    }

    void clear() {
        Dom.show(way, false);
        Dom.retext(words, "");
    }
}
