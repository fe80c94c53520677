package longrun.store;

import org.jspecify.annotations.Nullable;

/** Why the saved houses were not opened, in words for whoever started Longrun. Nothing was written on them. */
public final class StoreTrouble extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /** What is the matter. */
    public enum Kind {
        /** Another Longrun has them open. */
        IN_USE,
        /** The folder or the file may not be written, or the folder cannot be made. */
        NOT_WRITABLE,
        /** There is no room on the disk to look through them. */
        NO_ROOM,
        /** What lies there cannot be read, or not all of it. */
        DAMAGED,
        /** The mark or copies are there, the file is not. */
        MISSING,
        /** Not the houses kept last: an older copy, or those of another place. */
        OLDER,
        /** A later version of Longrun has kept them. */
        LATER_VERSION,
        /** They were not brought to this version as this version does it. */
        OTHER_VERSION
    }

    private final Kind kind;
    private final String what;
    private final String todo;

    StoreTrouble(Kind kind, String what, String todo) {
        super(what + " " + todo);
        this.kind = kind;
        this.what = what;
        this.todo = todo;
    }

    StoreTrouble(Kind kind, String what, String todo, Throwable cause) {
        this(kind, what, todo);
        initCause(cause);
    }

    public Kind kind() {
        return kind;
    }

    /** What happened: one or two sentences. */
    public String what() {
        return what;
    }

    /** What to do: one or two sentences. */
    public String todo() {
        return todo;
    }

    /** The trouble behind a failure to start; null where it was something else. */
    public static @Nullable StoreTrouble in(Throwable failure) {
        for (Throwable each = failure; each != null; each = each.getCause()) {
            if (each instanceof StoreTrouble trouble) {
                return trouble;
            }
        }
        return null;
    }
}
