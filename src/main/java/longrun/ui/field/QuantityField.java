package longrun.ui.field;

import com.vaadin.flow.dom.Element;
import java.util.Optional;
import longrun.draft.EntryAddress;
import longrun.plan.json.PlanError;
import longrun.quantity.NotAQuantity;
import longrun.quantity.Quantity;
import longrun.ui.frame.Dom;
import longrun.ui.frame.Entry;
import longrun.ui.place.HousePage;
import longrun.words.Shown;

/**
 * A quantity: a line to write on, and what it was understood as. A bare number has the unit that stands beside the
 * label.
 *
 * @param <Q> what is asked for
 */
public final class QuantityField<Q extends Quantity> implements Field {

    private final HousePage desk;
    private final String pointer;
    private final String label;
    private final String help;
    private final Shown<Q> shown;
    private final Element unit = Dom.text("span", "unit", "");
    private final Entry entry;
    private final Element answers = Dom.el("div", "ans");
    private final Optional<Element> unknown;
    private final Optional<Element> none;
    private final Element element;

    /** @param none the words for a known absence; empty where there can be none */
    public QuantityField(
            HousePage desk, String pointer, String label, String help, Shown<Q> shown, boolean asks, String none) {
        this.desk = desk;
        this.pointer = pointer;
        this.label = label;
        this.help = help;
        this.shown = shown;
        String id = Field.id(pointer);
        this.entry = new Entry(id, label, "in", typed -> address().type(desk.session(), typed));
        this.unknown = asks
                ? Optional.of(answer("I don\u2019t know", () -> desk.session().remove(pointer)))
                : Optional.empty();
        this.none = none.isEmpty()
                ? Optional.empty()
                : Optional.of(answer(none, () -> desk.session().choose(pointer, "none")));
        entry.getElement().addEventListener("blur", e -> desk.session().endStep());
        Element name = Dom.el("label", "lab", Dom.words(label + " "), unit).setAttribute("for", id);
        element = Dom.el("div", "fld", name, entry.getElement(), entry.said());
        if (answers.getChildCount() > 0) {
            answers.setAttribute("role", "group").setAttribute("aria-label", label + ": without a figure");
            element.appendChild(answers);
            entry.getElement().setAttribute("aria-keyshortcuts", "ArrowDown"); // to the answers below it
        }
    }

    private Element answer(String says, Runnable does) {
        Element button = Dom.button("", says);
        button.addEventListener("click", e -> does.run());
        answers.appendChild(button);
        return button;
    }

    private EntryAddress address() {
        return new EntryAddress(pointer, shown.unit(desk.units()));
    }

    @Override
    public void show(boolean write) {
        EntryAddress address = address();
        entry.getElement().setAttribute("data-at", address.written());
        Dom.retext(unit, shown.unitWords(desk.units()));
        String stored = desk.session().text(pointer);
        boolean isNone = stored.strip().equalsIgnoreCase("none");
        if (write && !address.stands(entry.text(), stored)) {
            entry.write(isNone && none.isPresent() ? "" : address.inField(stored));
        }
        boolean isList = desk.session().at(pointer).isArray();
        unknown.ifPresent(u -> press(u, stored.isBlank() && !isList));
        none.ifPresent(n -> press(n, isNone));
        tell(stored, isNone);
        if (isList && desk.session().error(pointer).isEmpty()) {
            entry.understood("A list is entered; what is typed here takes its place.");
        }
    }

    private void tell(String stored, boolean isNone) {
        Optional<PlanError> error = desk.session().error(pointer);
        if (error.isPresent()) {
            entry.wrong(error.get().message());
        } else if (stored.isBlank()) {
            entry.understood(help);
        } else if (isNone) {
            entry.understood("Looked; there is none.");
        } else {
            try {
                entry.understood(shown.words(desk.units(), shown.measure().read(stored)));
            } catch (NotAQuantity e) {
                // A distance may be known only to be more than so much, which is no plain length.
                entry.understood(stored);
            }
        }
    }

    private static void press(Element button, boolean on) {
        button.setAttribute("aria-pressed", String.valueOf(on));
        Dom.setClass(button, "on", on);
    }

    String label() {
        return label;
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
        return entry.getElement();
    }

    @Override
    public Optional<Entry> entry() {
        return Optional.of(entry);
    }
}
