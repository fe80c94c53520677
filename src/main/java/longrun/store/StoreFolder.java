package longrun.store;

import java.io.IOException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Clock;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import org.springframework.core.env.Environment;

/**
 * The folder of the saved houses: the database's file, the mark beside it, the dated copies, and files kept aside. Only
 * its owner may read or write in it.
 *
 * @param path absolute
 */
public record StoreFolder(Path path) {

    /** The name of the database; its file is {@code longrun.mv.db}. */
    static final String NAME = "longrun";

    private static final String ENDING = ".mv.db";
    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("uuuu-MM-dd-HHmmss", Locale.ROOT);

    /** The folder that {@code longrun.data} names; it may be relative to where Longrun was started. */
    public static StoreFolder of(Environment environment) {
        return new StoreFolder(Path.of(environment.getRequiredProperty("longrun.data"))
                .toAbsolutePath()
                .normalize());
    }

    Path file() {
        return path.resolve(NAME + ENDING);
    }

    Path mark() {
        return path.resolve(NAME + ".mark");
    }

    Path copies() {
        return path.resolve("copies");
    }

    /** The file of another database in the folder. */
    Path fileOf(String name) {
        return path.resolve(name + ENDING);
    }

    /** The JDBC address of a database in the folder. Opening it fails where the file is missing; it creates none. */
    String url(String name) {
        return newUrl(name) + ";IFEXISTS=TRUE";
    }

    /** The JDBC address of a database that is created where it is missing. */
    String newUrl(String name) {
        // DB_CLOSE_ON_EXIT: Spring closes the database after the last save; its own hook could run earlier.
        return "jdbc:h2:file:" + path.resolve(name) + ";DB_CLOSE_ON_EXIT=FALSE;COMPRESS=TRUE;TRACE_LEVEL_FILE=0";
    }

    /** Makes the folder where it is missing. */
    void make() throws IOException {
        makePrivate(path);
    }

    /** Makes a new folder, named by date and time, for files that are kept aside. */
    Path makeKeptAside(Clock clock) throws IOException {
        Path all = path.resolve("kept-aside");
        makePrivate(all);
        String moment = MOMENT.format(clock.instant().atZone(ZoneId.systemDefault()));
        Path own = all.resolve(moment);
        for (int i = 2; Files.exists(own); i++) {
            own = all.resolve(moment + "-" + i);
        }
        makePrivate(own);
        return own;
    }

    /** Makes a folder that only its owner may enter, with those above it; one that exists is left as it is. */
    static void makePrivate(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            Files.createDirectories(folder);
            if (isPosix()) {
                Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwx------"));
            }
        }
    }

    /** Makes a file readable and writable by its owner alone, where the file system has such permissions. */
    static void restrictToOwner(Path file) throws IOException {
        if (isPosix()) {
            Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-------"));
        }
    }

    private static boolean isPosix() {
        return FileSystems.getDefault().supportedFileAttributeViews().contains("posix");
    }

    /** A key that changes when the database's file is replaced by another; empty where there is no file. */
    Optional<Object> fileKey() {
        try {
            BasicFileAttributes now = Files.readAttributes(file(), BasicFileAttributes.class);
            Object key = now.fileKey();
            return Optional.of(key == null ? now.creationTime() : key);
        } catch (IOException e) {
            return Optional.empty();
        }
    }
}
