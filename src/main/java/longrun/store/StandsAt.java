package longrun.store;

import org.jspecify.annotations.Nullable;

/**
 * A step of a house among the others kept.
 *
 * @param body its text
 * @param before the text of the step before it, where that is kept
 * @param earliest the number of the first step kept
 * @param latest the number of the last step kept
 */
record StandsAt(String body, @Nullable String before, int earliest, int latest) {

    Span span() {
        return new Span(earliest, latest);
    }
}
