package longrun.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longrun.store.Outcome.Saved;
import longrun.store.StoreTrouble.Kind;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Damage to the file of the saved houses is told, never opened as fewer houses, and never written on. */
class DamagedStoreTest {

    private static final int HOUSES = 4;

    /** Kept once; each damage is done to a folder copied from it, rights and times too. */
    @TempDir
    static Path sound;

    @TempDir
    Path folder;

    private static final List<String> KEPT = new ArrayList<>();

    @BeforeEach
    void copyTheHouses() throws IOException {
        Damage.copyAll(sound, folder);
    }

    @BeforeAll
    static void keepHouses() {
        KEPT.clear();
        try (OpenStore store = new OpenStore(sound)) {
            for (int i = 0; i < HOUSES; i++) {
                Draft draft = store.drafts.create("House " + i, "{}");
                for (int step = 0; step < 6; step++) {
                    String json = Texts.ofLength(3_000, 100 * i + step).replace("note", "xnote");
                    draft = ((Saved) store.drafts.save(draft.id(), json, draft.version())).draft();
                }
            }
            KEPT.addAll(asKept(store));
        }
    }

    private static List<String> asKept(OpenStore store) {
        return store.drafts.list().stream()
                .map(h -> h.name() + " " + h.version() + " "
                        + store.drafts.find(h.id()).orElseThrow().json())
                .toList();
    }

    private Kind told() throws IOException {
        byte[] before = Files.exists(Damage.file(folder)) ? Files.readAllBytes(Damage.file(folder)) : new byte[0];
        Optional<StoreTrouble> trouble = Damage.trouble(folder);
        byte[] after = Files.exists(Damage.file(folder)) ? Files.readAllBytes(Damage.file(folder)) : new byte[0];
        assertThat(after).as("not written on").isEqualTo(before);
        assertThat(trouble.orElseThrow().what()).contains(folder.toString());
        assertThat(trouble.orElseThrow().todo()).isNotBlank();
        return trouble.orElseThrow().kind();
    }

    @Test
    void soundHousesOpen() {
        assertThat(Damage.trouble(folder)).isEmpty();
    }

    @Test
    void fileOfNoLengthIsDamageAndNotAnEmptyList() throws IOException {
        Damage.truncate(folder, 0);
        assertThat(told()).isEqualTo(Kind.DAMAGED);
    }

    @Test
    void fileThatIsGoneIsMissed() throws IOException {
        Files.delete(Damage.file(folder));
        assertThat(told()).isEqualTo(Kind.MISSING);
        Files.delete(folder.resolve("longrun.mark"));
        Damage.trouble(folder).ifPresent(t -> assertThat(t.kind()).isEqualTo(Kind.MISSING));
    }

    @Test
    void everyTruncationIsToldOrLosesNothing() throws IOException {
        byte[] whole = Files.readAllBytes(Damage.file(folder));
        int told = 0;
        for (int tenth = 1; tenth <= 19; tenth++) {
            Files.write(Damage.file(folder), whole);
            Damage.truncate(folder, (int) (whole.length * (tenth / 20.0)));
            told += toldOrWhole("truncated to " + tenth + "/20");
        }
        assertThat(told).as("truncations told").isPositive();
    }

    @Test
    void everyFlippedBitIsToldOrLosesNothing() throws IOException {
        byte[] whole = Files.readAllBytes(Damage.file(folder));
        int told = 0;
        for (int seed = 1; seed <= 25; seed++) {
            Files.write(Damage.file(folder), whole);
            Damage.flip(folder, 1 + seed * seed, seed);
            told += toldOrWhole("seed " + seed);
        }
        assertThat(told).as("flips told").isPositive();
    }

    /** One where the damage was told, none where every house is as it was kept; checked as each start does first. */
    private int toldOrWhole(String how) throws IOException {
        byte[] damaged = Files.readAllBytes(Damage.file(folder));
        byte[] mark = Files.readAllBytes(folder.resolve("longrun.mark"));
        try {
            new StoreStartup(new StoreFolder(folder), Clock.systemUTC()).openOrCreate();
            try (OpenStore store = new OpenStore(folder)) {
                assertThat(asKept(store)).as(how).isEqualTo(KEPT);
            }
            return 0;
        } catch (RuntimeException e) {
            assertThat(StoreTrouble.in(e)).as(how + ": " + e).isNotNull();
            assertThat(Files.readAllBytes(Damage.file(folder)))
                    .as(how + ", not written on")
                    .isEqualTo(damaged);
            return 1;
        } finally {
            Files.write(folder.resolve("longrun.mark"), mark);
        }
    }

