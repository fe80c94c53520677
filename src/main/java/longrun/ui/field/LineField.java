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
 * One fact, one row: its name, the line to write on, and at the line's end what belongs to it. What it was understood as
 * is shown where it differs from what was typed.
 */
abstract class LineField implements Field {

    private final HousePage desk;
    private final String pointer;
    private final String help;
    private final Entry entry;
    private final Element element;

    /** @param kind what sort of row it is, as its class */
    LineField(HousePage desk, String pointer, String kind, String label, String help) {
        this.desk = desk;
        this.pointer = pointer;
        this.help = help;
        String id = Field.id(pointer);
        entry = new Entry(id, label, "in", typed -> address().type(desk.session(), typed));
        entry.getElement().addEventListener("blur", e -> desk.session().endStep());
        Element name = Dom.text("label", "lab", label).setAttribute("for", id);
        element = Dom.el("div", ("fld fact-row " + kind).strip(), name, entry.getElement());
    }

    /** Puts what belongs at the end of the line, and then what is said of it. */
    final void end(Element... ends) {
        element.appendChild(ends);
        element.appendChild(entry.said());
    }

    /** Where it is kept, and as what. */
    abstract EntryAddress address();

    /** What is said of an entry that is wrong. */
    String wrong(String stored, PlanError error) {
        return error.message();
    }

    /** What an entry was understood as; empty where it is told by what is typed. */
    String understood(String stored) {
        return "";
    }

    /** What stands in the field for what is kept. */
    String written(String stored) {
        return stored;
    }

    @Override
    public void show(boolean write) {
        EntryAddress address = address();
        entry.getElement().setAttribute("data-at", address.written());
        String stored = desk.session().text(pointer);
        if (write && !address.stands(entry.text(), stored)) {
            entry.write(written(stored));
        }
        Optional<PlanError> error = desk.session().error(pointer);
        if (error.isPresent()) {
            entry.wrong(wrong(stored, error.get()));
        } else if (stored.isBlank()) {
            entry.helps(help);
        } else {
            tell(stored);
        }
    }

    /** Says how the entry stands that holds something. */
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

    final HousePage desk() {
        return desk;
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
