package longrun.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import longrun.store.Outcome.Conflict;
import longrun.store.Outcome.Saved;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Writers at the same moment on one house. */
class TwoWritersTest {

    private static final int WRITERS = 4;

    @TempDir
    Path folder;

    @Test
    void ofWritersAtTheSameMomentOneIsSavedAndTheOthersAreTold() throws Exception {
        ExecutorService hands = Executors.newFixedThreadPool(WRITERS);
        try (OpenStore store = new OpenStore(folder)) {
            Draft draft = store.drafts.create("shared", "{}");
            for (int round = 0; round < 15; round++) {
                Draft before = draft;
                CyclicBarrier together = new CyclicBarrier(WRITERS);
                List<Callable<Outcome>> tasks = new ArrayList<>();
                for (int writer = 0; writer < WRITERS; writer++) {
                    String json = "{\"round\":" + round + ",\"writer\":" + writer + "}";
                    tasks.add(() -> {
                        together.await();
                        return store.drafts.save(before.id(), json, before.version());
                    });
                }
                List<Saved> saved = new ArrayList<>();
                List<Conflict> told = new ArrayList<>();
                for (Future<Outcome> done : hands.invokeAll(tasks)) {
                    if (done.get() instanceof Saved one) {
                        saved.add(one);
                    } else {
                        told.add((Conflict) done.get());
                    }
                }
                assertThat(saved).hasSize(1);
                assertThat(told).hasSize(WRITERS - 1).allMatch(one -> one.version() == before.version() + 1);
                draft = store.drafts.find(before.id()).orElseThrow();
                assertThat(draft).isEqualTo(saved.get(0).draft());
                assertThat(draft.undos()).isEqualTo(round + 1);
            }
        } finally {
            hands.shutdownNow();
        }
    }

    @Test
    void renameBesideSavesIsNotLost() throws Exception {
        ExecutorService hand = Executors.newSingleThreadExecutor();
        try (OpenStore store = new OpenStore(folder)) {
            long id = store.drafts.create("before", "{}").id();
            Future<Long> saves = hand.submit(() -> {
                long version = 1;
                for (int i = 0; i < 60; i++) {
                    version = ((Saved) store.drafts.save(id, "[" + i + "]", version)).version();
                }
                return version;
            });
            for (int i = 0; i < 30; i++) {
                assertThat(store.drafts.rename(id, "after " + i)).isTrue();
                assertThat(store.drafts.find(id).orElseThrow().name()).isEqualTo("after " + i);
            }
            assertThat(saves.get()).isEqualTo(61);
            assertThat(store.drafts.find(id).orElseThrow().name()).isEqualTo("after 29");
        } finally {
            hand.shutdownNow();
        }
    }
}
