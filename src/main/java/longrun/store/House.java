package longrun.store;

import java.time.OffsetDateTime;
import org.jspecify.annotations.Nullable;
import org.springframework.data.annotation.Id;

/** A row of houses: {@code step} numbers the step at which its draft stands. */
record House(
        @Id @Nullable Long id,
        String name,
        long version,
        int step,
        OffsetDateTime changed,
        @Nullable OffsetDateTime deleted) {

    /** The same house after a change of its draft. */
    House at(int otherStep, OffsetDateTime when) {
        return new House(id, name, version + 1, otherStep, when, deleted);
    }
}