    @Test
    void textThatIsNotAsItWasStoredIsTold() throws IOException, SQLException {
        Damage.changeText(folder);
        assertThat(told()).isEqualTo(Kind.DAMAGED);
        assertThat(Damage.trouble(folder).orElseThrow().what())
                .contains("4 houses are not as they were stored", "House 1", "its text is not as it was stored");
    }

    @Test
    void nameThatIsNotAsItWasStoredIsTold() throws IOException, SQLException {
        Damage.sql(folder, "update house set name = 'Another' where name = 'House 2'");
        assertThat(told()).isEqualTo(Kind.DAMAGED);
    }

    @Test
    void undoStepThatIsNotAsItWasStoredIsNotTaken() throws SQLException {
        Damage.sql(folder, "update step set body = '{}' where number = 5");
        try (OpenStore store = new OpenStore(folder)) {
            ListedHouse house = store.drafts.list().get(0);
            org.assertj.core.api.Assertions.assertThatThrownBy(() -> store.drafts.undo(house.id(), house.version()))
                    .isInstanceOf(NotStored.class)
                    .hasMessageContaining("damaged");
            assertThat(store.drafts.find(house.id()).orElseThrow().version()).isEqualTo(house.version());
        }
    }

    @Test
    void olderFileInItsPlaceIsTold() throws IOException {
        byte[] older = Files.readAllBytes(Damage.file(folder));
        try (OpenStore store = new OpenStore(folder)) {
            ListedHouse house = store.drafts.list().get(0);
            store.drafts.save(house.id(), "{\"last\":true}", house.version());
        }
        Files.write(Damage.file(folder), older);

        assertThat(told()).isEqualTo(Kind.OLDER);
        assertThat(Damage.trouble(folder).orElseThrow().what()).contains("The last change saved is not in them");

        new StoreRecovery(new StoreFolder(folder), Clock.systemUTC()).acceptOlder();
        try (OpenStore store = new OpenStore(folder)) {
            assertThat(asKept(store)).isEqualTo(KEPT);
        }
    }

    @Test
    void storeOfALaterVersionIsLeftAlone() throws IOException, SQLException {
        Damage.laterVersion(folder);
        assertThat(told()).isEqualTo(Kind.LATER_VERSION);
    }

    @Test
    void storeBroughtToItsVersionInAnotherWayIsRefused() throws SQLException {
        Damage.otherMigration(folder);
        StoreTrouble trouble = Damage.trouble(folder).orElseThrow();
        assertThat(trouble.kind()).isEqualTo(Kind.OTHER_VERSION);
        assertThat(trouble.what()).contains("by a Longrun that differs from this one");
    }

    @Test
    void markThatCannotBeReadAccusesNobody() throws IOException {
        Files.write(folder.resolve("longrun.mark"), new byte[300]);
        assertThat(Damage.trouble(folder)).isEmpty();
        assertThat(Mark.read(folder.resolve("longrun.mark")).orElseThrow().houses())
                .isEqualTo(HOUSES);
    }

    @Test
    void halfWrittenMarkLeavesTheOtherPlaceInTheFile() throws IOException {
        Path file = folder.resolve("longrun.mark");
        Mark mark = Mark.read(file).orElseThrow();
        byte[] bytes = Files.readAllBytes(file);
        assertThat(bytes).hasSize(2 * Mark.LENGTH);
        java.util.Arrays.fill(
                bytes,
                (int) (mark.changes() % 2) * Mark.LENGTH + 20,
                (int) (mark.changes() % 2) * Mark.LENGTH + 60,
                (byte) 0);
        Files.write(file, bytes);
        assertThat(Mark.read(file).orElseThrow().changes()).isBetween(mark.changes() - 1, mark.changes());
    }

