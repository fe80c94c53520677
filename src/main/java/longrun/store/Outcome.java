package longrun.store;

import java.time.Instant;

/** What came of an attempt to change a draft. Only {@link Saved} means that it is stored. */
public sealed interface Outcome {

    /**
     * The draft is on the disk as told here.
     *
     * @param draft what is stored now
     */
    record Saved(Draft draft) implements Outcome {
        /** The version to hand in with the next change. */
        public long version() {
            return draft.version();
        }
    }

    /**
     * Someone else, another tab perhaps, has changed the house since; nothing was stored. The person chooses: take the
     * stored text ({@link DraftStore#find}), put the own one in its place (save again with this version, the other text
     * stays one undo away), or keep both ({@link DraftStore#create}).
     *
     * @param version of the draft that is stored
     * @param when it was stored
     */
    record Conflict(long version, Instant when) implements Outcome {}

    /** The house was deleted or never was; nothing was stored. {@link DraftStore#undelete} brings a deleted one back. */
    record Gone() implements Outcome {}
}
