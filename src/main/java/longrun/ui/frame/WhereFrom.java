package longrun.ui.frame;

import com.vaadin.flow.dom.Element;
import java.util.ArrayList;
import java.util.List;

/** The answer to where from: it hangs on its figure by a line and answers each why in turn. */
public final class WhereFrom {

    private final Element list = Dom.el("dl", "from");
    private final Element ask = Dom.button("ask", "where from?").setAttribute("aria-expanded", "false");
    private List<Step> shown = List.of();

    /** One why: its heading, the answer, and a sum of terms where there is one. */
    public record Step(String title, String text, List<List<String>> sum) {}

    public WhereFrom() {
        this("from");
    }

    /** @param id of the answer in its page, where there are several */
    public WhereFrom(String id) {
        list.setAttribute("id", id);
        ask.setAttribute("aria-controls", id);
        Dom.show(list, false);
        ask.addEventListener("click", e -> open(list.hasAttribute("hidden")));
    }

    public Element list() {
        return list;
    }

    public Element ask() {
        return ask;
    }

    public void open(boolean open) {
        Dom.show(list, open);
        ask.setAttribute("aria-expanded", String.valueOf(open));
        Dom.retext(ask, open ? "fold up" : "where from?");
    }

    public void show(List<Step> steps) {
        Dom.show(ask, !steps.isEmpty());
        Dom.setClass(list, "vh", steps.isEmpty());
        if (steps.equals(shown)) {
            return;
        }
        shown = steps;
        List<Element> whys = new ArrayList<>();
        for (Step step : steps) {
            whys.add(Dom.text("dt", "", step.title()));
            if (!step.text().isEmpty()) {
                whys.add(Dom.text("dd", "", step.text()));
            }
            if (!step.sum().isEmpty()) {
                whys.add(sum(step.sum()));
            }
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
