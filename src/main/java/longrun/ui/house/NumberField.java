package longrun.ui.house;

import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.TextNode;
import com.vaadin.flow.dom.Element;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;
import longrun.ui.frame.Dom;
import longrun.ui.frame.Entry;

/** A count, which is a bare number in the plan; what is no number is kept as typed and said to be none. */
public final class NumberField implements Field {

    private static final Pattern NUMBER = Pattern.compile("[0-9]{1,9}(\\.[0-9]{1,9})?");

    private final HouseDesk desk;
    private final String pointer;
    private final String help;
    private final Entry entry;
    private final Element element;

    public NumberField(HouseDesk desk, String pointer, String label, String help) {
        this.desk = desk;
        this.pointer = pointer;
        this.help = help;
        String id = Field.id(pointer);
        entry = new Entry(id, label, "in", this::typed);
        entry.getElement().setAttribute("data-at", pointer).setAttribute("inputmode", "decimal");
        entry.getElement().addEventListener("blur", e -> desk.session().endStep());
        Element name = Dom.text("label", "lab", label).setAttribute("for", id);
        element = Dom.el("div", "fld", name, entry.getElement(), entry.said());
    }

    private void typed(String text) {
        String number = text.strip();
        desk.session().type(pointer, d -> {
            if (number.isEmpty()) {
                DraftTree.remove(d, pointer);
            } else {
                DraftTree.put(
                        d,
                        pointer,
                        NUMBER.matcher(number).matches()
                                ? DecimalNode.valueOf(new BigDecimal(number))
                                : TextNode.valueOf(text));
            }
        });
    }

    @Override
    public void show(boolean write) {
        String stored = desk.session().text(pointer);
        if (write) {
            entry.write(stored);
        }
        Optional<String> error = desk.session().error(pointer);
        if (error.isPresent()) {
            entry.wrong("\u201c" + stored + "\u201d is no number: write it in digits, such as 4");
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
