package longrun.ui.frame;

import com.vaadin.flow.dom.Element;
import org.jspecify.annotations.Nullable;

/**
 * The value of a native select. A choice made while an earlier answer is still on its way is not overwritten by that answer;
 * and the browser is sent only what differs, since a page may hold dozens of selects.
 */
public final class PendingChoice {

    private final Element select;
    private @Nullable String shown;

    public PendingChoice(Element select) {
        this.select = select;
        // The browser makes a new element each time it is attached.
        select.addAttachListener(e -> {
            select.executeJs("this.addEventListener('input', () => { this.pending = this.value; })");
            if (shown != null) {
                write(shown);
            }
        });
    }

    /** Records a choice that the browser has reported. */
    public void heard(String value) {
        shown = value;
        select.executeJs("if (this.pending === $0) delete this.pending", value);
    }

    /**
     * Shows what is stored, unless something newer has been chosen.
     *
     * @param newList whether the options were replaced, which clears the value
     */
    public void show(String stored, boolean newList) {
        if (newList || !stored.equals(shown)) {
            shown = stored;
            write(stored);
        }
    }

    private void write(String stored) {
        select.executeJs("this.value = this.pending ?? $0", stored);
    }
}
