package longrun.store;

import java.time.OffsetDateTime;
import org.jspecify.annotations.Nullable;
import org.springframework.data.annotation.Id;
import org.springframework.data.relational.core.mapping.Column;

/**
 * A row of the table of houses.
 *
 * @param step number of the step at which its draft stands
 * @param deleted when it was deleted; null while it is kept
 * @param checksum of the other values of the row
 */
record House(
        @Id @Nullable Long id,
        String name,
        long version,
        int step,
        OffsetDateTime changed,
        @Nullable OffsetDateTime deleted,
        @Column("MARK") long checksum) {

    private static House of(
            @Nullable Long id,
            String name,
            long version,
            int step,
            OffsetDateTime changed,
            @Nullable OffsetDateTime deleted) {
        return new House(id, name, version, step, changed, deleted, Checksum.of(name, version, step, changed, deleted));
    }

    /** A house not stored yet. */
    static House first(String name, OffsetDateTime when) {
        return of(null, name, 1, 0, when, null);
    }

    /** The same house after a change of its draft. */
    House at(int otherStep, OffsetDateTime when) {
        return of(id, name, version + 1, otherStep, when, deleted);
    }

    /** The same house under another name. */
    House named(String other) {
        return of(id, other, version, step, changed, deleted);
    }

    /** The same house, deleted then; kept where it is null. */
    House deletedAt(@Nullable OffsetDateTime when) {
        return of(id, name, version, step, changed, when);
    }
}
