package longrun.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import longrun.store.Outcome.Saved;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Undo and redo over many steps, and over closing and opening the database. */
class DraftStepsTest {

    @TempDir
    Path folder;

    @Test
    void twoHundredStepsAreUndoneAndRedoneAcrossReopening() {
        long id;
        long version;
        try (OpenStore store = new OpenStore(folder)) {
            Draft draft = store.drafts.create("many", text(0));
            id = draft.id();
            for (int i = 1; i <= 205; i++) {
                draft = saved(store.drafts.save(id, text(i), draft.version()));
            }
            for (int i = 204; i >= 150; i--) {
                draft = saved(store.drafts.undo(id, draft.version()));
                assertThat(draft.json()).isEqualTo(text(i));
            }
            version = draft.version();
        }
        try (OpenStore store = new OpenStore(folder)) {
            Draft draft = store.drafts.find(id).orElseThrow();
            assertThat(draft.version()).isEqualTo(version);
            assertThat(draft.json()).isEqualTo(text(150));
            assertThat(draft.undos()).isEqualTo(150);
            assertThat(draft.redos()).isEqualTo(55);
            for (int i = 149; i >= 0; i--) {
                draft = saved(store.drafts.undo(id, draft.version()));
                assertThat(draft.json()).isEqualTo(text(i));
            }
            assertThat(draft.undos()).isZero();
            version = draft.version();
        }
        try (OpenStore store = new OpenStore(folder)) {
            Draft draft = store.drafts.find(id).orElseThrow();
            for (int i = 1; i <= 205; i++) {
                draft = saved(store.drafts.redo(id, draft.version()));
                assertThat(draft.json()).isEqualTo(text(i));
            }
            assertThat(draft.redos()).isZero();
            assertThat(draft.version()).isEqualTo(version + 205);
        }
    }

    @Test
    void stepsBeyondThoseKeptAreLetGo() {
        try (OpenStore store = new OpenStore(folder)) {
            int saves = DraftStore.UNDO_STEPS + 10;
            Draft draft = store.drafts.create("pruned", text(0));
            for (int i = 1; i <= saves; i++) {
                draft = saved(store.drafts.save(draft.id(), text(i), draft.version()));
            }
            assertThat(DraftStore.UNDO_STEPS).isGreaterThanOrEqualTo(200);
            assertThat(draft.undos()).isEqualTo(DraftStore.UNDO_STEPS);
            while (draft.undos() > 0) {
                draft = saved(store.drafts.undo(draft.id(), draft.version()));
            }
            assertThat(draft.json()).isEqualTo(text(10));
            assertThat(draft.redos()).isEqualTo(DraftStore.UNDO_STEPS);
        }
    }

    /** The store against the plain model of undo, a list and a place in it. */
    @Test
    void anyOrderOfSavesUndosAndRedosFollowsTheListOfTexts() {
        long seed = 20260901;
        System.out.println("seed " + seed);
        Random random = new Random(seed);
        try (OpenStore store = new OpenStore(folder)) {
            Draft draft = store.drafts.create("random", text(0));
            List<String> texts = new ArrayList<>(List.of(text(0)));
            int at = 0;
            for (int i = 1; i <= 250; i++) {
                switch (random.nextInt(4)) {
                    case 0 -> {
                        draft = saved(store.drafts.undo(draft.id(), draft.version()));
                        at = Math.max(0, at - 1);
                    }
                    case 1 -> {
                        draft = saved(store.drafts.redo(draft.id(), draft.version()));
                        at = Math.min(texts.size() - 1, at + 1);
                    }
                    default -> {
                        String next = text(random.nextInt(4));
                        draft = saved(store.drafts.save(draft.id(), next, draft.version()));
                        if (!texts.get(at).equals(next)) {
                            texts.subList(at + 1, texts.size()).clear();
                            texts.add(next);
                            at++;
                        }
                    }
                }
                assertThat(draft.json()).isEqualTo(texts.get(at));
                assertThat(draft.undos()).isEqualTo(at);
                assertThat(draft.redos()).isEqualTo(texts.size() - 1 - at);
                assertThat(store.drafts.find(draft.id())).contains(draft);
            }
        }
    }

    private static String text(int number) {
        return Texts.ofLength(300, number);
    }

    private static Draft saved(Outcome outcome) {
        assertThat(outcome).isInstanceOf(Saved.class);
        return ((Saved) outcome).draft();
    }
}
