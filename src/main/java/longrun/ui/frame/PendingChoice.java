package longrun.ui.frame;

import com.vaadin.flow.dom.Element;
import org.jspecify.annotations.Nullable;

/**
 * What stands in a native list. A choice made while an earlier answer is still on its way is not written over by that
 * answer; and the browser is told only what it does not know, since a page may hold dozens of lists.
 */
public final class PendingChoice {

    private final Element select;
    private @Nullable String standing;

    public PendingChoice(Element select) {
        this.select = select;
        // Each time it comes onto a page it is made anew in the browser.
        select.addAttachListener(e -> {
            select.executeJs("this.addEventListener('input', () => { this.pending = this.value; })");
            if (standing != null) {
                write(standing);
            }
        });
    }

    /** The program has heard a choice. */
    public void heard(String value) {
        standing = value;
        select.executeJs("if (this.pending === $0) delete this.pending", value);
    }

    /**
     * Shows what is stored, unless something newer is chosen.
     *
     * @param newList whether the list's options were made anew, which takes its value away
     */
    public void show(String stored, boolean newList) {
        if (newList || !stored.equals(standing)) {
            standing = stored;
            write(stored);
        }
    }

    private void write(String stored) {
        select.executeJs("this.value = this.pending ?? $0", stored);
    }
}
