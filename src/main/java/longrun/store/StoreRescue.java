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
import longrun.store.Copies.Copy;
import longrun.store.StoreReading.SoundHouse;
import org.jspecify.annotations.Nullable;

/**
 * The ways on where the saved houses were not opened. Whatever is chosen, the files that lie there are kept aside, never
 * deleted and never written on.
 */
public final class StoreRescue {

    private static final String RESTORING = "longrun-restoring";

    private final StoreFolder folder;
    private final Clock clock;
    private @Nullable List<PlanFile> readable;

    public StoreRescue(StoreFolder folder, Clock clock) {
        this.folder = folder;
        this.clock = clock;
    }

    /**
     * A dated copy.
     *
     * @param file its name in the folder of copies
     * @param made when, by the clock of this computer
     */
    public record DatedCopy(String file, LocalDateTime made) {}

    /** A plan file of a house. */
    public record PlanFile(String name, String json) {}

    /** Where everything lies. */
    public Path place() {
        return folder.path();
    }

    /** The copies there are, the last made first. */
    public List<DatedCopy> copies() {
        return new Copies(folder)
                .list().stream()
                        .map(c -> new DatedCopy(c.file().getFileName().toString(), c.made()))
                        .toList();
    }

    /** The houses that can still be read as they were stored; empty where none can. */
    public synchronized List<PlanFile> readable() {
        if (readable == null) {
            readable = stillWhole();
        }
        return readable;
    }

    private List<PlanFile> stillWhole() {
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
     * Puts a copy in the place of what lies there, which is kept aside.
     *
     * @return where it is kept aside
     * @throws StoreTrouble where the copy is damaged itself; all is then as it was
     * @throws IOException where the disk does not do it
     */
    public synchronized Path open(String file) throws IOException {
        Copy copy = new Copies(folder)
                .list().stream()
                        .filter(c -> c.file().getFileName().toString().equals(file))
                        .findFirst()
                        .orElseThrow(() -> new IOException("there is no such copy any more"));
        Path restoring = folder.other(RESTORING);
        try {
            Copies.unpack(copy, restoring);
            StoreReading read = new StoreCheck(folder).read(restoring);
            if (!read.isWhole()) {
                throw new IOException("the copy is damaged itself; choose an earlier one");
            }
            if (read.version() > SumsTakenOver.VERSION) {
                throw new IOException("the copy is of a later version too; choose an earlier one");
            }
            count(RESTORING, read.version());
            Path aside = putAside();
            Files.move(restoring, folder.file());
            return aside;
        } finally {
            Files.deleteIfExists(restoring);
        }
    }

    /** Goes on with the file that lies there although it is older than what was saved last. */
    public synchronized void goOn() throws IOException {
        StoreReading read = new StoreCheck(folder).read(folder.file());
        if (!read.isWhole()) {
            throw new IOException("the file is damaged");
        }
        Path aside = folder.makeAside(clock);
        Files.copy(folder.file(), aside.resolve(folder.file().getFileName()));
        count(StoreFolder.NAME, read.version());
        Files.deleteIfExists(folder.mark());
    }

    /**
     * Begins with no houses; what lies there is kept aside.
     *
     * @return where it is kept aside
     */
    public synchronized Path begin() throws IOException {
        Path aside = putAside();
        try (MarkFile mark = new MarkFile(folder.mark())) {
            mark.write(Mark.none());
        }
        return aside;
    }

    private Path putAside() throws IOException {
        Path aside = folder.makeAside(clock);
        for (Path each : List.of(folder.file(), folder.mark())) {
            if (Files.exists(each)) {
                Files.move(each, aside.resolve(each.getFileName()));
            }
        }
        return aside;
    }

    /** Lets the count go on above every change stored before, so that no two stands of the houses share a count. */
    private void count(String name, int version) throws IOException {
        if (version < SumsTakenOver.VERSION) {
            return;
        }
        long most = Mark.read(folder.mark()).map(Mark::changes).orElse(0L);
        for (Copy each : new Copies(folder).list()) {
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
