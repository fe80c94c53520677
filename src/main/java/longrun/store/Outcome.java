package longrun.store;

import java.time.Instant;

/** The outcome of an attempt to change a draft. Only {@link Saved} means that it is stored. */
public sealed interface Outcome {

    /**
     * The draft is on the disk as given here.
     *
     * @param draft what is stored now
     */
    record Saved(Draft draft) implements Outcome {
        /** The version the next change must name as the one it was made from. */
        public long version() {
            return draft.version();
        }
    }

    /**
     * The house was changed in the meantime, perhaps in another tab; nothing was stored. The person chooses: take the
     * stored text ({@link DraftStore#find}), replace it with the own one (save again with this version; one undo brings
     * the other text back), or keep both ({@link DraftStore#create}).
     *
     * @param version of the draft that is stored
     * @param when it was stored
     */
    record Conflict(long version, Instant when) implements Outcome {}

    /** The house is deleted or does not exist; nothing was stored. {@link DraftStore#undelete} brings a deleted one back. */
    record Gone() implements Outcome {}
}
