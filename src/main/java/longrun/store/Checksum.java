package longrun.store;

import java.nio.charset.StandardCharsets;
import java.time.OffsetDateTime;
import java.util.zip.CRC32C;
import org.jspecify.annotations.Nullable;

/** The checksum stored with a text or a row, so that damage shows: CRC-32C (RFC 3720) over its UTF-8 bytes. */
final class Checksum {

    private Checksum() {}

    static long of(String text) {
        CRC32C crc = new CRC32C();
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        crc.update(bytes, 0, bytes.length);
        return crc.getValue();
    }

    /** The checksum of a row of the table of houses. */
    static long of(String name, long version, int step, OffsetDateTime changed, @Nullable OffsetDateTime deleted) {
        return of(version + " " + step + " " + millis(changed) + " " + (deleted == null ? "" : millis(deleted)) + " "
                + name);
    }

    private static long millis(OffsetDateTime when) {
        return when.toInstant().toEpochMilli();
    }
}
