package longrun.store;

import java.time.OffsetDateTime;
import org.jspecify.annotations.Nullable;
import org.springframework.data.annotation.Id;

/**
 * A row of houses.
 *
 * @param step numbers the step at which its draft stands
 * @param mark the sum of the row
 */
record House(
        @Id @Nullable Long id,
        String name,
        long version,
        int step,
        OffsetDateTime changed,
        @Nullable OffsetDateTime deleted,
        long mark) {

    private static House of(
            @Nullable Long id,
            String name,
            long version,
            int step,
            OffsetDateTime changed,
            @Nullable OffsetDateTime deleted) {
        return new House(id, name, version, step, changed, deleted, Sum.of(name, version, step, changed, deleted));
    }

    /** A house not stored yet. */
    static House first(String name, OffsetDateTime when) {
        return of(null, name, 1, 0, when, null);
    }

    /** The same house after a change of its draft. */
    House at(int otherStep, OffsetDateTime when) {
        return of(id, name, version + 1, otherStep, when, deleted);
    }

    House named(String other) {
        return of(id, other, version, step, changed, deleted);
    }

    House deletedAt(@Nullable OffsetDateTime when) {
        return of(id, name, version, step, changed, when);
    }
}
