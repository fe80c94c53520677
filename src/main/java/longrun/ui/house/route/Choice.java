package longrun.ui.house.route;

import com.vaadin.flow.dom.Element;
import elemental.json.Json;
import elemental.json.JsonArray;
import java.util.List;
import java.util.Locale;
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
    private boolean reworded;

    Choice(String id, String label, Consumer<String> chosen) {
        this.chosen = chosen;
        select = Dom.el("select", "in").setAttribute("id", id).setAttribute("aria-label", label);
        select.addEventListener("change", e -> choose(e.getEventData().getString("element.value")))
                .addEventData("element.value");
        select.addEventListener("spelled", e -> spelled(e.getEventData().getString("event.detail")))
                .addEventData("event.detail");
        select.addAttachListener(e -> {
            if (reworded) { // put on a page again, it is made of the words as they stand
                reworded = false;
                fill(shown);
            }
        });
        pending = new PendingChoice(select);
    }

    /**
     * Letters typed for a choice that the browser’s list did not hold yet, since the answer that brings it was still
     * on its way: they are held against the list as it stands now.
     */
    void spelled(String letters) {
        String typed = letters.strip().toLowerCase(Locale.ROOT);
        shown.entrySet().stream()
                .filter(o -> !typed.isEmpty()
                        && o.getValue().toLowerCase(Locale.ROOT).startsWith(typed))
                .findFirst()
                .ifPresent(o -> chosen.accept(o.getKey()));
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
            fill(now);
        } else if (!now.equals(shown)) {
            // The list a person may be choosing in stays as it is; only its words change.
            JsonArray words = Json.createArray();
            now.values().forEach(w -> words.set(words.length(), w));
            select.executeJs("$0.forEach((w, i) => { if (this.options[i]) this.options[i].text = w })", words);
            reworded = true;
        }
        shown = now;
        pending.show(value, newList);
    }

    /** Every line has its lists, so each is written at once rather than a node for each option. */
    private void fill(Map<String, String> options) {
        select.setProperty("innerHTML", Dom.options(options));
    }
}
