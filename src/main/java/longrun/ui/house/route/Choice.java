package longrun.ui.house.route;

import com.vaadin.flow.dom.Element;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import longrun.ui.frame.Dom;
import longrun.ui.frame.PendingChoice;

/** A native list to choose from, by typing or by arrow keys. */
final class Choice {

    private final Element select;
    private final PendingChoice pending;
    private final Consumer<String> chosen;
    private Map<String, String> shown = Map.of();

    Choice(String id, String label, Consumer<String> chosen) {
        this.chosen = chosen;
        select = Dom.el("select", "in").setAttribute("id", id).setAttribute("aria-label", label);
        select.addEventListener("change", e -> choose(e.getEventData().getString("element.value")))
                .addEventData("element.value");
        pending = new PendingChoice(select);
    }

    Element element() {
        return select;
    }

    /** As the browser tells it. */
    void choose(String value) {
        pending.heard(value);
        chosen.accept(value);
    }

    Map<String, String> options() {
        return shown;
    }

    /** Shows the options by the text stored, and which holds; one that is no option is shown as it is. */
    void show(Map<String, String> options, String value) {
        Map<String, String> now = new java.util.LinkedHashMap<>(options);
        now.putIfAbsent(value, value);
        boolean newList = !List.copyOf(now.keySet()).equals(List.copyOf(shown.keySet()));
        if (newList) {
            select.removeAllChildren();
            now.forEach((key, words) ->
                    select.appendChild(Dom.text("option", "", words).setAttribute("value", key)));
        } else if (!now.equals(shown)) {
            // The list a person may be choosing in stays as it is; only its words change.
            int i = 0;
            for (String words : now.values()) {
                Dom.retext(select.getChild(i++), words);
            }
        }
        shown = now;
        pending.show(value, newList);
    }
}
