package longrun.draft;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;

/**
 * Undo and redo as a list of whole drafts, at most 500. Successive keys in one field are one step.
 *
 * @param <D> the type of draft, which must be immutable
 */
public final class History<D> {

    private static final int LONGEST = 500;

    private final Deque<D> before = new ArrayDeque<>();
    private final Deque<D> after = new ArrayDeque<>();
    private D now;
    private String lastPlace = "";

    public History(D first) {
        this.now = first;
    }

    /** The draft as it stands. */
    public D now() {
        return now;
    }

    /**
     * Adds the next draft.
     *
     * @param place the field it was typed in; the same field as before joins the current step, blank begins a new one
     */
    public void take(D next, String place) {
        boolean sameStep = !place.isEmpty() && place.equals(lastPlace) && after.isEmpty() && !before.isEmpty();
        if (!sameStep) {
            before.push(now);
            if (before.size() > LONGEST) {
                before.removeLast();
            }
        }
        after.clear();
        now = next;
        lastPlace = place;
    }

    /** Ends the step: the next key begins a new one, even in the same field. */
    public void endStep() {
        lastPlace = "";
    }

    /** Goes back one step and gives the draft there; empty where there is none. */
    public Optional<D> undo() {
        return step(before, after);
    }

    /** Does the step undone last again and gives the draft there; empty where there is none. */
    public Optional<D> redo() {
        return step(after, before);
    }

    /** The draft before the last step, without going back to it; empty at the beginning. */
    public Optional<D> before() {
        return Optional.ofNullable(before.peek());
    }

    public boolean canUndo() {
        return !before.isEmpty();
    }

    public boolean canRedo() {
        return !after.isEmpty();
    }

    private Optional<D> step(Deque<D> from, Deque<D> to) {
        endStep();
        if (from.isEmpty()) {
            return Optional.empty();
        }
        to.push(now);
        now = from.pop();
        return Optional.of(now);
    }
}
