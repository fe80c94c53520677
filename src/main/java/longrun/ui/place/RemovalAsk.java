package longrun.ui.place;

import com.vaadin.flow.dom.Element;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import longrun.draft.entry.EntryReferences;
import longrun.ui.frame.Dom;
import longrun.words.Names;

/** Asked before a thing goes that is named elsewhere: what names it, and whether that goes along. */
public final class RemovalAsk {

    private final Set<String> staying = new HashSet<>();
    private final Element element;
    private final Element head;
    private final Consumer<Set<String>> remove;

    /**
     * Asks about one thing.
     *
     * @param what what it is called within a sentence
     * @param remove takes it away; hears the pointers of what stays, with the name open
     * @param keep lets it be
     */
    public RemovalAsk(
            String what, List<EntryReferences.Reference> mentions, Consumer<Set<String>> remove, Runnable keep) {
        this.remove = remove;
        head = Dom.text("p", "", Names.capital(what) + " is named elsewhere too. What is ticked goes with it:")
                .setAttribute("tabindex", "-1");
        Element list = Dom.el("ul", "");
        for (EntryReferences.Reference m : mentions) {
            list.appendChild(Dom.el("li", "", tick(m)));
        }
        Element yes = Dom.button("act", "Remove " + what);
        yes.addEventListener("click", e -> remove());
        Element no = Dom.button("act", "Keep " + what);
        no.addEventListener("click", e -> keep.run());
        element = Dom.el(
                        "div",
                        "removal",
                        head,
                        list,
                        Dom.text(
                                "p", "s q", "What is not ticked stays, and names nothing. Undo brings all of it back."),
                        Dom.el("p", "acts", yes, no))
                .setAttribute("role", "group")
                .setAttribute("aria-label", "Removing " + what);
    }

    private Element tick(EntryReferences.Reference m) {
        Element box = Dom.el("input", "").setAttribute("type", "checkbox").setProperty("checked", m.removedToo());
        if (!m.removedToo()) {
            staying.add(m.pointer());
        }
        box.addEventListener("change", e -> stays(m.pointer(), !e.getEventData().getBoolean("element.checked")))
                .addEventData("element.checked");
        return Dom.el("label", "check", box, Dom.words(m.words()));
    }

    /** Whether what stands at a pointer stays. */
    public void stays(String pointer, boolean stays) {
        if (stays) {
            staying.add(pointer);
        } else {
            staying.remove(pointer);
        }
    }

    public Element element() {
        return element;
    }

    /** Puts the cursor on the question. */
    public void focus() {
        head.executeJs("setTimeout(() => { this.focus(); this.scrollIntoView({block: 'nearest'}); })");
    }

    /** Answers yes, as its button does. */
    public void remove() {
        remove.accept(Set.copyOf(staying));
    }
}
