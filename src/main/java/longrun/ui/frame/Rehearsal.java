package longrun.ui.frame;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.internal.ConstantPool;
import com.vaadin.flow.internal.StateTree;

/** A page nobody sees, typed into once the program has started, so that a person's first keys are answered quickly. */
public abstract class Rehearsal {

    private final int keys;

    /**
     * Makes a rehearsal.
     *
     * @param keys how many keys are typed
     */
    protected Rehearsal(int keys) {
        this.keys = keys;
    }

    /** The page, with something in it. */
    protected abstract Component open();

    /** One key; the page is the one {@link #open} gave. */
    protected abstract void key(int number);

    /** Types every key and has the page's changes written out, as they would be sent. */
    public final void run() {
        UI ui = new UI();
        StateTree tree = ui.getInternals().getStateTree();
        ui.add(open());
        for (int i = 0; i < keys; i++) {
            key(i);
            tree.collectChanges(change -> change.toJson(new ConstantPool()));
        }
    }
}
