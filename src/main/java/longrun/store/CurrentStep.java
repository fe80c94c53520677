package longrun.store;

import org.jspecify.annotations.Nullable;

/**
 * The step a house stands at, and which steps can be undone and redone from it.
 *
 * @param body its text
 * @param before the text of the step before it, where that is kept
 * @param earliest the number of the first step kept
 * @param latest the number of the last step kept
 */
record CurrentStep(String body, @Nullable String before, int earliest, int latest) {

    StepRange span() {
        return new StepRange(earliest, latest);
    }
}