    @Test
    void markCountsTheChangesThatWereStored() {
        Mark before = Mark.read(folder.resolve("longrun.mark")).orElseThrow();
        try (OpenStore store = new OpenStore(folder)) {
            store.drafts.create("one more", "{}");
            assertThat(Mark.read(folder.resolve("longrun.mark")).orElseThrow())
                    .isEqualTo(new Mark(before.store(), before.changes() + 1, before.houses() + 1));
        }
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void lastCopyBringsTheHousesOfTheDayBack(boolean empty) throws IOException {
        assertThat(Damage.trouble(folder)).isEmpty(); // a start with houses makes a copy
        if (empty) {
            Damage.truncate(folder, 0);
        } else {
            Damage.truncate(folder, 5000);
        }
        byte[] damaged = Files.readAllBytes(Damage.file(folder));
        assertThat(told()).isEqualTo(Kind.DAMAGED);
        StoreRecovery recovery = new StoreRecovery(new StoreFolder(folder), Clock.systemUTC());

        Path aside = recovery.open(recovery.copies().get(0).file());

        assertThat(Files.readAllBytes(aside.resolve("longrun.mv.db"))).isEqualTo(damaged);
        try (OpenStore store = new OpenStore(folder)) {
            assertThat(asKept(store)).isEqualTo(KEPT);
            ListedHouse house = store.drafts.list().get(0);
            assertThat(store.drafts.undo(house.id(), house.version())).isInstanceOf(Saved.class);
        }
    }

    @Test
    void damagedCopyIsNotOpenedAndAllStaysAsItWas() throws IOException {
        assertThat(Damage.trouble(folder)).isEmpty();
        StoreRecovery recovery = new StoreRecovery(new StoreFolder(folder), Clock.systemUTC());
        String copy = recovery.copies().get(0).file();
        Path zip = folder.resolve("copies").resolve(copy);
        Files.write(zip, java.util.Arrays.copyOf(Files.readAllBytes(zip), 400));
        Damage.truncate(folder, 5000);

        org.assertj.core.api.Assertions.assertThatThrownBy(() -> recovery.open(copy))
                .isInstanceOfAny(IOException.class, StoreTrouble.class);

        assertThat(Damage.file(folder)).hasSize(5000);
        assertThat(told()).isEqualTo(Kind.DAMAGED);
    }

    @Test
    void beginningAnewKeepsTheDamagedFileAside() throws IOException {
        Damage.truncate(folder, 5000);
        Path aside = new StoreRecovery(new StoreFolder(folder), Clock.systemUTC()).startEmpty();
        try (OpenStore store = new OpenStore(folder)) {
            assertThat(store.drafts.list()).isEmpty();
        }
        assertThat(aside.resolve("longrun.mv.db")).hasSize(5000);
        assertThat(aside.resolve("longrun.mark")).exists();
    }

    @Test
    void housesStillWholeCanBeSavedFromADamagedFile() throws SQLException {
        Damage.sql(folder, "update step set body = '{}' where house = 2 and number = 6");
        assertThat(new StoreRecovery(new StoreFolder(folder), Clock.systemUTC()).readable())
                .extracting(StoreRecovery.PlanFile::name)
                .containsExactlyInAnyOrder("House 0", "House 2", "House 3");
    }

    @Test
    void versionKnownIsThatOfTheLastMigration() {
        try (OpenStore store = new OpenStore(folder)) {
            assertThat(store.context
                            .getBean(Flyway.class)
                            .info()
                            .current()
                            .getVersion()
                            .getVersion())
                    .isEqualTo(Integer.toString(ChecksumMigration.VERSION));
        }
    }

    @Test
    void onlyTheOwnerReadsWhatIsKept() throws IOException {
        assertThat(Damage.trouble(folder)).isEmpty();
        org.junit.jupiter.api.Assumptions.assumeTrue(Files.getFileStore(folder).supportsFileAttributeView("posix"));
        List<Path> files = new ArrayList<>(List.of(Damage.file(folder), folder.resolve("longrun.mark")));
        new BackupCopies(new StoreFolder(folder)).list().forEach(c -> files.add(c.file()));
        assertThat(files).hasSizeGreaterThan(2);
        for (Path each : files) {
            assertThat(Files.getPosixFilePermissions(each)).as(each.toString()).hasSize(2);
        }
    }
}
