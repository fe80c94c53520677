package longrun.store;

import com.zaxxer.hikari.HikariDataSource;
import com.zaxxer.hikari.HikariPoolMXBean;
import java.io.IOException;
import java.nio.file.Files;
import java.sql.SQLException;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import javax.sql.DataSource;
import org.h2.api.ErrorCode;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.transaction.TransactionException;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Runs changes so that one that returns is on the disk, counted, and marked beside the file; one that does not says why
 * in words. After a failure the database is opened anew, so that saving goes on once the reason is gone.
 */
final class Durably {

    private static final Logger LOG = LoggerFactory.getLogger(Durably.class);
    private static final long LITTLE_ROOM = 256 * 1024L;

    private final StoreFolder folder;
    private final MarkFile mark;
    private final TransactionTemplate transaction;
    private final JdbcTemplate jdbc;
    private final @Nullable Object file;
    private final String store;
    private volatile String toldLast = "";

    Durably(StoreFolder folder, MarkFile mark, TransactionTemplate transaction, JdbcTemplate jdbc) {
        this.folder = folder;
        this.mark = mark;
        this.transaction = transaction;
        this.jdbc = jdbc;
        this.file = folder.fileKey().orElse(null);
        this.store = Objects.requireNonNull(jdbc.queryForObject("select store from tally", String.class));
    }

    /** Commits the change and has the database write its file through to the disk before the caller hears of it. */
    <T> T change(Supplier<T> change) {
        return told(() -> {
            requireFile();
            Counted<T> done = again(() -> transaction.execute(status -> counted(change.get())));
            jdbc.execute("checkpoint sync");
            requireFile();
            mark.write(done.mark);
            return done.result;
        });
    }

    /** Looks for something within one transaction; nothing is changed. */
    <T> Optional<T> find(Supplier<Optional<T>> looking) {
        return told(() -> again(() -> transaction.execute(status -> looking.get())));
    }

    <T> T read(Supplier<T> reading) {
        return told(() -> again(reading));
    }

    /** Runs a change and takes it back, all but the writing through. */
    void rehearse(Runnable change) {
        told(() -> {
            transaction.executeWithoutResult(status -> {
                status.setRollbackOnly();
                change.run();
            });
            jdbc.execute("checkpoint sync");
            return true;
        });
    }

    private record Counted<T>(T result, Mark mark) {}

    /** The count comes last: whoever holds it waits for nothing else. */
    private <T> Counted<T> counted(T result) {
        return Objects.requireNonNull(jdbc.queryForObject(
                "select changes, (select count(*) from house) from final table"
                        + " (update tally set changes = changes + 1)",
                (row, number) -> new Counted<>(result, new Mark(store, row.getLong(1), row.getLong(2)))));
    }

    /** A database closed by a failure behind our back has taken nothing: it is opened anew and asked once more. */
    private <T> T again(Supplier<@Nullable T> ask) {
        try {
            return Objects.requireNonNull(ask.get());
        } catch (DataAccessException | TransactionException e) {
            if (!isClosed(e) || !isFileOurs()) {
                throw e;
            }
            openAnew();
            return Objects.requireNonNull(ask.get());
        }
    }

    private <T> T told(Supplier<T> call) {
        try {
            T result = call.get();
            if (!toldLast.isEmpty()) {
                toldLast = "";
                LOG.info("The saved houses are stored again.");
            }
            return result;
        } catch (NotStored e) {
            tell(String.valueOf(e.getMessage()));
            throw e;
        } catch (DataAccessException | TransactionException e) {
            NotStored told = new NotStored(why(e), e);
            if (isFileOurs()) {
                openAnew();
            }
            tell(String.valueOf(told.getMessage()));
            throw told;
        }
    }

    /** One line on the console, once. */
    private void tell(String why) {
        if (!why.equals(toldLast)) {
            toldLast = why;
            LOG.warn("Not saved: {}.", why);
        }
    }

    private void requireFile() {
        Optional<String> gone = whyFileIsNotOurs();
        if (gone.isPresent()) {
            throw new NotStored(gone.get());
        }
    }

    private boolean isFileOurs() {
        return whyFileIsNotOurs().isEmpty();
    }

    private Optional<String> whyFileIsNotOurs() {
        Optional<Object> now = folder.fileKey();
        if (now.isPresent()) {
            return now.get().equals(file)
                    ? Optional.empty()
                    : Optional.of("another file was put in the place of the saved houses in " + folder.path()
                            + "; start Longrun again and it is looked through");
        }
        return Optional.of(
                Files.isDirectory(folder.path())
                        ? "the file of the saved houses, " + folder.file() + ", is gone; put it back"
                        : "the folder of the saved houses, " + folder.path() + ", is gone; put it back");
    }

    private String why(RuntimeException e) {
        Optional<String> gone = whyFileIsNotOurs();
        if (gone.isPresent()) {
            return gone.get();
        }
        if (!Files.isWritable(folder.path()) || !Files.isWritable(folder.file())) {
            return "the saved houses in " + folder.path() + " can be read only now; let Longrun write there";
        }
        if (isOfRoom(e) || hasLittleRoom()) {
            return "the disk with the saved houses, " + folder.path() + ", is full; make room on it";
        }
        return "the store did not take it";
    }

    private boolean hasLittleRoom() {
        try {
            return Files.getFileStore(folder.path()).getUsableSpace() < LITTLE_ROOM;
        } catch (IOException e) {
            return false;
        }
    }

    private static boolean isOfRoom(Throwable e) {
        for (Throwable each = e; each != null; each = each.getCause()) {
            String message = String.valueOf(each.getMessage()).toLowerCase(Locale.ROOT);
            if (each instanceof IOException
                    && (message.contains("no space left")
                            || message.contains("not enough space")
                            || message.contains("quota"))) {
                return true;
            }
        }
        return false;
    }

    private static boolean isClosed(Throwable e) {
        for (Throwable each = e; each != null; each = each.getCause()) {
            if (each instanceof SQLException sql
                    && (sql.getErrorCode() == ErrorCode.DATABASE_IS_CLOSED
                            || sql.getErrorCode() == ErrorCode.OBJECT_CLOSED
                            || sql.getErrorCode() == ErrorCode.DATABASE_CALLED_AT_SHUTDOWN
                            || sql.getErrorCode() == ErrorCode.CONNECTION_BROKEN_1)) {
                return true;
            }
        }
        return false;
    }

    /** Once no connection holds the closed database, the next opens it from the disk. */
    private void openAnew() {
        DataSource source = jdbc.getDataSource();
        if (source instanceof HikariDataSource pool) {
            HikariPoolMXBean connections = pool.getHikariPoolMXBean();
            if (connections != null) {
                connections.softEvictConnections();
            }
        }
    }
}
