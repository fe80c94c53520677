package longrun.browser;

import java.io.IOException;
import java.net.HttpURLConnection;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;

/** The program as a person starts it: a process of its own with its own port and its own folder of houses. */
public final class OwnProgram implements AutoCloseable {

    private static final long PATIENCE_S = 120;
    private static final String SAID = "said.txt";

    private final Process process;
    private final int port;

    private OwnProgram(Process process, int port) {
        this.process = process;
        this.port = port;
    }

    /** Starts it and waits until it answers; what it says goes to a file in the folder. */
    public static OwnProgram start(Path folder, int port) throws IOException, InterruptedException {
        return start(folder, port, 200);
    }

    /** Starts it on houses it does not open, and waits until its page says so. */
    public static OwnProgram startDamaged(Path folder, int port) throws IOException, InterruptedException {
        return start(folder, port, 503);
    }

    private static OwnProgram start(Path folder, int port, int status) throws IOException, InterruptedException {
        OwnProgram program = new OwnProgram(run(folder, folder, port), port);
        long until = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_S);
        while (!program.answers(status)) {
            if (!program.process.isAlive() || System.nanoTime() > until) {
                program.process.destroyForcibly();
                throw new IOException("the program did not come up:\n" + said(folder));
            }
            Thread.sleep(100);
        }
        return program;
    }

    /** Starts one that ends by itself, and gives what it said. */
    public static String runToItsEnd(Path folder, Path sayingTo, int port) throws IOException, InterruptedException {
        Files.deleteIfExists(sayingTo.resolve(SAID));
        Process process = run(folder, sayingTo, port);
        if (!process.waitFor(PATIENCE_S, TimeUnit.SECONDS)) {
            process.destroyForcibly();
            throw new IOException("the program went on:\n" + said(sayingTo));
        }
        return said(sayingTo);
    }

    /** What a program said so far. */
    public static String said(Path folder) throws IOException {
        return Files.readString(folder.resolve(SAID));
    }

    private static Process run(Path folder, Path sayingTo, int port) throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-XX:+UseSerialGC",
                        "-cp",
                        System.getProperty("java.class.path"),
                        "longrun.LongrunApplication",
                        "--server.port=" + port,
                        "--longrun.data=" + folder)
                .redirectErrorStream(true)
                .redirectOutput(
                        ProcessBuilder.Redirect.appendTo(sayingTo.resolve(SAID).toFile()))
                .start();
    }

    /** A port nothing listens on now. */
    public static int freePort() throws IOException {
        try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getByName("127.0.0.1"))) {
            return socket.getLocalPort();
        }
    }

    private boolean answers(int status) {
        try {
            var asked = (HttpURLConnection)
                    URI.create(address("/api/tables")).toURL().openConnection();
            asked.setConnectTimeout(1000);
            asked.setReadTimeout(10_000);
            return asked.getResponseCode() == status;
        } catch (IOException e) {
            return false;
        }
    }

    public int port() {
        return port;
    }

    public String address(String path) {
        return "http://127.0.0.1:" + port + path;
    }

    /** Ends it between two instructions, as a power cut does: no hook runs, nothing is written any more. */
    public void kill() throws InterruptedException {
        process.destroyForcibly().waitFor();
    }

    @Override
    public void close() throws InterruptedException {
        kill();
    }
}
