package longrun.ui.field;

import com.vaadin.flow.dom.Element;
import java.util.Optional;
import longrun.draft.EntryAddress;
import longrun.plan.json.PlanError;
import longrun.ui.frame.Dom;
import longrun.ui.frame.Entry;
import longrun.ui.place.HousePage;

/** A line to write on under its label, as it was typed; below it what it was understood as, or what is wrong. */
abstract class LineField implements Field {

    private final HousePage desk;
    private final EntryAddress address;
    private final String help;
    private final Entry entry;
    private final Element element;

    LineField(HousePage desk, EntryAddress address, String label, String help) {
        this.desk = desk;
        this.address = address;
        this.help = help;
        String id = Field.id(address.pointer());
        entry = new Entry(id, label, "in", typed -> address.type(desk.session(), typed));
        entry.getElement().setAttribute("data-at", address.written());
        entry.getElement().addEventListener("blur", e -> desk.session().endStep());
        Element name = Dom.text("label", "lab", label).setAttribute("for", id);
        element = Dom.el("div", "fld", name, entry.getElement(), entry.said());
    }

    /** What is said of an entry that is wrong. */
    String wrong(String stored, PlanError error) {
        return error.message();
    }

    /** What an entry was understood as; empty where it is told by what is typed. */
    String understood(String stored) {
        return "";
    }

    @Override
    public void show(boolean write) {
        String stored = desk.session().text(address.pointer());
        if (write && !address.stands(entry.text(), stored)) {
            entry.write(stored);
        }
        Optional<PlanError> error = desk.session().error(address.pointer());
        if (error.isPresent()) {
            entry.wrong(wrong(stored, error.get()));
        } else {
            entry.understood(stored.isBlank() ? help : understood(stored));
        }
    }

    @Override
    public String pointer() {
        return address.pointer();
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
