package longrun.ui.house.figure;

import com.vaadin.flow.dom.Element;
import java.util.Map;
import longrun.ui.field.FieldList;
import longrun.ui.frame.Dom;
import longrun.ui.place.Place;

/** A place of fields whose figures are heavy: a key only stores its entry, and they are worked out a moment after. */
public abstract class FiguresPlace implements Place {

    private final FieldList fields = new FieldList();
    private final Element element = Dom.el("div", "place-body");
    private final DeferredWork afterwards = new DeferredWork(element, this::work);

    /** Puts its parts on the page. */
    protected final void holds(Element... parts) {
        element.appendChild(parts);
    }

    /** Draws the entries that come and go; whether any are new, so that their fields must be written. */
    protected abstract boolean drawEntries();

    /** Shows beside the fields what hangs on the entries alone. */
    protected void showEntries(boolean write) {
        // Most places show nothing but fields.
    }

    /** Works the figures out from the last plan that could be read. */
    protected abstract void work();

    @Override
    public final Element element() {
        return element;
    }

    @Override
    public final void show(boolean write) {
        boolean fresh = drawEntries();
        fields.show(write || fresh);
        showEntries(write);
        if (write) {
            afterwards.now();
        } else {
            afterwards.soon();
        }
    }

    @Override
    public void focus(String pointer) {
        fields.focus(pointer);
    }

    @Override
    public Map<String, String> heard() {
        return fields.heard();
    }

    public final FieldList fields() {
        return fields;
    }
}
