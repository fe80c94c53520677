package longrun.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import longrun.store.Outcome.Saved;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How long a person waits for <em>Saved</em>: printed, not asserted, since the disk decides. */
class SaveLatencyTest {

    @TempDir
    Path folder;

    @Test
    void savesOfAnOrdinaryAndOfALargeHouseAreTimed() throws Exception {
        try (OpenStore store = new OpenStore(folder)) {
            time(store.drafts, 20_000, 100);
            time(store.drafts, 1 << 20, 20);
            System.out.printf("file while open: %,d bytes%n", Files.size(folder.resolve("longrun.mv.db")));
        }
        System.out.printf("file closed: %,d bytes%n", Files.size(folder.resolve("longrun.mv.db")));
    }

    private static void time(DraftStore drafts, int length, int saves) {
        Draft draft = drafts.create("timed", "{}");
        long[] nanos = new long[saves];
        for (int i = 0; i < saves; i++) {
            String json = Texts.ofLength(length, i);
            long start = System.nanoTime();
            Outcome outcome = drafts.save(draft.id(), json, draft.version());
            nanos[i] = System.nanoTime() - start;
            assertThat(outcome).isInstanceOf(Saved.class);
            draft = ((Saved) outcome).draft();
        }
        Arrays.sort(nanos);
        System.out.printf(
                "save of %,d characters: median %.1f ms, 95 of 100 under %.1f ms, longest %.1f ms (%d saves)%n",
                length, nanos[saves / 2] / 1e6, nanos[saves * 95 / 100] / 1e6, nanos[saves - 1] / 1e6, saves);
    }
}
