package longrun.store;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import longrun.store.StoreTrouble.Kind;
import org.jspecify.annotations.Nullable;

/**
 * Checks the saved houses on a duplicate before they are opened. A file that is damaged, missing, older than it should be
 * or of a later version is not opened, and nothing is written to it.
 */
final class StoreCheck {

    private static final String CHECKING = "longrun-checking";
    private static final String OPEN_LAST_COPY = "Open the last copy; the damaged file is kept aside.";
    private static final String NO_COPY =
            "There is no dated copy of them yet. Put a copy of your own in their place, or begin with no houses; the"
                    + " damaged file is kept aside.";
    private static final long TIME_LIMIT_S = 180;

    private final StoreFolder folder;

    StoreCheck(StoreFolder folder) {
        this.folder = folder;
    }

    /**
     * Checks the saved houses.
     *
     * @return what they hold; empty where no house was ever saved
     * @throws StoreTrouble where they must not be opened
     */
    Optional<StoreContents> run() {
        requireFolder();
        Optional<Mark> mark = Mark.read(folder.mark());
        if (!Files.exists(folder.file())) {
            requireNothingSaved(mark);
            return Optional.empty();
        }
        requireNotInUse();
        StoreContents read = read(folder.file());
        if (read.version() > ChecksumMigration.VERSION) {
            throw new StoreTrouble(
                    Kind.LATER_VERSION,
                    "The saved houses in " + folder.path() + " were kept by a later version of Longrun (their store is"
                            + " version " + read.version() + ", this Longrun knows " + ChecksumMigration.VERSION
                            + "). They were left as they are.",
                    "Start the later Longrun, or open a copy made before it.");
        }
        if (!read.isSound()) {
            throw damaged(whatIsDamaged(read), null);
        }
        mark.ifPresent(m -> requireNotOlder(m, read));
        return Optional.of(read);
    }

    private void requireFolder() {
        try {
            folder.make();
        } catch (IOException e) {
            throw new StoreTrouble(
                    Kind.NOT_WRITABLE,
                    "The saved houses in " + folder.path() + " cannot be opened: the folder cannot be made.",
                    "Check that its disk is connected and that Longrun may write on it, or name another folder:"
                            + " --longrun.data=FOLDER",
                    e);
        }
        boolean fileToo = !Files.exists(folder.file()) || Files.isWritable(folder.file());
        if (!Files.isWritable(folder.path()) || !fileToo) {
            throw new StoreTrouble(
                    Kind.NOT_WRITABLE,
                    "The saved houses in " + folder.path() + " are read-only, so nothing could be saved.",
                    "Let Longrun write there, or name another folder: --longrun.data=FOLDER");
        }
    }

    private void requireNothingSaved(Optional<Mark> mark) {
        boolean expected = mark.map(m -> m.houses() > 0)
                .orElseGet(() -> Files.exists(folder.mark())
                        || !new BackupCopies(folder).list().isEmpty());
        if (expected) {
            throw new StoreTrouble(
                    Kind.MISSING,
                    "Houses were saved in " + folder.path() + ", and the file that held them, "
                            + folder.file().getFileName() + ", is missing.",
                    "Put it back and try again, or open the last copy.");
        }
    }

    private void requireNotInUse() {
        try (FileChannel file = FileChannel.open(folder.file(), StandardOpenOption.WRITE);
                FileLock lock = file.tryLock()) {
            if (lock == null) {
                throw inUse();
            }
        } catch (OverlappingFileLockException e) {
            throw inUse();
        } catch (IOException e) {
            throw damaged("The file could not be read from the disk: " + e.getMessage() + ".", e);
        }
    }

    private StoreTrouble inUse() {
        return new StoreTrouble(
                Kind.IN_USE,
                "Another Longrun is already running with the saved houses in " + folder.path() + ".",
                "Use the one that is running, or stop it first, or start this one with another folder:"
                        + " --longrun.data=FOLDER");
    }

