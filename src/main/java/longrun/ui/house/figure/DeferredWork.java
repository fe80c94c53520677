package longrun.ui.house.figure;

import com.vaadin.flow.dom.Element;

/**
 * Work that waits until the page has had its answer: the key is stored and shown first, then the page asks for the rest by
 * itself. Keys that come meanwhile wait for the same turn.
 */
public final class DeferredWork {

    private final Element at;
    private final Runnable work;
    private boolean waiting;

    /** @param at an element of the page, which must be attached for its turn to come */
    public DeferredWork(Element at, Runnable work) {
        this.at = at;
        this.work = work;
    }

    /** Asks for a turn. */
    public void soon() {
        if (!waiting) {
            waiting = true;
            at.executeJs("return true").then(Boolean.class, done -> now(), failed -> waiting = false);
        }
    }

    /** Works at once. */
    public void now() {
        waiting = false;
        work.run();
    }
}
