package longrun.ui.frame;

import com.vaadin.flow.dom.Element;
import java.util.ArrayList;
import java.util.List;

/** The answer to "where from?" under a figure: the steps by which it was worked out, one question after another. */
public final class WhereFrom {

    private final Element list = Dom.el("dl", "from");
    private final Element ask = Dom.button("ask", "where from?").setAttribute("aria-expanded", "false");
    private List<Step> shown = List.of();
    private boolean filled = true;

    /** One step: its heading, its text, and the terms of a sum where there is one. */
    public record Step(String title, String text, List<List<String>> sum) {}

    /** @param id the id of the answer in its page */
    public WhereFrom(String id) {
        list.setAttribute("id", id);
        ask.setAttribute("aria-controls", id);
        Dom.show(list, false);
        ask.addEventListener("click", e -> open(list.hasAttribute("hidden")));
    }

    /** The list of steps. */
    public Element list() {
        return list;
    }

    /** The button that asks for it. */
    public Element ask() {
        return ask;
    }

    /** Opens or closes the answer. */
    public void open(boolean open) {
        Dom.show(list, open);
        ask.setAttribute("aria-expanded", String.valueOf(open));
        Dom.retext(ask, open ? "hide" : "where from?");
        fill();
    }

    /** Sets the steps; where there are none, the question is hidden. */
    public void show(List<Step> steps) {
        Dom.show(ask, !steps.isEmpty());
        Dom.setClass(list, "vh", steps.isEmpty());
        if (steps.equals(shown)) {
            return;
        }
        shown = steps;
        filled = false;
        fill();
    }

    /** Writes the steps once they are asked for: a page holds dozens of these, and each key may change them all. */
    private void fill() {
        if (filled || list.hasAttribute("hidden")) {
            return;
        }
        filled = true;
        List<Element> whys = new ArrayList<>();
        for (Step step : shown) {
            whys.add(Dom.text("dt", "", step.title()));
            if (!step.text().isEmpty()) {
                whys.add(Dom.text("dd", "", step.text()));
            }
            if (!step.sum().isEmpty()) {
                whys.add(sum(step.sum()));
            }
        }
        if (!whys.isEmpty()) {
            whys.add(Dom.el("dd", "to-checked", CheckedLink.element()));
        }
        Dom.fill(list, whys.toArray(Element[]::new));
    }

    private static Element sum(List<List<String>> terms) {
        Element sum = Dom.el("dd", "sum");
        for (int i = 0; i < terms.size(); i++) {
            String tot = i == terms.size() - 1 ? "tot" : "";
            sum.appendChild(
                    Dom.text("span", tot, terms.get(i).get(0)),
                    Dom.text("span", tot, terms.get(i).get(1)));
        }
        return sum;
    }
}
