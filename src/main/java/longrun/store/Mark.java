package longrun.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What is written beside the saved houses after each change, so that a file that fell back behind it is not taken for
 * the newest: which store it is, how many changes of it were told to be saved, and how many houses it holds.
 *
 * @param store the store's own name; blank where the person began with none
 * @param changes at least so many have been stored
 * @param houses at least so many were kept, deleted ones counted
 */
record Mark(String store, long changes, long houses) {

    /** Two places in the file are written in turn, so that one is whole whatever happens to the other. */
    static final int LENGTH = 128;

    private static final String FIRST = "longrun-houses";

    /** Nothing is expected of the store. */
    static Mark none() {
        return new Mark("-", 0, 0);
    }

    byte[] bytes() {
        String line = String.join(" ", FIRST, store, Long.toString(changes), Long.toString(houses));
        String whole = line + " " + Long.toHexString(Sum.of(line));
        return String.format(Locale.ROOT, "%-" + (LENGTH - 1) + "s\n", whole).getBytes(StandardCharsets.US_ASCII);
    }

    /** The later of the marks in a file; empty where there is none that can be read. */
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
            return Long.parseLong(parts[4], 16) == Sum.of(whole.substring(0, end))
                    ? new Mark(parts[1], Long.parseLong(parts[2]), Long.parseLong(parts[3]))
                    : null;
        } catch (NumberFormatException e) {
            return null;
        }
    }
}
