package longrun.ui.lines;

import com.vaadin.flow.dom.Element;
import java.util.List;
import java.util.function.Consumer;
import longrun.ui.frame.Dom;

/**
 * What a paste was understood as, shown before it is taken.
 *
 * @param <L> a line as understood
 */
public final class PastePreview<L> {

    private final String id;
    private final String one;
    private final Element panel;
    private final Consumer<List<L>> taken;
    private List<L> lines = List.of();

    /**
     * A preview that is not open.
     *
     * @param id of its heading
     * @param one what one of them is called, such as "line"
     * @param taken what happens with them once a person takes them
     */
    public PastePreview(String id, String one, Consumer<List<L>> taken) {
        this.id = id;
        this.one = one;
        this.taken = taken;
        panel = Dom.el("div", "paste").setAttribute("role", "region").setAttribute("aria-labelledby", id);
        Dom.show(panel, false);
        panel.addEventListener("keydown", e -> close()).setFilter("event.key === 'Escape'");
    }

    public Element element() {
        return panel;
    }

    public List<L> lines() {
        return lines;
    }

    public void take() {
        close();
        taken.accept(lines);
    }

    public void close() {
        Dom.show(panel, false);
        panel.removeAllChildren();
    }

    /**
     * Opens it.
     *
     * @param understood how the columns were understood, and what is in doubt
     */
    public void show(List<L> pasted, String understood, Element table) {
        lines = pasted;
        panel.removeAllChildren();
        int n = lines.size();
        Element take = Dom.button("act main", n == 1 ? "Take this " + one : "Take these " + n + " " + one + "s");
        take.addEventListener("click", e -> take());
        Element leave = Dom.button("act", "Leave them out");
        leave.addEventListener("click", e -> close());
        panel.appendChild(
                Dom.text("h3", "", "The paste is understood as " + n + " " + one + (n == 1 ? "" : "s"))
                        .setAttribute("id", id),
                Dom.text("p", "s q", understood));
        if (n > 0) {
            panel.appendChild(table, Dom.el("div", "acts", take, leave));
        } else {
            panel.appendChild(Dom.el("div", "acts", leave));
        }
        Dom.show(panel, true);
        (n > 0 ? take : leave).executeJs("setTimeout(() => this.focus())");
    }
}
