package longrun.ui.house.connections;

import com.vaadin.flow.dom.Element;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import longrun.draft.hookup.HookupParts;
import longrun.ui.frame.Dom;

/** Rows of parts to begin with: the usual one for the appliance, others, and those of another appliance. */
final class UsualParts {

    private final HookupParts parts;
    private final Consumer<Runnable> begin;
    private final Element element = Dom.el("div", "");
    private final Element none = Dom.button("act", "Nothing is fitted between pipe and appliance");
    private List<Object> shown = List.of();

    /** @param begin does what takes a row, and puts the cursor on its first part */
    UsualParts(HookupParts parts, Consumer<Runnable> begin) {
        this.parts = parts;
        this.begin = begin;
        none.addEventListener("click", e -> parts.none());
    }

    Element element() {
        return element;
    }

    /** What takes the cursor. */
    Element first() {
        return element.getChildCount() == 0 ? none : element.getChild(0).getChild(0);
    }

    void show(boolean isNone) {
        none.setAttribute("aria-pressed", String.valueOf(isNone));
        List<List<String>> rows = parts.usual();
        Map<String, String> others = parts.othersWithParts();
        List<Object> now = List.of(rows, others);
        if (now.equals(shown)) {
            return;
        }
        shown = now;
        element.removeAllChildren();
        Element usual = Dom.el("p", "acts");
        for (List<String> row : rows) {
            String words = row.stream().map(s -> s.replace('-', ' ')).collect(Collectors.joining(", "));
            String says = row.equals(rows.get(0)) ? "As usual here: " + words : "Or: " + words;
            usual.appendChild(button(says, () -> parts.begin(row)));
        }
        element.appendChild(usual);
        if (!others.isEmpty()) {
            Element as = Dom.el("p", "acts");
            others.forEach((pointer, name) -> as.appendChild(button("As at " + name, () -> parts.copyFrom(pointer))));
            element.appendChild(as);
        }
        element.appendChild(Dom.el("p", "acts", none));
    }

    private Element button(String says, Runnable takes) {
        Element b = Dom.button("act", says);
        b.addEventListener("click", e -> begin.accept(takes));
        return b;
    }
}
