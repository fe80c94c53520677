package longrun.ui.frame;

import com.vaadin.flow.dom.Element;

/**
 * Keeps a choice in a native list that was made while an earlier answer was still on its way: that answer must not write
 * over it.
 */
public final class PendingChoice {

    private PendingChoice() {}

    /** Makes the browser remember what is chosen until the program has heard it. */
    public static void remember(Element select) {
        // At each attaching: a place left and gone to again has new lists in the browser.
        select.addAttachListener(
                e -> select.executeJs("this.addEventListener('input', () => { this.pending = this.value; })"));
    }

    /** The program has heard a choice. */
    public static void heard(Element select, String value) {
        select.executeJs("if (this.pending === $0) delete this.pending", value);
    }

    /** Shows what is stored, unless something newer is chosen. */
    public static void show(Element select, String stored) {
        select.executeJs("this.value = this.pending ?? $0", stored);
    }
}
