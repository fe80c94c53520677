package longrun.draft;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Undo and redo. */
class HistoryTest {

    private final History<String> history = new History<>("");

    @Test
    void keysInOneFieldAreOneStep() {
        history.take("1", "length");
        history.take("19", "length");
        history.take("19, 3", "input");
        assertThat(history.undo()).contains("19");
        assertThat(history.undo()).contains("");
        assertThat(history.undo()).isEmpty();
        assertThat(history.redo()).contains("19");
        assertThat(history.redo()).contains("19, 3");
        assertThat(history.redo()).isEmpty();
    }

    @Test
    void aNewEntryAfterUndoForgetsWhatWasUndone() {
        history.take("1", "a");
        history.take("2", "b");
        history.undo();
        history.take("3", "b");
        assertThat(history.canRedo()).isFalse();
        assertThat(history.undo()).contains("1");
    }

    @Test
    void leavingAFieldEndsItsStep() {
        history.take("1", "a");
        history.endStep();
        history.take("12", "a");
        assertThat(history.undo()).contains("1");
    }
}
