package longrun.http;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;

/**
 * Ends the program with a message when memory runs out, rather than let it run on without answering. Whatever was
 * acknowledged as saved is in the store.
 */
public final class OutOfMemory {

    private static final int STATUS = 3;
    private static final int TRIES = 3;
    private static final int PIECE = 1 << 18;
    private static final long PAUSE_MS = 1000;

    /** Written to directly: a stream between would need memory. */
    private static final FileOutputStream CONSOLE = new FileOutputStream(FileDescriptor.err);

    private static final int MOST_TRIES_TO_WRITE = 10_000;

    /** Made beforehand: once memory has run out there is none left to make it. */
    private static final byte[] MESSAGE =
            ("Longrun ran out of memory and has ended. What was saved is kept: start it again. If this comes back,"
                            + " give it more memory (java -Xmx2g -jar ...), or leave fewer pages open.\n")
                    .getBytes(StandardCharsets.US_ASCII);

    /** Freed at the end, so that there is memory to write the message. */
    @SuppressWarnings("UnusedVariable") // kept only to hold memory
    private static byte @Nullable [] reserve;

    private OutOfMemory() {}

    /**
     * Starts watching: uncaught errors of every thread, and, since a library may catch and ignore an error, whether memory
     * can still be allocated.
     */
    public static void watch() {
        reserve = new byte[1 << 20];
        // Classes needed to end the program are loaded now: at the end there is no memory to load them.
        end(new Throwable());
        write(new byte[0]);
        Runtime.getRuntime().removeShutdownHook(new Thread());
        Thread.setDefaultUncaughtExceptionHandler(new Uncaught());
        Thread watch = new Thread(new Watch(), "memory-watch");
        watch.setDaemon(true);
        watch.start();
    }

    /** Ends the program where what was thrown, or a cause of it, is an {@link OutOfMemoryError}. */
    public static void end(@Nullable Throwable thrown) {
        Throwable at = thrown;
        for (int depth = 0; at != null && depth < 50; depth++) {
            if (at instanceof OutOfMemoryError) {
                end();
            }
            at = at.getCause();
        }
    }

    private static void end() {
        reserve = null;
        try {
            write(MESSAGE);
        } finally {
            Runtime.getRuntime().halt(STATUS);
        }
    }

    /** Other threads may take the freed memory first, so writing is tried again until it succeeds. */
    private static void write(byte[] words) {
        for (int tries = 0; tries < MOST_TRIES_TO_WRITE; tries++) {
            try {
                CONSOLE.write(words, 0, words.length);
                return;
            } catch (OutOfMemoryError e) {
                Thread.yield();
            } catch (IOException e) {
                return; // the console is closed
            }
        }
    }

    private static final class Uncaught implements Thread.UncaughtExceptionHandler {

        @Override
        public void uncaughtException(Thread thread, Throwable thrown) {
            end(thrown);
            System.err.print("Exception in thread \"" + thread.getName() + "\" ");
            thrown.printStackTrace();
        }
    }

    /** Allocates a small piece of memory every second; where that fails several times in a row, memory has run out. */
    private static final class Watch implements Runnable {

        private int refused;

        @SuppressWarnings("UnusedVariable") // allocated only to see whether it can be
        private volatile byte @Nullable [] piece;

        @Override
        public void run() {
            while (refused < TRIES) {
                try {
                    Thread.sleep(PAUSE_MS);
                    piece = new byte[PIECE];
                    piece = null;
                    refused = 0;
                } catch (InterruptedException e) {
                    return;
                } catch (OutOfMemoryError e) {
                    refused++;
                }
            }
            end();
        }
    }
}
