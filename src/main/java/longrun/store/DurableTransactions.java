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
 * Runs changes of the database in transactions. A change that returns is on the disk, counted, and noted in the mark
 * beside the file; one that fails throws {@link NotStored} with the reason in words. After a failure the database is
 * reopened, so that saving works again once the cause is gone.
 */
final class DurableTransactions {

    private static final Logger LOG = LoggerFactory.getLogger(DurableTransactions.class);
    private static final long LOW_SPACE_BYTES = 256 * 1024L;

    private final StoreFolder folder;
    private final MarkFile mark;
    private final TransactionTemplate transaction;
    private final JdbcTemplate jdbc;
    private final @Nullable Object file;
    private final String store;
    private volatile String lastWarning = "";

    DurableTransactions(StoreFolder folder, MarkFile mark, TransactionTemplate transaction, JdbcTemplate jdbc) {
        this.folder = folder;
        this.mark = mark;
        this.transaction = transaction;
        this.jdbc = jdbc;
        this.file = folder.fileKey().orElse(null);
        this.store = Objects.requireNonNull(jdbc.queryForObject("select store from tally", String.class));
    }

    /** Commits the change and has the database write its file to the disk before this returns. */
    <T> T change(Supplier<T> change) {
        return explained(() -> {
            requireSameFile();
            Counted<T> done = retryIfClosed(() -> transaction.execute(status -> withCount(change.get())));
            jdbc.execute("checkpoint sync");
            requireSameFile();
            mark.write(done.mark);
            return done.result;
        });
    }

    /** Runs a query in one transaction; nothing is changed. */
    <T> Optional<T> find(Supplier<Optional<T>> query) {
        return explained(() -> retryIfClosed(() -> transaction.execute(status -> query.get())));
    }

    /** Runs a query of one statement; nothing is changed. */
    <T> T read(Supplier<T> query) {
        return explained(() -> retryIfClosed(query));
    }

    /** Runs a change and rolls it back, then has the database write its file to the disk as {@link #change} does. */
    void rehearse(Runnable change) {
        explained(() -> {
            transaction.executeWithoutResult(status -> {
                status.setRollbackOnly();
                change.run();
            });
            jdbc.execute("checkpoint sync");
            return true;
        });
    }

    private record Counted<T>(T result, Mark mark) {}

    /** The change counter is raised last, so that the lock on its row is held as briefly as possible. */
    private <T> Counted<T> withCount(T result) {
        return Objects.requireNonNull(jdbc.queryForObject(
                "select changes, (select count(*) from house) from final table"
                        + " (update tally set changes = changes + 1)",
                (row, number) -> new Counted<>(result, new Mark(store, row.getLong(1), row.getLong(2)))));
    }

    /** A database that an earlier failure closed has stored nothing of this call: it is reopened and asked once more. */
    private <T> T retryIfClosed(Supplier<@Nullable T> ask) {
        try {
            return Objects.requireNonNull(ask.get());
        } catch (DataAccessException | TransactionException e) {
            if (!isClosed(e) || !isSameFile()) {
                throw e;
            }
            reopen();
            return Objects.requireNonNull(ask.get());
        }
    }

    private <T> T explained(Supplier<T> call) {
        try {
            T result = call.get();
            if (!lastWarning.isEmpty()) {
                lastWarning = "";
                LOG.info("The saved houses are stored again.");
            }
            return result;
        } catch (NotStored e) {
            warnOnce(String.valueOf(e.getMessage()));
            throw e;
        } catch (DataAccessException | TransactionException e) {
            NotStored notStored = new NotStored(why(e), e);
            if (isSameFile()) {
                reopen();
            }
            warnOnce(String.valueOf(notStored.getMessage()));
            throw notStored;
        }
    }

    /** Logs a reason once, until saving works again. */
    private void warnOnce(String why) {
        if (!why.equals(lastWarning)) {
            lastWarning = why;
            LOG.warn("Not saved: {}.", why);
        }
    }

    private void requireSameFile() {
        Optional<String> gone = whyFileIsAnother();
        if (gone.isPresent()) {
            throw new NotStored(gone.get());
        }
    }

    private boolean isSameFile() {
        return whyFileIsAnother().isEmpty();
    }

    private Optional<String> whyFileIsAnother() {
        Optional<Object> now = folder.fileKey();
        if (now.isPresent()) {
            return now.get().equals(file)
                    ? Optional.empty()
                    : Optional.of("the file of the saved houses in " + folder.path()
                            + " was replaced by another; restart Longrun, which then checks it");
        }
        return Optional.of(
                Files.isDirectory(folder.path())
                        ? "the file of the saved houses, " + folder.file() + ", is gone; put it back"
                        : "the folder of the saved houses, " + folder.path() + ", is gone; put it back");
    }

    private String why(RuntimeException e) {
        Optional<String> gone = whyFileIsAnother();
        if (gone.isPresent()) {
            return gone.get();
        }
        if (!Files.isWritable(folder.path()) || !Files.isWritable(folder.file())) {
            return "the saved houses in " + folder.path() + " are read-only now; let Longrun write there";
        }
        if (isDiskFull(e) || isSpaceLow()) {
            return "the disk with the saved houses, " + folder.path() + ", is full; make room on it";
        }
        return NotStored.REFUSED;
    }

    private boolean isSpaceLow() {
        try {
            return Files.getFileStore(folder.path()).getUsableSpace() < LOW_SPACE_BYTES;
        } catch (IOException e) {
            return false;
        }
    }

    private static boolean isDiskFull(Throwable e) {
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

    /** Closes all connections: the next one then opens the database again from the disk. */
    private void reopen() {
        DataSource source = jdbc.getDataSource();
        if (source instanceof HikariDataSource pool) {
            HikariPoolMXBean connections = pool.getHikariPoolMXBean();
            if (connections != null) {
                connections.softEvictConnections();
            }
        }
    }
}
