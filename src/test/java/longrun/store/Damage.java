package longrun.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Arrays;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** What may befall the file of the saved houses while nobody has it open. */
public final class Damage {

    private Damage() {}

    public static Path file(Path folder) {
        return folder.resolve("longrun.mv.db");
    }

    /** BackupCopies all that lies in a folder of houses into another, rights and times too. */
    public static void copyAll(Path from, Path to) throws IOException {
        try (Stream<Path> files = Files.walk(from)) {
            for (Path each : files.filter(f -> !f.equals(from)).toList()) {
                Files.copy(each, to.resolve(from.relativize(each)), StandardCopyOption.COPY_ATTRIBUTES);
            }
        }
    }

    /** Keeps the first bytes alone. */
    public static void truncate(Path folder, int length) throws IOException {
        Files.write(file(folder), Arrays.copyOf(Files.readAllBytes(file(folder)), length));
    }

    /** Turns bits over, from a place on. */
    public static void flip(Path folder, int bits, long seed) throws IOException {
        byte[] bytes = Files.readAllBytes(file(folder));
        Random random = new Random(seed);
        for (int i = 0; i < bits; i++) {
            bytes[random.nextInt(bytes.length)] ^= (byte) (1 << random.nextInt(8));
        }
        Files.write(file(folder), bytes);
    }

    /** Puts another letter into the text a house stands at, as a flipped bit may, where the database sees no fault. */
    public static void changeText(Path folder) throws SQLException {
        sql(folder, "update step set body = replace(body, 'x', 'y')");
    }

    public static void laterVersion(Path folder) throws SQLException {
        sql(
                folder,
                "insert into \"flyway_schema_history\" select 99, '99', 'later', 'SQL', 'V99__later.sql', 1, 'SA',"
                        + " current_timestamp, 1, true");
    }

    public static void otherMigration(Path folder) throws SQLException {
        sql(folder, "update \"flyway_schema_history\" set \"checksum\" = 1 where \"version\" = '1'");
    }

    static void sql(Path folder, String statement) throws SQLException {
        try (Connection houses = DriverManager.getConnection(
                        "jdbc:h2:file:" + folder.resolve("longrun") + ";IFEXISTS=TRUE", "sa", "");
                Statement change = houses.createStatement()) {
            change.execute(statement);
        }
    }

    /** Why the houses in a folder are not opened; empty where they are. */
    public static Optional<StoreTrouble> trouble(Path folder) {
        try (OpenStore store = new OpenStore(folder)) {
            return Optional.empty();
        } catch (RuntimeException e) {
            StoreTrouble trouble = StoreTrouble.in(e);
            if (trouble == null) {
                throw e;
            }
            return Optional.of(trouble);
        }
    }

    /** A file system of its own at a folder, of so many kilobytes; false where this user may mount none. */
    public static boolean mountSmall(Path folder, int kilobytes) throws IOException, InterruptedException {
        return run("mount", "-t", "tmpfs", "-o", "size=" + kilobytes + "k", "tmpfs", folder.toString());
    }

    public static boolean remount(Path folder, String how) throws IOException, InterruptedException {
        return run("mount", "-o", "remount," + how, folder.toString());
    }

    public static void unmount(Path folder) throws IOException, InterruptedException {
        run("umount", folder.toString());
    }

    private static boolean run(String... command) throws IOException, InterruptedException {
        try {
            Process process = new ProcessBuilder(command)
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
            return process.waitFor(20, TimeUnit.SECONDS) && process.exitValue() == 0;
        } catch (IOException e) {
            return false; // there is no such command here
        }
    }
}
