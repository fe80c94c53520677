package longrun.ui.field;

import com.vaadin.flow.dom.Element;
import java.util.Locale;
import java.util.Optional;
import longrun.draft.EntryAddress;
import longrun.plan.json.PlanError;
import longrun.ui.frame.Dom;
import longrun.ui.frame.Entry;
import longrun.ui.place.HousePage;

/**
 * A field in one row: its label, the text field, and at the end what belongs to it, such as the unit. What it was understood
 * as is shown only where it differs from what was typed.
 */
abstract class LineField implements Field {

    private final HousePage page;
    private final String pointer;
    private final String help;
    private final Entry entry;
    private final Element element;

    /** @param kind the kind of row, as its class */
    LineField(HousePage page, String pointer, String kind, String label, String help) {
        this.page = page;
        this.pointer = pointer;
        this.help = help;
        String id = Field.id(pointer);
        entry = new Entry(id, label, "in", typed -> address().type(page.session(), typed));
        entry.getElement().addEventListener("blur", e -> page.session().endStep());
        Element name = Dom.text("label", "lab", label).setAttribute("for", id);
        element = Dom.el("div", ("fld fact-row " + kind).strip(), name, entry.getElement());
    }

    /** Adds the elements at the end of the row, then the message. */
    final void end(Element... ends) {
        element.appendChild(ends);
        element.appendChild(entry.said());
    }

    /** The address of its entry, with the unit of a bare number. */
    abstract EntryAddress address();

    /** The message for an entry that is wrong. */
    String wrong(String stored, PlanError error) {
        return error.message();
    }

    /** What an entry was understood as; blank where what is typed already says it. */
    String understood(String stored) {
        return "";
    }

    /** The text of the field for what is stored. */
    String written(String stored) {
        return stored;
    }

    @Override
    public void show(boolean write) {
        EntryAddress address = address();
        entry.getElement().setAttribute("data-at", address.written());
        String stored = page.session().text(pointer);
        if (write && !address.stands(entry.text(), stored)) {
            entry.write(written(stored));
        }
        Optional<PlanError> error = page.session().error(pointer);
        if (error.isPresent()) {
            entry.wrong(wrong(stored, error.get()));
        } else if (stored.isBlank()) {
            entry.helps(help);
        } else {
            tell(stored);
        }
    }

    /** Shows what an entry that is not blank was understood as. */
    void tell(String stored) {
        String understood = understood(stored);
        if (same(entry.text(), understood)) {
            entry.echoed(understood);
        } else {
            entry.understood(understood);
        }
    }

    /** Whether what was understood says no more than what was typed: the same number, with or without its unit. */
    static boolean same(String typed, String understood) {
        String t = bare(typed);
        String u = bare(understood);
        return u.isEmpty() || u.equals(t) || (!t.isEmpty() && number(u).equals(t));
    }

    private static String bare(String words) {
        return words.toLowerCase(Locale.ROOT).replace(",", "").replaceAll("\\s+", "");
    }

    private static String number(String bare) {
        return bare.replaceAll("^([-\u2212]?[0-9.]+).*$", "$1");
    }

    final HousePage page() {
        return page;
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
