package longrun.http;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;

/**
 * When memory runs out the program ends with a line that says so, rather than live on and answer nothing. What was
 * acknowledged as saved is in the store.
 */
public final class OutOfMemory {

    private static final int STATUS = 3;
    private static final int TRIES = 3;
    private static final int PIECE = 1 << 18;
    private static final long PAUSE_MS = 1000;

    /** Straight to the console, with nothing between that asks for memory. */
    private static final FileOutputStream CONSOLE = new FileOutputStream(FileDescriptor.err);

    private static final int MOST_TRIES_TO_SAY_IT = 10_000;

    /** Kept ready: when memory has run out there is none to make them of. */
    private static final byte[] LAST_WORDS =
            ("Longrun ran out of memory and has ended. What was saved is kept: start it again. If this comes back,"
                            + " give it more memory (java -Xmx2g -jar ...), or leave fewer pages open.\n")
                    .getBytes(StandardCharsets.US_ASCII);

    /** Given up at the end, so that there is room for the last words. */
    @SuppressWarnings("UnusedVariable") // it is held, not read
    private static byte @Nullable [] reserve;

    private OutOfMemory() {}

    /** Watches every thread, and whether memory can still be had where a library swallows what it catches. */
    public static void watch() {
        reserve = new byte[1 << 20];
        // What ends a program is loaded while there is room: a class first asked for at the end cannot be.
        end(new Throwable());
        say(new byte[0]);
        Runtime.getRuntime().removeShutdownHook(new Thread());
        Thread.setDefaultUncaughtExceptionHandler(new Uncaught());
        Thread watch = new Thread(new Watch(), "memory-watch");
        watch.setDaemon(true);
        watch.start();
    }

    /** Ends the program where what was thrown means that memory ran out. */
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
            say(LAST_WORDS);
        } finally {
            Runtime.getRuntime().halt(STATUS);
        }
    }

    /** Other threads may take the reserve before it is used, so it is tried until it is said. */
    private static void say(byte[] words) {
        for (int tries = 0; tries < MOST_TRIES_TO_SAY_IT; tries++) {
            try {
                CONSOLE.write(words, 0, words.length);
                return;
            } catch (OutOfMemoryError e) {
                Thread.yield();
            } catch (IOException e) {
                return; // nobody reads the console
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

    /** Asks for a small piece of memory now and again; where there is none several times over, there is none. */
    private static final class Watch implements Runnable {

        private int refused;

        @SuppressWarnings("UnusedVariable") // it is asked for, not read
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
