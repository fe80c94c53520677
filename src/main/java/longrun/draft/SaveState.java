package longrun.draft;

import java.time.Instant;

/** Whether an open house is saved. */
public sealed interface SaveState {

    /** Everything is saved, since {@code when}. */
    record Saved(Instant when) implements SaveState {}

    /** Another tab saved a change that is not here; it was not overwritten, and the person chooses between the two. */
    record ChangedElsewhere(long version, Instant when) implements SaveState {}

    /** The house was deleted meanwhile; what is typed is still here. */
    record Deleted() implements SaveState {}

    /** The last change could not be saved; it is still here and is saved with the next one. {@code why} gives the reason. */
    record NotSaved(String why) implements SaveState {}
}
