package longrun.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import longrun.store.BackupCopies.Copy;
import longrun.store.StoreContents.SoundHouse;
import org.jspecify.annotations.Nullable;

/**
 * What a person can do where the saved houses were not opened. Whatever is chosen, the files in the folder are kept aside;
 * they are never deleted or written to.
 */
public final class StoreRecovery {

    private static final String RESTORING = "longrun-restoring";

    private final StoreFolder folder;
    private final Clock clock;
    private @Nullable List<PlanFile> readable;

    public StoreRecovery(StoreFolder folder, Clock clock) {
        this.folder = folder;
        this.clock = clock;
    }

    /**
     * A dated copy of the saved houses.
     *
     * @param file its file name in the folder of copies
     * @param made when it was made, by the clock of this computer
     */
    public record DatedCopy(String file, LocalDateTime made) {}

    /**
     * A house that can still be read.
     *
     * @param name as typed; may hold anything, so escape it where it is shown
     * @param json its draft, the content of its plan file
     */
    public record PlanFile(String name, String json) {}

    /** The folder of the saved houses. */
    public Path folder() {
        return folder.path();
    }

    /** All dated copies, the newest first. */
    public List<DatedCopy> copies() {
        return new BackupCopies(folder)
                .list().stream()
                        .map(c -> new DatedCopy(c.file().getFileName().toString(), c.made()))
                        .toList();
    }

    /** The houses that can still be read exactly as they were stored; empty where none can. */
    public synchronized List<PlanFile> readable() {
        if (readable == null) {
            readable = readSound();
        }
        return readable;
    }

    private List<PlanFile> readSound() {
        if (!Files.exists(folder.file())) {
            return List.of();
        }
        try {
            List<PlanFile> files = new ArrayList<>();
            for (SoundHouse each : new StoreCheck(folder).read(folder.file()).sound()) {
                files.add(new PlanFile(each.name(), each.json()));
            }
            return files;
        } catch (StoreTrouble e) {
            return List.of();
        }
    }

    /**
     * Replaces the saved houses with a dated copy and keeps the replaced files aside.
     *
     * @param file the copy's file name
     * @return the folder in which the replaced files are kept
     * @throws StoreTrouble where the copy cannot be read; nothing is changed then
     * @throws IOException where the copy is damaged, gone or of a later version, or where the disk fails; the message
     *     says which
     */
    public synchronized Path open(String file) throws IOException {
        Copy copy = new BackupCopies(folder)
                .list().stream()
                        .filter(c -> c.file().getFileName().toString().equals(file))
                        .findFirst()
                        .orElseThrow(() -> new IOException("that copy is no longer there"));
        Path restoring = folder.fileOf(RESTORING);
        try {
            BackupCopies.unpack(copy, restoring);
            StoreContents read = new StoreCheck(folder).read(restoring);
            if (!read.isSound()) {
                throw new IOException("the copy is damaged too; choose an earlier one");
            }
            if (read.version() > ChecksumMigration.VERSION) {
                throw new IOException("the copy is of a later version too; choose an earlier one");
            }
            raiseChangeCount(RESTORING, read.version());
            Path aside = moveAside();
            Files.move(restoring, folder.file());
            return aside;
        } finally {
            Files.deleteIfExists(restoring);
        }
    }

    /**
     * Accepts the file in the folder although it is older than what was saved last; a duplicate of it is kept aside.
     *
     * @throws IOException where the file is damaged or the disk fails
     */
    public synchronized void acceptOlder() throws IOException {
        StoreContents read = new StoreCheck(folder).read(folder.file());
        if (!read.isSound()) {
            throw new IOException("the file is damaged");
        }
        Path aside = folder.makeKeptAside(clock);
        Files.copy(folder.file(), aside.resolve(folder.file().getFileName()));
        raiseChangeCount(StoreFolder.NAME, read.version());
        Files.deleteIfExists(folder.mark());
    }

    /**
     * Starts with no houses and keeps the present files aside.
     *
     * @return the folder in which they are kept
     * @throws IOException where the disk fails
     */
    public synchronized Path startEmpty() throws IOException {
        Path aside = moveAside();
        try (MarkFile mark = new MarkFile(folder.mark())) {
            mark.write(Mark.none());
        }
        return aside;
    }

    private Path moveAside() throws IOException {
        Path aside = folder.makeKeptAside(clock);
        for (Path each : List.of(folder.file(), folder.mark())) {
            if (Files.exists(each)) {
                Files.move(each, aside.resolve(each.getFileName()));
            }
        }
        return aside;
    }

    /** Raises the change counter above every count used before, so that no two states of the houses share a count. */
    private void raiseChangeCount(String name, int version) throws IOException {
        if (version < ChecksumMigration.VERSION) {
            return;
        }
        long most = Mark.read(folder.mark()).map(Mark::changes).orElse(0L);
        for (Copy each : new BackupCopies(folder).list()) {
            most = Math.max(most, each.changes());
        }
        try (Connection houses = DriverManager.getConnection(folder.url(name), "sa", "");
                Statement tally = houses.createStatement();
                ResultSet row = tally.executeQuery("select max(changes) from tally")) {
            row.next();
            long next = Math.max(most, row.getLong(1)) + 1;
            tally.execute("update tally set changes = " + next);
        } catch (SQLException e) {
            throw new IOException(e.getMessage(), e);
        }
    }
}
