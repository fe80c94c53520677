package longrun.ui.field;

import com.vaadin.flow.dom.Element;
import java.util.Optional;
import longrun.ui.frame.Entry;

/** A field for one entry: its label, what is written or chosen, and what was understood. */
public interface Field {

    /** The pointer of its entry in the draft. */
    String pointer();

    /** The element that shows it. */
    Element element();

    /**
     * Shows what the draft holds.
     *
     * @param write whether the text of a text field is replaced; false while a person types
     */
    void show(boolean write);

    /** The element that takes the focus. */
    Element target();

    /** The text field; empty where it has none. */
    default Optional<Entry> entry() {
        return Optional.empty();
    }

    /** The element id for a pointer. */
    static String id(String pointer) {
        return "e" + pointer.replaceAll("[^A-Za-z0-9]+", "-");
    }
}
