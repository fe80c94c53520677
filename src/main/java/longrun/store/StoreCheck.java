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
 * Looks through the saved houses before they are opened, on a duplicate: what is damaged, missing, older than it should
 * be, or of a later version is not opened, and nothing is written on it.
 */
final class StoreCheck {

    private static final String CHECKING = "longrun-checking";
    private static final String GO_BACK = "Open the last copy; the damaged file is kept aside.";
    private static final String NO_COPY =
            "There is no dated copy of them yet. Put a copy of your own in their place, or begin with no houses; the"
                    + " damaged file is kept aside.";
    private static final long PATIENCE_S = 180;

    private final StoreFolder folder;

    StoreCheck(StoreFolder folder) {
        this.folder = folder;
    }

    /**
     * Looks through what is there.
     *
     * @return empty where there is nothing yet
     * @throws StoreTrouble where it must not be opened
     */
    Optional<StoreReading> run() {
        requireFolder();
        Optional<Mark> mark = Mark.read(folder.mark());
        if (!Files.exists(folder.file())) {
            requireNoneBefore(mark);
            return Optional.empty();
        }
        requireAlone();
        StoreReading read = read(folder.file());
        if (read.version() > SumsTakenOver.VERSION) {
            throw new StoreTrouble(
                    Kind.LATER_VERSION,
                    "The saved houses in " + folder.path() + " were kept by a later version of Longrun (their store is"
                            + " version " + read.version() + ", this Longrun knows " + SumsTakenOver.VERSION
                            + "). They were left as they are.",
                    "Start the later Longrun, or go back to a copy from before it.");
        }
        if (!read.isWhole()) {
            throw damaged(whatIsBroken(read), null);
        }
        mark.ifPresent(m -> requireAsLate(m, read));
        return Optional.of(read);
    }

    private void requireFolder() {
        try {
            folder.make();
        } catch (IOException e) {
            throw new StoreTrouble(
                    Kind.NOT_WRITABLE,
                    "The saved houses in " + folder.path() + " cannot be opened: the folder cannot be made.",
                    "Look whether its disk is there and let Longrun write on it, or name another folder:"
                            + " --longrun.data=FOLDER",
                    e);
        }
        boolean fileToo = !Files.exists(folder.file()) || Files.isWritable(folder.file());
        if (!Files.isWritable(folder.path()) || !fileToo) {
            throw new StoreTrouble(
                    Kind.NOT_WRITABLE,
                    "The saved houses in " + folder.path() + " can be read only, so nothing could be saved.",
                    "Let Longrun write there, or name another folder: --longrun.data=FOLDER");
        }
    }

    private void requireNoneBefore(Optional<Mark> mark) {
        boolean expected = mark.map(m -> m.houses() > 0)
                .orElseGet(() -> Files.exists(folder.mark())
                        || !new Copies(folder).list().isEmpty());
        if (expected) {
            throw new StoreTrouble(
                    Kind.MISSING,
                    "Houses were saved in " + folder.path() + ", and the file that held them, "
                            + folder.file().getFileName() + ", is not there.",
                    "Put it back and try again, or open the last copy.");
        }
    }

    private void requireAlone() {
        try (FileChannel file = FileChannel.open(folder.file(), StandardOpenOption.WRITE);
                FileLock lock = file.tryLock()) {
            if (lock == null) {
                throw inUse();
            }
        } catch (OverlappingFileLockException e) {
            throw inUse();
        } catch (IOException e) {
            throw damaged("The disk does not give the file: " + e.getMessage() + ".", e);
        }
    }

    private StoreTrouble inUse() {
        return new StoreTrouble(
                Kind.IN_USE,
                "Longrun is running already with the saved houses in " + folder.path() + ".",
                "Use the one that is running, or stop it first, or start this one with a folder of its own:"
                        + " --longrun.data=FOLDER");
    }

    /** Reads a file of houses by way of a duplicate, so that nothing is written on it. */
    StoreReading read(Path file) {
        Path duplicate = folder.other(CHECKING);
        try {
            long size = Files.size(file);
            if (size == 0) {
                throw damaged("The file is empty (0 bytes).", null);
            }
            try {
                Files.copy(file, duplicate, StandardCopyOption.REPLACE_EXISTING);
                StoreFolder.ownerAlone(duplicate);
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
            StoreReading read = patiently(() -> StoreReading.of(folder.url(CHECKING)));
            if (read.version() == 0) {
                throw damaged("There is nothing in the file of what Longrun keeps.", null);
            }
            return read;
        } catch (IOException e) {
            throw damaged("The disk does not give the file: " + e.getMessage() + ".", e);
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

    /** A damaged file may throw anything, or keep its reader for ever. */
    private static StoreReading patiently(Callable<StoreReading> reading) throws ExecutionException {
        FutureTask<StoreReading> task = new FutureTask<>(reading);
        Thread thread = new Thread(task, "checking-houses");
        thread.setDaemon(true);
        thread.start();
        try {
            return task.get(PATIENCE_S, TimeUnit.SECONDS);
        } catch (TimeoutException e) {
            throw new ExecutionException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new ExecutionException(e);
        }
    }

    private StoreTrouble damaged(String how, @Nullable Throwable why) {
        String what = "The saved houses in " + folder.path() + " are damaged. " + how + " Nothing was written on them.";
        String todo = new Copies(folder).list().isEmpty() ? NO_COPY : GO_BACK;
        return why == null
                ? new StoreTrouble(Kind.DAMAGED, what, todo)
                : new StoreTrouble(Kind.DAMAGED, what, todo, why);
    }

    private static String whatIsBroken(StoreReading read) {
        List<String> broken = read.broken();
        String first = String.join("; ", broken.subList(0, Math.min(5, broken.size())));
        String more = broken.size() > 5 ? "; and " + (broken.size() - 5) + " more" : "";
        return (broken.size() == 1
                        ? "One house is not as it was stored: "
                        : broken.size() + " houses are not as they" + " were stored: ")
                + first + more + ".";
    }

    private void requireAsLate(Mark mark, StoreReading read) {
        boolean other =
                !mark.store().equals(Mark.none().store()) && !read.store().equals(mark.store());
        long missing = mark.changes() - read.changes();
        if (!other && missing <= 0 && read.houses() >= mark.houses()) {
            return;
        }
        String how = other && !read.store().isEmpty()
                ? "They are not the houses Longrun kept here last."
                : missing > 0
                        ? missing == 1
                                ? "The last change saved is not in them."
                                : "The last " + missing + " changes saved are not in them."
                        : "Houses that were saved are not in them.";
        throw new StoreTrouble(
                Kind.OLDER,
                "The saved houses in " + folder.path() + " are older than what Longrun saved here last. " + how
                        + " Nothing was written on them.",
                "If you put an older file there yourself, go on with it. If not, its end was lost: open the last copy"
                        + " or go on with this file, whichever is later; the other is kept.");
    }
}
