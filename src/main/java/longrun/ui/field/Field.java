package longrun.ui.field;

import com.vaadin.flow.dom.Element;
import java.util.Optional;
import longrun.ui.frame.Entry;

/** One entry of a place: its label, what is written or chosen, and what was understood. */
public interface Field {

    /** Where it stands in the draft. */
    String pointer();

    Element element();

    /** @param write whether a text field is written */
    void show(boolean write);

    /** What takes the cursor. */
    Element target();

    /** The line to write on, where it is one. */
    default Optional<Entry> entry() {
        return Optional.empty();
    }

    /** An element id made of a pointer. */
    static String id(String pointer) {
        return "e" + pointer.replaceAll("[^A-Za-z0-9]+", "-");
    }
}
