package longrun.ui.field;

import com.vaadin.flow.dom.Element;
import java.util.List;
import java.util.function.Function;
import longrun.draft.entry.DraftValue;
import longrun.draft.entry.NewItem;
import longrun.ui.frame.Dom;
import longrun.ui.place.HousePage;

/** A list in the draft, for which a person may also answer that there is none or that it is not known. */
public final class AnsweredList {

    private final HousePage page;
    private final String pointer;
    private final BlockList list;
    private final Element none;
    private final Element unknown = Dom.button("", "I don\u2019t know");
    private final Element element;

    /**
     * @param pointer the pointer of the list
     * @param label the label of the list
     * @param nothing the words of the answer that there is none
     * @param adds the label of the button that adds an item
     * @param removes the label of the button that removes an item
     * @param block the fields of the item at a pointer
     */
    public AnsweredList(
            HousePage page,
            FieldList fields,
            String pointer,
            String label,
            String nothing,
            String adds,
            String removes,
            Function<String, Element[]> block) {
        this.page = page;
        this.pointer = pointer;
        list = new BlockList(
                page,
                fields,
                pointer,
                adds,
                removes,
                block,
                () -> NewItem.EMPTY,
                // When the last item is removed the question is open again: nobody has answered that there is none.
                (d, at) -> d.remove(d.at(pointer).size() > 1 ? at : pointer));
        none = Dom.button("", nothing);
        none.addEventListener("click", e -> answerNone());
        unknown.addEventListener("click", e -> page.session().remove(pointer));
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

    /** The element that shows it. */
    public Element element() {
        return element;
    }

    /** Answers that there is none. */
    public void answerNone() {
        page.session().change(d -> d.put(pointer, List.of()));
    }

    /** Adds an item. */
    public void add() {
        list.add();
    }

    /** Draws the items again where their number has changed; returns whether it has. */
    public boolean draw() {
        DraftValue now = page.session().at(pointer);
        press(none, now.isList() && now.isEmpty() || now.text().equals("none"));
        press(unknown, now.isNothing());
        return list.draw();
    }

    /** Moves the focus to the answers, for a list that is not answered yet. */
    public void focus() {
        FieldList.focus(none);
    }

    private static void press(Element button, boolean on) {
        button.setAttribute("aria-pressed", String.valueOf(on));
        Dom.setClass(button, "on", on);
    }
}
