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
 * The folder the saved houses lie in: the database's file, the mark beside it, the dated copies, and what was kept aside.
 * All of it is for its owner alone.
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

    /** A database of this name in the folder, beside the saved houses. */
    Path other(String name) {
        return path.resolve(name + ENDING);
    }

    /** The address of a database in the folder that must be there already: none is ever made by opening it. */
    String url(String name) {
        // Spring closes the database after the last save; a hook of its own could be sooner. Whole texts pack well.
        return newUrl(name) + ";IFEXISTS=TRUE";
    }

    /** The same, made where it is missing. */
    String newUrl(String name) {
        return "jdbc:h2:file:" + path.resolve(name) + ";DB_CLOSE_ON_EXIT=FALSE;COMPRESS=TRUE;TRACE_LEVEL_FILE=0";
    }

    /** Makes the folder where it is missing. */
    void make() throws IOException {
        makeOwned(path);
    }

    /** A new folder for files that are kept aside. */
    Path makeAside(Clock clock) throws IOException {
        Path all = path.resolve("kept-aside");
        makeOwned(all);
        String moment = MOMENT.format(clock.instant().atZone(ZoneId.systemDefault()));
        Path own = all.resolve(moment);
        for (int i = 2; Files.exists(own); i++) {
            own = all.resolve(moment + "-" + i);
        }
        makeOwned(own);
        return own;
    }

    static void makeOwned(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            Files.createDirectories(folder);
            if (isPosix()) {
                Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwx------"));
            }
        }
    }

    /** Lets nobody but the owner read or write a file. */
    static void ownerAlone(Path file) throws IOException {
        if (isPosix()) {
            Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-------"));
        }
    }

    private static boolean isPosix() {
        return FileSystems.getDefault().supportedFileAttributeViews().contains("posix");
    }

    /** What tells the database's file from another put in its place; empty where there is no file. */
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