    /** Reads a file of houses from a duplicate, so that nothing is written to the file itself. */
    StoreContents read(Path file) {
        Path duplicate = folder.fileOf(CHECKING);
        try {
            long size = Files.size(file);
            if (size == 0) {
                throw damaged("The file is empty (0 bytes).", null);
            }
            try {
                Files.copy(file, duplicate, StandardCopyOption.REPLACE_EXISTING);
                StoreFolder.restrictToOwner(duplicate);
            } catch (IOException e) {
                if (Files.getFileStore(folder.path()).getUsableSpace() < size) {
                    throw new StoreTrouble(
                            Kind.NO_ROOM,
                            "The disk with the saved houses in " + folder.path() + " is full. They are as they were.",
                            "Make room on it (" + (2 * size / 1_000_000 + 1) + " MB or more), then try again.",
                            e);
                }
                throw e;
            }
            StoreContents read = withinTimeLimit(() -> StoreContents.of(folder.url(CHECKING)));
            if (read.version() == 0) {
                throw damaged("The file holds nothing that Longrun has saved.", null);
            }
            return read;
        } catch (IOException e) {
            throw damaged("The file could not be read from the disk: " + e.getMessage() + ".", e);
        } catch (ExecutionException e) {
            throw damaged("The file cannot be read as a database.", e.getCause());
        } finally {
            try {
                Files.deleteIfExists(duplicate);
            } catch (IOException e) {
                duplicate.toFile().deleteOnExit();
            }
        }
    }

    /** Reading a damaged file may fail in any way, or never end. */
    private static StoreContents withinTimeLimit(Callable<StoreContents> reading) throws ExecutionException {
        FutureTask<StoreContents> task = new FutureTask<>(reading);
        Thread thread = new Thread(task, "checking-houses");
        thread.setDaemon(true);
        thread.start();
        try {
            return task.get(TIME_LIMIT_S, TimeUnit.SECONDS);
        } catch (TimeoutException e) {
            throw new ExecutionException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new ExecutionException(e);
        }
    }

    private StoreTrouble damaged(String how, @Nullable Throwable why) {
        String what = "The saved houses in " + folder.path() + " are damaged. " + how + " Nothing was written to them.";
        String todo = new BackupCopies(folder).list().isEmpty() ? NO_COPY : OPEN_LAST_COPY;
        return why == null
                ? new StoreTrouble(Kind.DAMAGED, what, todo)
                : new StoreTrouble(Kind.DAMAGED, what, todo, why);
    }

    private static String whatIsDamaged(StoreContents read) {
        List<String> houses = read.damaged();
        String first = String.join("; ", houses.subList(0, Math.min(5, houses.size())));
        String more = houses.size() > 5 ? "; and " + (houses.size() - 5) + " more" : "";
        return (houses.size() == 1
                        ? "One house is not as it was stored: "
                        : houses.size() + " houses are not as they" + " were stored: ")
                + first + more + ".";
    }

    private void requireNotOlder(Mark mark, StoreContents read) {
        boolean other =
                !mark.store().equals(Mark.none().store()) && !read.store().equals(mark.store());
        long missing = mark.changes() - read.changes();
        if (!other && missing <= 0 && read.houses() >= mark.houses()) {
            return;
        }
        String how = other && !read.store().isEmpty()
                ? "They are not the houses that Longrun last saved here."
                : missing > 0
                        ? missing == 1
                                ? "The last change saved is not in them."
                                : "The last " + missing + " changes saved are not in them."
                        : "Houses that were saved are not in them.";
        throw new StoreTrouble(
                Kind.OLDER,
                "The saved houses in " + folder.path() + " are older than what Longrun saved here last. " + how
                        + " Nothing was written to them.",
                "If you put an older file there yourself, go on with it. If not, its end was lost: open the last copy"
                        + " or go on with this file, whichever is later; the other is kept aside.");
    }
}
