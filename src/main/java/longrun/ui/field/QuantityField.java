package longrun.ui.field;

import com.vaadin.flow.dom.Element;
import java.util.Optional;
import java.util.regex.Pattern;
import longrun.draft.EntryAddress;
import longrun.quantity.NotAQuantity;
import longrun.quantity.Quantity;
import longrun.ui.frame.Dom;
import longrun.ui.place.HousePage;
import longrun.words.DisplayUnits;

/**
 * A quantity: the text field, the unit of a bare number, and at the end of the row the answers without a figure.
 *
 * @param <Q> the quantity
 */
public final class QuantityField<Q extends Quantity> extends LineField {

    /** A unit with more characters than this, such as air changes an hour, is given more room. */
    private static final int SHORT_UNIT = 9;

    /** Matches text that has a unit of its own, so that the unit of the field is not shown after it; "199k" has none. */
    private static final Pattern OWN_UNIT = Pattern.compile("[a-jl-z\u00b0'\"]|k[a-z]", Pattern.CASE_INSENSITIVE);

    private final String none;
    private final DisplayUnits<Q> shown;
    private final Element unit = Dom.text("span", "unit", "");
    private final Element answers = Dom.el("div", "ans");
    private final Optional<Element> unknown;
    private final Optional<Element> absent;

    /**
     * A field for a quantity.
     *
     * @param asks whether "I don't know" is offered
     * @param none the words of the answer that there is none; blank where that cannot be answered
     */
    public QuantityField(
            HousePage page,
            String pointer,
            String label,
            String help,
            DisplayUnits<Q> shown,
            boolean asks,
            String none) {
        super(page, pointer, "quantity", label, help);
        this.none = none;
        this.shown = shown;
        unknown = asks
                ? Optional.of(answer(
                        "not known",
                        "?",
                        "I don\u2019t know",
                        () -> page.session().remove(pointer)))
                : Optional.empty();
        absent = none.isEmpty()
                ? Optional.empty()
                : Optional.of(answer("none", "-", none, () -> page.session().choose(pointer, "none")));
        if (answers.getChildCount() == 0) {
            end(unit);
            return;
        }
        answers.setAttribute("role", "group").setAttribute("aria-label", label + ": without a figure");
        target().setAttribute("aria-keyshortcuts", "ArrowDown"); // moves to the answers at the end of the row
        end(unit, answers);
    }

    private Element answer(String says, String key, String whole, Runnable does) {
        Element button = Dom.button("", says).setAttribute("data-key", key).setAttribute("title", whole);
        button.addEventListener("click", e -> does.run());
        answers.appendChild(button);
        return button;
    }

    @Override
    EntryAddress address() {
        return new EntryAddress(pointer(), shown.unit(page().units()));
    }

    @Override
    String written(String stored) {
        return isNone(stored) && !none.isEmpty() ? "" : address().inField(stored);
    }

    @Override
    public void show(boolean write) {
        String words = shown.unitWords(page().units());
        Dom.setClass(element(), "long-unit", words.length() > SHORT_UNIT);
        super.show(write);
        Dom.retext(unit, OWN_UNIT.matcher(entry().orElseThrow().text()).find() ? "" : words);
        String stored = page().session().text(pointer());
        unknown.ifPresent(u -> press(u, stored.isBlank() && !isList()));
        absent.ifPresent(n -> press(n, isNone(stored)));
        if (stored.isBlank() && isList() && page().session().error(pointer()).isEmpty()) {
            entry().orElseThrow().understood("A list is entered. What is typed here replaces it.");
        }
    }

    @Override
    void tell(String stored) {
        if (isNone(stored) && absent.isPresent()) {
            entry().orElseThrow().echoed("You looked, and there is none.");
        } else {
            super.tell(stored);
        }
    }

    private boolean isList() {
        return page().session().at(pointer()).isList();
    }

    private static boolean isNone(String stored) {
        return stored.strip().equalsIgnoreCase("none");
    }

    @Override
    String understood(String stored) {
        try {
            return shown.words(page().units(), shown.measure().read(stored));
        } catch (NotAQuantity e) {
            // A distance may be given as "more than", which is not a plain length.
            return stored;
        }
    }

    private static void press(Element button, boolean on) {
        button.setAttribute("aria-pressed", String.valueOf(on));
        Dom.setClass(button, "on", on);
    }
}
