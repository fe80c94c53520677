package longrun.ui.field;

import com.vaadin.flow.dom.Element;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import longrun.plan.json.PlanError;
import longrun.ui.frame.Dom;
import longrun.ui.frame.PendingChoice;
import longrun.ui.place.HousePage;

/** A choice from a list, or not known. */
public final class ChoiceField implements Field {

    private final HousePage page;
    private final String pointer;
    private final String unknown;
    private final Supplier<Map<String, String>> choices;
    private final Element select;
    private final Element said;
    private final PendingChoice pending;
    private final Element element;
    private Map<String, String> shown = Map.of();

    /**
     * A field for a choice.
     *
     * @param unknown the words for not known
     * @param choices the words shown, by the text stored
     */
    public ChoiceField(
            HousePage page, String pointer, String label, String unknown, Supplier<Map<String, String>> choices) {
        this.page = page;
        this.pointer = pointer;
        this.unknown = unknown;
        this.choices = choices;
        String id = Field.id(pointer);
        said = Dom.text("p", "said", "").setAttribute("id", id + "-said");
        select = Dom.el("select", "in").setAttribute("id", id).setAttribute("aria-describedby", id + "-said");
        select.addEventListener("change", e -> chosen(e.getEventData().getString("element.value")))
                .addEventData("element.value");
        pending = new PendingChoice(select);
        Element name = Dom.text("label", "lab", label).setAttribute("for", id);
        element = Dom.el("div", "fld fact-row words", name, select, said);
    }

    /** Takes a choice that the browser reports. */
    public void chosen(String value) {
        pending.heard(value);
        if (value.isEmpty()) {
            page.session().remove(pointer);
        } else {
            page.session().choose(pointer, value);
        }
    }

    @Override
    public void show(boolean write) {
        String stored = page.session().text(pointer);
        Map<String, String> now = new LinkedHashMap<>();
        now.put("", unknown);
        now.putAll(choices.get());
        now.putIfAbsent(stored, stored);
        boolean newList = !now.equals(shown);
        if (newList) {
            shown = now;
            select.setProperty("innerHTML", Dom.options(now));
        }
        pending.show(stored, newList);
        Optional<PlanError> error = page.session().error(pointer);
        Dom.retext(said, error.map(PlanError::message).orElse(""));
        Dom.setClass(said, "bad", error.isPresent());
        if (error.isPresent()) {
            select.setAttribute("aria-invalid", "true");
        } else {
            select.removeAttribute("aria-invalid");
        }
    }

    @Override
    public String pointer() {
        return pointer;
    }

    @Override
    public Element element() {
        return element;
    }

    @Override
    public Element target() {
        return select;
    }
}
