package longrun.store;

import java.nio.charset.StandardCharsets;
import java.time.OffsetDateTime;
import java.util.zip.CRC32C;
import org.jspecify.annotations.Nullable;

/** The sum kept with a text or a row, by which damage is told: the checksum of RFC 3720 (CRC-32C) over UTF-8. */
final class Sum {

    private Sum() {}

    static long of(String text) {
        CRC32C sum = new CRC32C();
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        sum.update(bytes, 0, bytes.length);
        return sum.getValue();
    }

    /** Of a row of houses. */
    static long of(String name, long version, int step, OffsetDateTime changed, @Nullable OffsetDateTime deleted) {
        return of(version + " " + step + " " + millis(changed) + " " + (deleted == null ? "" : millis(deleted)) + " "
                + name);
    }

    private static long millis(OffsetDateTime when) {
        return when.toInstant().toEpochMilli();
    }
}
