package longrun.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import java.io.BufferedReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** What another program, killed or still running, leaves of the saved houses. */
@Timeout(600)
class KilledProgramTest {

    @TempDir
    Path folder;

    @Test
    void killedProgramLosesNoSaveItWasToldOf() throws Exception {
        for (int round = 1; round <= 3; round++) {
            Process program = SavingProgram.start(folder);
            int last = -1;
            try (BufferedReader lines = program.inputReader()) {
                int first = SavingProgram.told(lines);
                assertThat(first).isPositive();
                for (last = first; last < first + 15 * round; ) {
                    last = SavingProgram.told(lines);
                }
                program.toHandle().destroyForcibly();
                // What it still told before it died counts too.
                for (int more = last; more >= 0; more = SavingProgram.told(lines)) {
                    last = more;
                }
            } finally {
                program.destroyForcibly().waitFor();
            }
            try (OpenStore store = new OpenStore(folder)) {
                Draft draft = store.drafts.find(store.drafts.list().get(0).id()).orElseThrow();
                int stored = (int) draft.version() - 1;
                // One save more may have been stored without its telling being heard.
                assertThat(stored).isBetween(last, last + 1);
                assertThat(draft.json()).isEqualTo(SavingProgram.text(stored));
                // The undo and the redo of the rounds before counted as versions, not as steps.
                assertThat(draft.undos()).isEqualTo(stored - 2 * (round - 1));
                Outcome undone = store.drafts.undo(draft.id(), draft.version());
                Draft before = ((Outcome.Saved) undone).draft();
                assertThat(before.json()).isEqualTo(SavingProgram.text(stored - 1));
                store.drafts.redo(before.id(), before.version());
            }
        }
    }

    @Test
    void secondProgramOnTheSameHousesIsToldWhy() throws Exception {
        Process program = SavingProgram.start(folder);
        try (BufferedReader lines = program.inputReader()) {
            assertThat(SavingProgram.told(lines)).isPositive();

            Throwable refused = catchThrowable(() -> new OpenStore(folder).close());

            assertThat(refused).isNotNull();
            StoreTrouble told = trouble(refused);
            assertThat(told.what())
                    .isEqualTo("Another Longrun is already running with the saved houses in " + folder + ".");
            assertThat(told.todo()).contains("--longrun.data=");
        } finally {
            program.destroyForcibly().waitFor();
        }
    }

    @Test
    void folderThatCannotBeMadeIsNamed() throws Exception {
        Path file = Files.createFile(folder.resolve("a-file"));

        StoreTrouble told = trouble(catchThrowable(() -> new OpenStore(file.resolve("houses")).close()));

        assertThat(told.what()).startsWith("The saved houses in " + file.resolve("houses") + " cannot be opened: ");
        assertThat(told.todo()).contains("--longrun.data=");
    }

    private static StoreTrouble trouble(Throwable refused) {
        return Objects.requireNonNull(StoreTrouble.in(refused));
    }
}
