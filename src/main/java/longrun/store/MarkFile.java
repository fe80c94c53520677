package longrun.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Writes the {@link Mark} beside the saved houses. It is written after the database has its change on the disk, so it is
 * never ahead of the database. Nothing waits for it to reach the disk, since a mark that is behind raises no alarm.
 */
final class MarkFile implements AutoCloseable {

    private static final Logger LOG = LoggerFactory.getLogger(MarkFile.class);

    private final Path file;
    private @Nullable FileChannel channel;
    private Mark last = Mark.none();
    private boolean failed;

    MarkFile(Path file) {
        this.file = file;
    }

    /** Writes the mark, unless a later one was written already. */
    synchronized void write(Mark mark) {
        if (channel != null && mark.changes() <= last.changes()) {
            return;
        }
        try {
            if (channel == null) {
                channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
                StoreFolder.restrictToOwner(file);
                // Both places, so that no mark of an earlier store is left.
                put(channel, mark, 0);
                put(channel, mark, 1);
                channel.truncate(2L * Mark.LENGTH);
                channel.force(true);
            } else {
                put(channel, mark, mark.changes() % 2);
            }
            last = mark;
            failed = false;
        } catch (IOException e) {
            if (!failed) {
                LOG.warn("The mark beside the saved houses, {}, could not be written: {}", file, e.getMessage());
            }
            failed = true;
        }
    }

    private static void put(FileChannel channel, Mark mark, long place) throws IOException {
        ByteBuffer bytes = ByteBuffer.wrap(mark.bytes());
        while (bytes.hasRemaining()) {
            channel.write(bytes, place * Mark.LENGTH + bytes.position());
        }
    }

    @Override
    public synchronized void close() throws IOException {
        if (channel != null) {
            channel.force(true);
            channel.close();
            channel = null;
        }
    }
}
