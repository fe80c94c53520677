package longrun.ui.house;

import com.vaadin.flow.dom.Element;
import java.util.Optional;
import longrun.ui.frame.Dom;
import longrun.ui.frame.Entry;

/** A line to write on under its label; what is stored stands in it as it was typed, and what is wrong below it. */
abstract class LineField implements Field {

    private final HouseDesk desk;
    private final String pointer;
    private final String help;
    private final Entry entry;
    private final Element element;

    LineField(HouseDesk desk, String pointer, String label, String help) {
        this.desk = desk;
        this.pointer = pointer;
        this.help = help;
        String id = Field.id(pointer);
        entry = new Entry(id, label, "in", this::typed);
        entry.getElement().setAttribute("data-at", pointer);
        entry.getElement().addEventListener("blur", e -> desk.session().endStep());
        Element name = Dom.text("label", "lab", label).setAttribute("for", id);
        element = Dom.el("div", "fld", name, entry.getElement(), entry.said());
    }

    /** A key: the text as it stands now. */
    abstract void typed(String text);

    /** What is said of an entry that is wrong. */
    String wrong(String stored, String error) {
        return error;
    }

    HouseDesk desk() {
        return desk;
    }

    @Override
    public void show(boolean write) {
        String stored = desk.session().text(pointer);
        if (write) {
            entry.write(stored);
        }
        Optional<String> error = desk.session().error(pointer);
        if (error.isPresent()) {
            entry.wrong(wrong(stored, error.get()));
        } else {
            entry.understood(stored.isBlank() ? help : "");
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
        return entry.getElement();
    }

    @Override
    public Optional<Entry> entry() {
        return Optional.of(entry);
    }
}
