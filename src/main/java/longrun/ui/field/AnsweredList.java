package longrun.ui.field;

import com.vaadin.flow.dom.Element;
import java.util.List;
import java.util.function.Function;
import longrun.draft.entry.Entered;
import longrun.draft.entry.NewItem;
import longrun.ui.frame.Dom;
import longrun.ui.place.HousePage;

/** A list of the draft of which a person may also say that there is none, or that nobody knows. */
public final class AnsweredList {

    private final HousePage desk;
    private final String pointer;
    private final BlockList list;
    private final Element none;
    private final Element unknown = Dom.button("", "I don\u2019t know");
    private final Element element;

    /**
     * @param pointer of the list
     * @param label what it lists
     * @param nothing the words for none
     * @param adds words of the button that adds one
     * @param removes words of the button that takes one away
     * @param block the fields of the item at a pointer
     */
    public AnsweredList(
            HousePage desk,
            FieldList fields,
            String pointer,
            String label,
            String nothing,
            String adds,
            String removes,
            Function<String, Element[]> block) {
        this.desk = desk;
        this.pointer = pointer;
        list = new BlockList(
                desk,
                fields,
                pointer,
                adds,
                removes,
                block,
                () -> NewItem.EMPTY,
                // The last one taken away leaves the question open, not a none that nobody has said.
                (d, at) -> d.remove(d.at(pointer).size() > 1 ? at : pointer));
        none = Dom.button("", nothing);
        none.addEventListener("click", e -> answerNone());
        unknown.addEventListener("click", e -> desk.session().remove(pointer));
        Element answers = Dom.el("div", "ans", unknown, none)
                .setAttribute("role", "group")
                .setAttribute("aria-label", label + ": without one");
        element = Dom.el(
                        "fieldset",
                        "fld openings",
                        Dom.text("legend", "lab", label),
                        answers,
                        list.blocks(),
                        list.adds())
                .setAttribute("id", Field.id(pointer));
    }

    public Element element() {
        return element;
    }

    /** Looked; there is none. */
    public void answerNone() {
        desk.session().change(d -> d.put(pointer, List.of()));
    }

    public void add() {
        list.add();
    }

    /** Draws the items anew where their number changed; true where it did. */
    public boolean draw() {
        Entered now = desk.session().at(pointer);
        press(none, now.isList() && now.isEmpty() || now.text().equals("none"));
        press(unknown, now.isNothing());
        return list.draw();
    }

    /** Puts the cursor on its answers; for a list of which nothing is said yet. */
    public void focus() {
        FieldList.focus(none);
    }

    private static void press(Element button, boolean on) {
        button.setAttribute("aria-pressed", String.valueOf(on));
        Dom.setClass(button, "on", on);
    }
}
