package longrun.store;

import java.io.IOException;
import java.nio.file.Files;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.util.Optional;
import javax.sql.DataSource;
import longrun.store.StoreTrouble.Kind;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import org.flywaydb.core.api.MigrationInfo;
import org.flywaydb.core.api.MigrationInfoService;
import org.flywaydb.core.api.exception.FlywayValidateException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** What is done with the saved houses at each start: they are checked, copied, brought to this version and marked. */
public final class StoreStartup {

    private static final Logger LOG = LoggerFactory.getLogger(StoreStartup.class);

    private final StoreFolder folder;
    private final Clock clock;
    private final BackupCopies copies;
    private String copyTrouble = "";

    StoreStartup(StoreFolder folder, Clock clock) {
        this.folder = folder;
        this.clock = clock;
        this.copies = new BackupCopies(folder);
    }

    /** The folder of the saved houses. */
    public String folder() {
        return folder.path().toString();
    }

    /** The newest dated copy; empty where there is none yet. */
    public Optional<StoreRecovery.DatedCopy> lastCopy() {
        return new StoreRecovery(folder, clock).copies().stream().findFirst();
    }

    /** Why no copy could be made at this start, as a sentence; blank where one was made or nothing had changed. */
    public String copyTrouble() {
        return copyTrouble;
    }

    /**
     * Checks the saved houses; where none were ever saved, creates an empty database.
     *
     * @throws StoreTrouble where they must not be opened
     */
    void openOrCreate() {
        if (new StoreCheck(folder).run().isPresent()) {
            return;
        }
        // The only place that creates a file: opening a missing one elsewhere fails.
        try (Connection made = DriverManager.getConnection(folder.newUrl(StoreFolder.NAME), "sa", "")) {
            LOG.info("Houses are kept in {}; there are none yet.", made.isClosed() ? "" : folder.path());
        } catch (SQLException e) {
            throw new StoreTrouble(
                    Kind.NOT_WRITABLE,
                    "The saved houses in " + folder.path() + " cannot be opened: " + firstLine(e),
                    "Make room there and let Longrun write, or name another folder: --longrun.data=FOLDER",
                    e);
        }
    }

    /**
     * Brings the saved houses to this version, after a copy; then writes the mark and makes the copy of the day.
     *
     * @throws StoreTrouble where that fails
     */
    void migrate(Flyway flyway) {
        DataSource source = flyway.getConfiguration().getDataSource();
        try {
            StoreFolder.restrictToOwner(folder.file());
            copyBefore(flyway, source);
            flyway.migrate();
            markAndCopy(source);
        } catch (FlywayValidateException e) {
            throw new StoreTrouble(
                    Kind.OTHER_VERSION,
                    "The saved houses in " + folder.path() + " were brought to their version by a Longrun that differs"
                            + " from this one. They were left as they are.",
                    "Start the Longrun that saved them last, or open a copy.",
                    e);
        } catch (FlywayException | SQLException | IOException e) {
            throw new StoreTrouble(
                    Kind.OTHER_VERSION,
                    "The saved houses in " + folder.path() + " could not be brought to this version: " + firstLine(e),
                    "Make room on the disk and try again, or open the copy made before.",
                    e);
        }
    }

    private static String firstLine(Exception e) {
        return String.valueOf(e.getMessage()).lines().findFirst().orElse("") + ".";
    }

    private void copyBefore(Flyway flyway, DataSource source) throws SQLException, IOException {
        MigrationInfoService info = flyway.info();
        MigrationInfo[] pending = info.pending();
        if (info.current() == null || pending.length == 0) {
            return;
        }
        String to = pending[pending.length - 1].getVersion().getVersion();
        try (Connection houses = source.getConnection()) {
            copies.makeBeforeVersion(houses, 0, to, clock);
        }
    }

    private void markAndCopy(DataSource source) throws SQLException {
        try (Connection houses = source.getConnection();
                Statement ask = houses.createStatement();
                ResultSet row = ask.executeQuery("select store, changes, (select count(*) from house) from tally")) {
            row.next();
            long changes = row.getLong(2);
            long kept = row.getLong(3);
            try (MarkFile mark = new MarkFile(folder.mark())) {
                mark.write(new Mark(row.getString(1), changes, kept));
            } catch (IOException e) {
                LOG.warn("The mark beside the saved houses could not be written: {}", e.getMessage());
            }
            if (kept == 0) {
                return;
            }
            try {
                copies.makeIfChanged(houses, changes, clock);
            } catch (IOException | SQLException e) {
                copyTrouble = "No copy of the houses could be made at this start: "
                        + (Files.isWritable(folder.path()) ? "make room on the disk of " : "let Longrun write to ")
                        + folder.path() + ".";
                LOG.warn(copyTrouble);
            }
        }
    }
}
