package longrun.checked;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.Properties;
import longrun.PlanCount;

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

    /** What a {@link SecondWay} is to run in this build, or in the long run; see {@link PlanCount}. */
    public static long count(String what) {
        SecondWay way = SecondWay.get(what);
        return PlanCount.of(way.count(), way.many());
    }

    /**
     * Keeps what a test found.
     *
     * @param what the id of a row of {@code data/checked/second-ways.csv}
     * @param worst the largest difference found, in the row's unit; 0 where both said the same
     */
    public static void told(String what, long count, long seed, double worst) {
        SecondWay.get(what);
        Properties found = new Properties();
        found.setProperty("count", Long.toString(count));
        found.setProperty("seed", Long.toString(seed));
        found.setProperty("worst", Double.toString(worst));
        found.setProperty("when", Instant.now().truncatedTo(ChronoUnit.SECONDS).toString());
        try {
            Files.createDirectories(FOLDER);
            try (Writer out = Files.newBufferedWriter(file(what))) {
                found.store(out, null);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What the test of a {@link SecondWay} found the last time it ran. */
    static Optional<Ran> find(String what) {
        if (!Files.isRegularFile(file(what))) {
            return Optional.empty();
        }
        Properties found = new Properties();
        try (Reader in = Files.newBufferedReader(file(what))) {
            found.load(in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return Optional.of(new Ran(
                what,
                Long.parseLong(found.getProperty("count")),
                Long.parseLong(found.getProperty("seed")),
                Double.parseDouble(found.getProperty("worst")),
                found.getProperty("when")));
    }

    private static Path file(String what) {
        return FOLDER.resolve(what + ".properties");
    }
}
