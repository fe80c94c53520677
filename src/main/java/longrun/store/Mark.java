package longrun.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What is written in a small file beside the saved houses after each change, so that an older database file is noticed:
 * which store it is, how many changes were reported as saved, and how many houses there were.
 *
 * @param store the store's random name; a hyphen where any store may follow ({@link #none})
 * @param changes at least this many changes have been stored
 * @param houses at least this many houses were kept, deleted ones included
 */
record Mark(String store, long changes, long houses) {

    /** Bytes of one mark. The file holds two, written in turn, so that one is intact if writing the other is cut off. */
    static final int LENGTH = 128;

    private static final String FIRST = "longrun-houses";

    /** The mark that expects nothing of the store. */
    static Mark none() {
        return new Mark("-", 0, 0);
    }

    /** The mark as one line of {@link #LENGTH} bytes that ends with its checksum. */
    byte[] bytes() {
        String line = String.join(" ", FIRST, store, Long.toString(changes), Long.toString(houses));
        String whole = line + " " + Long.toHexString(Checksum.of(line));
        return String.format(Locale.ROOT, "%-" + (LENGTH - 1) + "s\n", whole).getBytes(StandardCharsets.US_ASCII);
    }

    /** The later of the two marks in a file; empty where neither can be read. */
    static Optional<Mark> read(Path file) {
        byte[] all;
        try {
            all = Files.readAllBytes(file);
        } catch (IOException e) {
            return Optional.empty();
        }
        Mark best = null;
        for (int at = 0; at + LENGTH <= all.length; at += LENGTH) {
            Mark each = parsed(new String(all, at, LENGTH, StandardCharsets.US_ASCII).strip());
            if (each != null && (best == null || each.changes > best.changes)) {
                best = each;
            }
        }
        return Optional.ofNullable(best);
    }

    private static @Nullable Mark parsed(String whole) {
        String[] parts = whole.split(" ", -1);
        int end = whole.lastIndexOf(' ');
        if (parts.length != 5 || !parts[0].equals(FIRST)) {
            return null;
        }
        try {
            return Long.parseLong(parts[4], 16) == Checksum.of(whole.substring(0, end))
                    ? new Mark(parts[1], Long.parseLong(parts[2]), Long.parseLong(parts[3]))
                    : null;
        } catch (NumberFormatException e) {
            return null;
        }
    }
}
