package longrun.ui.fill;

import com.vaadin.flow.dom.Element;
import java.util.Optional;
import longrun.draft.fill.FillDraft;
import longrun.draft.fill.FillEntry;
import longrun.quantity.Measure;
import longrun.quantity.NotAQuantity;
import longrun.quantity.Quantity;
import longrun.quantity.Typed;
import longrun.ui.frame.DayChoice;
import longrun.ui.frame.Dom;
import longrun.ui.frame.Entry;
import longrun.words.DisplayUnits;
import longrun.words.UnitSystem;

/** One entry on its line: what it is, the field, where its value is from, and that it may be not known. */
final class FactField {

    private final FillEntry which;
    private final Entry entry;
    private final Element unit = Dom.text("span", "u", "");
    private final Element note = Dom.text("span", "origin", "");
    private final Element notKnown = Dom.button("", "not known");
    private final Optional<DayChoice> days;
    private final Element element;

    FactField(FillEntry which, String label, FillActions hand) {
        this.which = which;
        String id = id(which);
        entry = new Entry(id, label, "in r", text -> hand.typed(which, text));
        entry.getElement().setAttribute("data-at", which.name());
        boolean words = which == FillEntry.GAUGE_DATE;
        if (words) {
            entry.getElement().setAttribute("class", "in day");
        } else if (which != FillEntry.GAUGE && which != FillEntry.REFILL_AT) {
            entry.getElement().setAttribute("inputmode", "text");
        }
        notKnown.setAttribute("aria-label", label + " not known");
        notKnown.addEventListener("click", e -> {
            entry.write("");
            hand.typed(which, "");
        });
        days = words
                ? Optional.of(new DayChoice(label, day -> {
                    entry.write(day);
                    hand.typed(which, day);
                    entry.getElement().executeJs("this.focus()");
                }))
                : Optional.empty();
        element = Dom.el(
                "div",
                "fld fact",
                Dom.text("label", "k", label).setAttribute("for", id),
                entry.getElement(),
                unit,
                Dom.el("div", "note", note, entry.said()),
                Dom.el("div", "ans", notKnown));
        days.ifPresent(d -> element.insertChild(element.getChildCount() - 1, d.element()));
    }

    static String id(FillEntry which) {
        return "fill-" + which.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }

    Element element() {
        return element;
    }

    Entry entry() {
        return entry;
    }

    /**
     * Shows the entry.
     *
     * @param origin where its value is from
     * @param error what is wrong with it
     * @param write whether the field is written: never after a key
     */
    void show(FillDraft draft, UnitSystem units, String origin, Optional<String> error, boolean write) {
        String stored = draft.text(which);
        Dom.retext(unit, unitWords(units));
        Dom.retext(note, origin);
        if (write
                && (entry.text().isBlank() || !which.stored(entry.text(), units).equals(stored))) {
            entry.write(which.inField(stored, units));
        }
        if (error.isPresent()) {
            entry.wrong(error.get());
        } else {
            entry.understood(stored.isBlank() ? "" : understood(stored, units));
        }
        days.ifPresent(d -> d.show(stored));
        boolean blank = stored.isBlank();
        Dom.setClass(notKnown, "on", blank);
        notKnown.setAttribute("aria-pressed", String.valueOf(blank));
    }

    private String unitWords(UnitSystem units) {
        return switch (which) {
            case COUNT, GAUGE_DATE -> "";
            case LEAD -> "days";
            case PRICE -> "a gal";
            case GAUGE, REFILL_AT -> "%";
            default -> units == UnitSystem.CUSTOMARY ? "\u00b0F" : "\u00b0C";
        };
    }

    /** Said only where the field does not say it itself. */
    private String understood(String stored, UnitSystem units) {
        if (which == FillEntry.GAUGE_DATE) {
            try {
                return Typed.words(Typed.readDate(stored));
            } catch (NotAQuantity e) {
                return "";
            }
        }
        boolean temperature = which == FillEntry.COLDEST || which == FillEntry.DESIGN || which == FillEntry.GROUND;
        return temperature ? other(stored, Measure.TEMPERATURE, DisplayUnits.TEMPERATURE, units) : "";
    }

    private static <Q extends Quantity> String other(
            String stored, Measure<Q> measure, DisplayUnits<Q> shown, UnitSystem units) {
        String unit = shown.unit(units);
        if (stored.endsWith(" " + unit)) {
            return "";
        }
        try {
            return shown.words(units, measure.read(stored));
        } catch (NotAQuantity e) {
            return "";
        }
    }
}
