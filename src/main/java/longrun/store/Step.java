package longrun.store;

import org.jspecify.annotations.Nullable;
import org.springframework.data.annotation.Id;

/**
 * A row of steps: the whole text of a house's draft after one change, numbered upwards without gaps.
 *
 * @param mark the text's sum
 */
record Step(@Id @Nullable Long id, long house, int number, String body, long mark) {

    static Step of(long house, int number, String body) {
        return new Step(null, house, number, body, Sum.of(body));
    }
}
