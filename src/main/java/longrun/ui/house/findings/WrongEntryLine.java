package longrun.ui.house.findings;

import com.vaadin.flow.dom.Element;
import longrun.draft.PlaceKind;
import longrun.draft.WrongEntry;
import longrun.ui.frame.Dom;
import longrun.ui.place.HousePage;
import longrun.words.Sentence;

/** An entry that was not understood, as a sentence with the way to its field. */
public final class WrongEntryLine {

    private WrongEntryLine() {}

    /** The sentence, and the way to the field where a place has one. */
    public static Element of(WrongEntry entry, HousePage desk) {
        Element line = Dom.el(
                "div",
                "find must wrong-entry",
                Dom.drawing("<svg viewBox='0 0 14 14' width='14' height='14' aria-hidden='true'>"
                        + "<rect x='1' y='1' width='12' height='12' fill='currentColor'/></svg>"),
                Dom.text("b", "", "Not understood"),
                Dom.words(" " + entry.where() + ": " + Sentence.of(entry.says())));
        if (PlaceKind.find(entry.pointer()).isPresent()) {
            Element go = Dom.button("ask go", "go to the entry")
                    .setAttribute("aria-label", "go to the entry: " + entry.where());
            go.addEventListener("click", e -> desk.goTo(entry.pointer()));
            line.appendChild(Dom.words(" "), Dom.el("span", "find-acts", go));
        }
        return line;
    }
}
