package longrun.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import longrun.store.Outcome.Saved;
import longrun.store.StoreTrouble.Kind;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A disk that is full, read-only, or taken away: said in words, and saving goes on once it is mended. */
class DiskTroubleTest {

    @TempDir
    Path folder;

    private boolean mounted;

    private void mount(int kilobytes) throws IOException, InterruptedException {
        mounted = Damage.mountSmall(folder, kilobytes);
        assumeTrue(mounted, "skipped: a small file system can be mounted by root alone");
    }

    @AfterEach
    void unmount() throws IOException, InterruptedException {
        if (mounted) {
            Damage.unmount(folder);
        }
    }

    private static Draft saved(DraftStore drafts, Draft draft, int number) {
        return ((Saved) drafts.save(draft.id(), Texts.ofLength(60_000, number), draft.version())).draft();
    }

    @Test
    void fullDiskIsSaidAndSavingGoesOnOnceThereIsRoom() throws Exception {
        mount(6_000);
        Path ballast = folder.resolve("ballast");
        Files.write(ballast, new byte[4_500_000]);
        Draft last;
        try (OpenStore store = new OpenStore(folder)) {
            Draft draft = store.drafts.create("Mill", "{}");
            NotStored refused = null;
            int number = 0;
            while (refused == null && number < 500) {
                try {
                    draft = saved(store.drafts, draft, ++number);
                } catch (NotStored e) {
                    refused = e;
                }
            }
            assertThat(refused).isNotNull().hasMessageContaining("is full; make room on it");
            Draft told = draft;
            assertThatThrownBy(() -> {
                        for (int i = 0; i < 20; i++) {
                            saved(store.drafts, told, 1000 + i);
                        }
                    })
                    .as("still full")
                    .isInstanceOf(NotStored.class);
            assertThat(store.drafts.find(draft.id()).orElseThrow().version())
                    .as("what was told to be saved is there")
                    .isGreaterThanOrEqualTo(draft.version());

            Files.delete(ballast);

            Draft now = store.drafts.find(draft.id()).orElseThrow();
            last = saved(store.drafts, now, 2000);
            assertThat(store.drafts.find(draft.id()).orElseThrow()).isEqualTo(last);
        }
        try (OpenStore store = new OpenStore(folder)) {
            assertThat(store.drafts.find(last.id()).orElseThrow().json()).isEqualTo(last.json());
        }
    }

    @Test
    void startOnAFullDiskIsSaidAndLeavesTheHousesAsTheyAre() throws Exception {
        mount(4_000);
        try (OpenStore store = new OpenStore(folder)) {
            Draft draft = store.drafts.create("Mill", "{}");
            for (int i = 0; i < 6; i++) {
                draft = saved(store.drafts, draft, i);
            }
        }
        byte[] before = Files.readAllBytes(Damage.file(folder));
        long room = Files.getFileStore(folder).getUsableSpace();
        Files.write(folder.resolve("ballast"), new byte[(int) room - 8_192]);

        StoreTrouble trouble = Damage.trouble(folder).orElseThrow();

        assertThat(trouble.kind()).isEqualTo(Kind.NO_ROOM);
        assertThat(trouble.todo()).contains("Make room");
        assertThat(Files.readAllBytes(Damage.file(folder))).isEqualTo(before);
        Files.delete(folder.resolve("ballast"));
        assertThat(Damage.trouble(folder)).isEmpty();
    }

    @Test
    void readOnlyDiskIsSaidAtTheStart() throws Exception {
        mount(4_000);
        try (OpenStore store = new OpenStore(folder)) {
            store.drafts.create("Mill", "{}");
        }
        assumeTrue(Damage.remount(folder, "ro"), "skipped: the file system cannot be made read-only");

        StoreTrouble trouble = Damage.trouble(folder).orElseThrow();

        assertThat(trouble.kind()).isEqualTo(Kind.NOT_WRITABLE);
        assertThat(trouble.what()).contains("are read-only");
        Damage.remount(folder, "rw");
        assertThat(Damage.trouble(folder)).isEmpty();
    }

    @Test
    void readOnlyFolderIsSaidAtTheStart() {
        try (OpenStore store = new OpenStore(folder)) {
            store.drafts.create("Mill", "{}");
        }
        assumeTrue(
                Damage.file(folder).toFile().setReadOnly() && !Files.isWritable(Damage.file(folder)),
                "skipped: root may write anything");
        assertThat(Damage.trouble(folder).orElseThrow().kind()).isEqualTo(Kind.NOT_WRITABLE);
    }

    @Test
    void folderTakenAwayIsSaidAndSavingGoesOnOnceItIsBack() throws Exception {
        Path houses = folder.resolve("houses");
        Path elsewhere = folder.resolve("elsewhere");
        try (OpenStore store = new OpenStore(houses)) {
            Draft draft = store.drafts.create("Mill", "{}");
            Files.move(houses, elsewhere);

            assertThatThrownBy(() -> saved(store.drafts, draft, 1))
                    .isInstanceOf(NotStored.class)
                    .hasMessage("the folder of the saved houses, " + houses + ", is gone; put it back");
            assertThat(houses).as("none is made in its place").doesNotExist();

            Files.move(elsewhere, houses);
            assertThat(saved(store.drafts, draft, 2).version()).isEqualTo(2);
        }
    }

    @Test
    void anotherFileInItsPlaceIsNotWrittenOn() throws Exception {
        try (OpenStore store = new OpenStore(folder)) {
            Draft draft = store.drafts.create("Mill", "{}");
            Files.move(Damage.file(folder), folder.resolve("other"));
            Files.writeString(Damage.file(folder), "another");

            assertThatThrownBy(() -> saved(store.drafts, draft, 1))
                    .isInstanceOf(NotStored.class)
                    .hasMessageContaining("was replaced by another");
            assertThat(Damage.file(folder)).hasContent("another");
        }
    }
}
