package longrun.store;

import org.jspecify.annotations.Nullable;

/** The saved houses were not opened. It says why, in words for whoever started Longrun. Nothing was written to them. */
public final class StoreTrouble extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /** The kinds of trouble. */
    public enum Kind {
        /** Another Longrun has them open. */
        IN_USE,
        /** Longrun may not write to the folder or the file, or cannot make the folder. */
        NOT_WRITABLE,
        /** There is no room on the disk to check them. */
        NO_ROOM,
        /** Some or all of them cannot be read. */
        DAMAGED,
        /** Houses were saved here before, but the file is gone. */
        MISSING,
        /** They are not the houses saved last, but an older copy or those of another folder. */
        OLDER,
        /** A later version of Longrun saved them. */
        LATER_VERSION,
        /** They could not be brought to this version, or another Longrun brought them to it in a different way. */
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

    /** The kind of trouble. */
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

    /** The trouble among the causes of a failure to start; null where the cause was another. */
    public static @Nullable StoreTrouble in(Throwable failure) {
        for (Throwable each = failure; each != null; each = each.getCause()) {
            if (each instanceof StoreTrouble trouble) {
                return trouble;
            }
        }
        return null;
    }
}
