package longrun.ui.house.appliances;

import com.vaadin.flow.dom.Element;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import longrun.draft.ApplianceLine;
import longrun.draft.entry.DraftAppliances;
import longrun.draft.entry.DraftValue;
import longrun.draft.entry.FreeId;
import longrun.draft.entry.NewItem;
import longrun.plan.PlanPath;
import longrun.plan.choice.ApplianceKind;
import longrun.ui.field.FieldList;
import longrun.ui.frame.Dom;
import longrun.ui.place.HousePage;
import longrun.ui.place.Place;
import longrun.words.IsolatedName;
import longrun.words.Names;
import org.jspecify.annotations.Nullable;

/** Everything that burns gas: what it is, and what its rating plate says. */
public final class AppliancesPlace implements Place {

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

    private final HousePage desk;
    private final FieldList fields = new FieldList();
    private final Element blocks = Dom.el("div", "appliances");
    private final Element none = Dom.text(
            "p", "lede", "No appliance is entered yet. Begin with the one that burns most: heater, furnace or boiler.");
    private final Element kind = Dom.el("select", "in").setAttribute("id", "add-kind");
    private final OneLine oneLine = new OneLine(this::add);
    private final Element element;
    private final List<Slot> slots = new ArrayList<>();
    private int firstInSight;
    private int lastInSight = -1;
    private boolean drawAnew = true;

    /** So many blocks have their fields at once; of more, those that have come in sight or selected. */
    static final int FEW = 12;

    private static final int MOST_IN_SIGHT = 20;

    /** The place of one appliance: a line of text until its block is asked for. */
    private final class Slot {
        private final String at;
        private final int index;
        private final Element holder = Dom.el("div", "");
        private final Element text = Dom.el("section", "appliance text").setAttribute("tabindex", "0");
        private final Element title = Dom.text("h3", "", "");
        private final Element entries = Dom.text("p", "q", "");
        private @Nullable ApplianceBlock block;

        Slot(int index) {
            this.index = index;
            at = APPLIANCES + "/" + index;
            holder.appendChild(text.appendChild(title, entries));
            text.addEventListener("focus", e -> takeInHand());
            text.addEventListener("click", e -> takeInHand());
        }

        private void takeInHand() {
            AppliancesPlace.this.block(index);
            fields.focus(at + "/input");
        }

        ApplianceBlock block() {
            if (block == null) {
                block = new ApplianceBlock(desk, fields, at, () -> remove(index));
                holder.removeAllChildren();
                holder.appendChild(block.element());
            }
            return block;
        }

        void show(DraftAppliances names) {
            if (block != null) {
                block.show(names);
                return;
            }
            DraftValue a = desk.session().at(at);
            Dom.retext(title, IsolatedName.of(names.title(index)));
            String input = a.textOf("input");
            String by = a.textOf("fedBy");
            Dom.retext(
                    entries,
                    (input.isEmpty() ? "input not known" : input) + (by.isEmpty() ? "" : ", fed by section " + by));
        }
    }

    public AppliancesPlace(HousePage desk) {
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
        blocks.addEventListener("in-sight", e -> {
                    int first = (int) e.getEventData().getNumber("event.detail.first");
                    inSight(first, (int) e.getEventData().getNumber("event.detail.last"));
                })
                .addEventData("event.detail.first")
                .addEventData("event.detail.last");
        element = Dom.el("div", "place-body", none, blocks, Dom.el("div", "adds", adding, oneLine.element()));
    }

    /** Adds an appliance typed in one line; the cursor stays there. */
    private void add(ApplianceLine line) {
        NewItem item = NewItem.of(
                        "id", FreeId.of(desk.session().draft(), line.kind().written()))
                .and("kind", line.kind().written())
                .and("input", line.input());
        desk.session().add(APPLIANCES, item);
    }

    /** Adds an appliance and puts the cursor at its input. */
    public void add(String written) {
        if (written.isEmpty()) {
            return;
        }
        String id = FreeId.of(desk.session().draft(), written);
        int index = desk.session().add(APPLIANCES, NewItem.of("id", id).and("kind", written));
        focus(APPLIANCES + "/" + index + "/input");
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
        DraftValue all = desk.session().at(APPLIANCES);
        boolean fresh = drawAnew || all.size() != slots.size();
        if (drawAnew || all.size() < slots.size()) {
            drawAnew = false;
            slots.clear();
            fields.clear();
            blocks.removeAllChildren();
        }
        // What is there already stays: a person may be typing in it.
        while (slots.size() < all.size()) {
            Slot slot = new Slot(slots.size());
            slots.add(slot);
            blocks.appendChild(slot.holder);
        }
        Dom.setClass(blocks, "many", all.size() > FEW);
        for (int i = 0; i < slots.size(); i++) {
            if (slots.size() <= FEW || i >= firstInSight && i <= lastInSight) {
                slots.get(i).block();
            }
        }
        Dom.show(none, all.isEmpty());
        fields.show(write || fresh);
        DraftAppliances names = DraftAppliances.of(desk.session().draft());
        slots.forEach(s -> s.show(names));
    }

    /** The browser tells which blocks are in sight. */
    public void inSight(int first, int last) {
        firstInSight = Math.max(0, first);
        lastInSight = Math.min(last, firstInSight + MOST_IN_SIGHT);
        for (int i = firstInSight; i <= lastInSight && i < slots.size(); i++) {
            block(i);
        }
    }

    /** The block of an appliance, with its fields. */
    private ApplianceBlock block(int index) {
        int before = fields.count();
        ApplianceBlock block = slots.get(index).block();
        if (fields.count() > before) {
            fields.showFrom(before);
            block.show(DraftAppliances.of(desk.session().draft()));
        }
        return block;
    }

    @Override
    public void focus(String pointer) {
        if (slots.isEmpty()) {
            FieldList.focus(kind);
            return;
        }
        PlanPath.of(pointer).findIndex().ifPresent(at -> {
            if (at < slots.size()) {
                block(at);
            }
        });
        fields.focus(pointer);
    }

    @Override
    public Map<String, String> heard() {
        return fields.heard();
    }
}
