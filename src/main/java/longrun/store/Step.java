package longrun.store;

import org.jspecify.annotations.Nullable;
import org.springframework.data.annotation.Id;
import org.springframework.data.relational.core.mapping.Column;

/**
 * A row of the table of steps: the whole text of a house's draft after one change. The steps of a house are numbered
 * upwards without gaps.
 *
 * @param house id of the house
 * @param checksum of the text
 */
record Step(
        @Id @Nullable Long id,
        long house,
        int number,
        String body,
        @Column("MARK") long checksum) {

    static Step of(long house, int number, String body) {
        return new Step(null, house, number, body, Checksum.of(body));
    }
}
