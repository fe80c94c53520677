package longrun.draft;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;

/**
 * Undo and redo as a list of whole drafts. Keys that follow one another in one field are one step.
 *
 * @param <D> the draft, never changed once made
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

    public D now() {
        return now;
    }

    /** Takes the next draft; with the place unchanged it joins the step before. */
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

    public Optional<D> undo() {
        return step(before, after);
    }

    public Optional<D> redo() {
        return step(after, before);
    }

    /** The draft before the last step, which stays what it is; empty at the beginning. */
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
