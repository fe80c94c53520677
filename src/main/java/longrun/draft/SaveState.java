package longrun.draft;

import java.time.Instant;

/** How a house stands with the store. Only {@link Saved} may be called saved. */
public sealed interface SaveState {

    /** Everything is stored. */
    record Saved(Instant when) implements SaveState {}

    /** Another tab has stored a change that is not here; nothing of it was overwritten, and the person chooses. */
    record ChangedElsewhere(long version, Instant when) implements SaveState {}

    /** The house was deleted meanwhile; what is typed is still here. */
    record Deleted() implements SaveState {}

    /** The last change could not be stored; it is still here, and is tried again with the next. */
    record NotSaved(String why) implements SaveState {}
}
