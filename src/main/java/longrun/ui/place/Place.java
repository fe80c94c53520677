package longrun.ui.place;

import com.vaadin.flow.dom.Element;
import java.util.Map;

/** One place of the house, made when it is gone to. */
public interface Place {

    /** What stands under the place's heading. */
    Element element();

    /**
     * Shows the draft, its errors and its review as they stand now.
     *
     * @param write whether the text of fields is written; never after a key, since a person is typing in one
     */
    void show(boolean write);

    /** Puts the cursor in the field of an entry, or in the nearest there is. */
    void focus(String pointer);

    /** What stands in each field as far as the page has heard, by its {@code data-at}. */
    Map<String, String> heard();

    /** Shows what is taken along to others; only the findings have it. */
    default void takenAlong() {}

    /** Takes what was typed while the program did not answer in a field whose {@code data-at} is no pointer. */
    default void typedBefore(String at, String typed) {}
}
