package longrun.checked;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import longrun.origin.DataFile;
import longrun.origin.DataRow;

/**
 * What a test found that works something out a second way. Each test tells it once, at its end; the report on what was
 * checked is made from it after all tests.
 *
 * @param count houses compared
 * @param seed of the first
 * @param worst the largest difference, in the unit of its {@link SecondWay}
 * @param when the test ended
 */
public record Ran(String what, long count, long seed, double worst, String when) {

    private static final Path FOLDER = Path.of("target", "checked", "ran");

    /** What a {@link SecondWay} is to run in this build, or in the long run ({@code -Dlongrun.many=true}). */
    public static long count(String what) {
        SecondWay way = SecondWay.get(what);
        return Boolean.getBoolean("longrun.many") ? way.many() : way.count();
    }

    /**
     * Keeps what a test found.
     *
     * @param what the id of a row of {@code data/checked/second-ways.csv}
     * @param worst the largest difference found, in the row's unit; 0 where both said the same
     */
    public static void told(String what, long count, long seed, double worst) {
        SecondWay.get(what);
        String when = Instant.now().truncatedTo(ChronoUnit.SECONDS).toString();
        String text =
                "what,count,seed,worst,when\n" + what + "," + count + "," + seed + "," + worst + "," + when + "\n";
        try {
            Files.createDirectories(FOLDER);
            Files.writeString(FOLDER.resolve(what + ".csv"), text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What the test of a {@link SecondWay} found the last time it ran. */
    static Optional<Ran> find(String what) {
        Path file = FOLDER.resolve(what + ".csv");
        if (!Files.isRegularFile(file)) {
            return Optional.empty();
        }
        try {
            DataRow row = DataFile.parse(file.toString(), Files.readString(file))
                    .rows()
                    .get(0);
            return Optional.of(new Ran(
                    row.text("what"),
                    (long) row.number("count"),
                    (long) row.number("seed"),
                    row.number("worst"),
                    row.text("when")));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
