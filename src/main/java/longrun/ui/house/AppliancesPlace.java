package longrun.ui.house;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.vaadin.flow.dom.Element;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import longrun.plan.ApplianceKind;
import longrun.ui.frame.Dom;
import longrun.words.Names;

/** Everything that burns gas: what it is, and what its rating plate says. */
final class AppliancesPlace implements Place {

    private static final String APPLIANCES = "/appliances";

    /**
     * Letters and arrows walk through the list before they reach what is meant: from the keyboard a kind is chosen with
     * Enter, Tab or by leaving, with the mouse at once.
     */
    private static final String CHOSEN_WHEN_DONE = """
        let keyed = -1000;
        const done = () => {
          const chosen = this.value;
          if (chosen === '') return;
          this.value = '';
          this.dispatchEvent(new CustomEvent('kind-chosen', { detail: chosen }));
        };
        this.addEventListener('keydown', (e) => {
          keyed = performance.now();
          if (e.key === 'Enter') e.preventDefault();
          if (e.key === 'Enter' || e.key === 'Tab') done();
        });
        this.addEventListener('change', () => { if (performance.now() - keyed > 300) done(); });
        this.addEventListener('blur', done);
        """;

    private final HouseDesk desk;
    private final FieldList fields = new FieldList();
    private final Element blocks = Dom.el("div", "appliances");
    private final Element none = Dom.text(
            "p", "lede", "No appliance is entered yet. Begin with the one that burns most: heater, furnace or boiler.");
    private final Element kind = Dom.el("select", "in").setAttribute("id", "add-kind");
    private final Element element;
    private final Map<Integer, ApplianceBlock> shown = new LinkedHashMap<>();
    private boolean drawAnew = true;

    AppliancesPlace(HouseDesk desk) {
        this.desk = desk;
        kind.appendChild(Dom.text("option", "", "choose what it is").setAttribute("value", ""));
        for (ApplianceKind each : ApplianceKind.values()) {
            kind.appendChild(Dom.text("option", "", Names.capital(each.label())).setAttribute("value", each.written()));
        }
        kind.addEventListener("kind-chosen", e -> add(e.getEventData().getString("event.detail")))
                .addEventData("event.detail");
        kind.addAttachListener(e -> kind.executeJs(CHOSEN_WHEN_DONE));
        Element adding = Dom.el(
                "div",
                "fld add",
                Dom.text("label", "lab", "Add an appliance").setAttribute("for", "add-kind"),
                kind,
                Dom.text("p", "said", "From the keyboard: its first letters, then Enter."));
        element = Dom.el("div", "place-body", none, blocks, adding);
    }

    /** Adds an appliance and puts the cursor at its input. */
    void add(String written) {
        if (written.isEmpty()) {
            return;
        }
        String id = FreeId.of(desk.session().draft(), written);
        int index = desk.session()
                .add(
                        APPLIANCES,
                        JsonNodeFactory.instance.objectNode().put("id", id).put("kind", written));
        fields.focus(APPLIANCES + "/" + index + "/input");
    }

    private void remove(int index) {
        drawAnew = true;
        desk.session().remove(APPLIANCES + "/" + index);
    }

    @Override
    public Element element() {
        return element;
    }

    @Override
    public void show(boolean write) {
        JsonNode all = desk.session().at(APPLIANCES);
        boolean fresh = drawAnew || all.size() != shown.size();
        if (drawAnew || all.size() < shown.size()) {
            drawAnew = false;
            shown.clear();
            fields.clear();
            blocks.removeAllChildren();
        }
        // What is there already stays: a person may be typing in it.
        for (int i = shown.size(); i < all.size(); i++) {
            int index = i;
            ApplianceBlock block = new ApplianceBlock(desk, fields, APPLIANCES + "/" + i, () -> remove(index));
            shown.put(i, block);
            blocks.appendChild(block.element());
        }
        Dom.show(none, all.isEmpty());
        fields.show(write || fresh);
        shown.values().forEach(ApplianceBlock::show);
    }

    @Override
    public void focus(String pointer) {
        if (shown.isEmpty()) {
            FieldList.focus(kind);
        } else {
            fields.focus(pointer);
        }
    }

    @Override
    public Map<String, String> heard() {
        return fields.heard();
    }

    FieldList fields() {
        return fields;
    }

    List<ApplianceBlock> blocks() {
        return List.copyOf(shown.values());
    }
}
