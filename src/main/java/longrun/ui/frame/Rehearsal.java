package longrun.ui.frame;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.internal.ConstantPool;
import com.vaadin.flow.internal.StateTree;

/**
 * Warm-up of a page: keys are typed into an unseen copy once the program has started, so that a person's first keys are
 * answered quickly.
 *
 * @param <P> the page
 */
public abstract class Rehearsal<P extends Component> {

    private final int keys;

    /**
     * Makes a rehearsal.
     *
     * @param keys how many keys are typed
     */
    protected Rehearsal(int keys) {
        this.keys = keys;
    }

    /** A new page with a draft in it. */
    protected abstract P open();

    /** Types one key into the page. */
    protected abstract void key(P page, int number);

    /** Types every key and writes out the changes of the page, as they would be sent to a browser. */
    public final void run() {
        UI ui = new UI();
        StateTree tree = ui.getInternals().getStateTree();
        P page = open();
        ui.add(page);
        for (int i = 0; i < keys; i++) {
            key(page, i);
            tree.collectChanges(change -> change.toJson(new ConstantPool()));
        }
    }
}
