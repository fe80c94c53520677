package longrun.bench;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.Request;
import com.microsoft.playwright.options.LoadState;
import java.io.File;
import java.io.IOException;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import longrun.browser.Browsing;

/**
 * Start and weight of the program beside those of an empty one of the same framework: seconds from the command to the
 * first page, requests and bytes of the first view, and the heap that a page holds while it stands open. Run by
 * {@code src/test/sh/start-and-weight.sh}; nothing is asserted, since the machine decides.
 */
public final class StartAndWeight {

    private static final int STARTS = 3;
    private static final int PAGES = 20;

    /** Until what is made ready behind the first page is done, which is no page's own. */
    private static final int BEHIND_SECONDS = 20;

    private static final HttpClient HTTP = HttpClient.newHttpClient();

    private StartAndWeight() {}

    /** What was measured of one program. */
    private record Measured(double startSeconds, int requests, long bytes, double heapBytes) {}

    public static void main(String[] args) throws IOException, InterruptedException {
        Measured empty =
                measure("emptyprogram.EmptyProgram", "--vaadin.allowed-packages=emptyprogram", "--server.port=%d");
        Measured ours = measure("longrun.LongrunApplication", "--server.port=%d");
        System.out.printf(Locale.ROOT, "%-28s %10s %10s %8s%n", "", "empty", "longrun", "ratio");
        line("seconds to the first page", empty.startSeconds(), ours.startSeconds());
        line("requests of the first view", empty.requests(), ours.requests());
        line("KiB of the first view", empty.bytes() / 1024.0, ours.bytes() / 1024.0);
        line("KiB of heap a first page", empty.heapBytes() / 1024.0, ours.heapBytes() / 1024.0);
    }

    private static void line(String what, double empty, double ours) {
        System.out.printf(Locale.ROOT, "%-28s %10.2f %10.2f %8.2f%n", what, empty, ours, ours / empty);
    }

    private static Measured measure(String main, String... args) throws IOException, InterruptedException {
        double best = Double.MAX_VALUE;
        for (int i = 0; i < STARTS - 1; i++) {
            try (Running one = Running.start(main, args)) {
                best = Math.min(best, one.seconds);
            }
        }
        try (Running one = Running.start(main, args);
                Playwright playwright = Browsing.playwright();
                Browser chromium = Browsing.launch(playwright)) {
            best = Math.min(best, one.seconds);
            List<Request> asked = new ArrayList<>();
            view(chromium, one.address(), asked);
            long bytes = 0;
            for (Request each : asked) {
                bytes += each.sizes().responseBodySize + each.sizes().responseHeadersSize;
            }
            return new Measured(best, asked.size(), bytes, one.heapAPage(chromium));
        }
    }

    private static void view(Browser browser, String address, List<Request> asked) {
        BrowserContext context = browser.newContext();
        Page page = context.newPage();
        page.onRequestFinished(asked::add);
        page.navigate(address);
        page.locator("h1").first().waitFor();
        page.waitForLoadState(LoadState.NETWORKIDLE);
    }

    /** A program that was started and answers. */
    private static final class Running implements AutoCloseable {

        private final Process process;
        private final int port;
        private final Path data;
        private double seconds;

        private Running(Process process, int port, Path data) {
            this.process = process;
            this.port = port;
            this.data = data;
        }

        static Running start(String main, String... args) throws IOException, InterruptedException {
            int port;
            try (ServerSocket free = new ServerSocket(0)) {
                port = free.getLocalPort();
            }
            Path data = Files.createTempDirectory("start");
            List<String> command = new ArrayList<>(List.of(
                    System.getProperty("java.home") + File.separator + "bin" + File.separator + "java",
                    "-cp",
                    System.getProperty("java.class.path"),
                    "-Dvaadin.productionMode=true",
                    main,
                    "--longrun.data=" + data));
            for (String arg : args) {
                command.add(String.format(Locale.ROOT, arg, port));
            }
            long began = System.nanoTime();
            Process process = new ProcessBuilder(command)
                    .redirectErrorStream(true)
                    .redirectOutput(data.resolve("log").toFile())
                    .start();
            Running running = new Running(process, port, data);
            running.await();
            running.seconds = (System.nanoTime() - began) / 1e9;
            return running;
        }

        /** What a page holds of the heap while it stands open in a browser of its own, the mean of some. */
        double heapAPage(Browser browser) throws IOException, InterruptedException {
            view(browser, address(), new ArrayList<>());
            TimeUnit.SECONDS.sleep(BEHIND_SECONDS);
            long before = live();
            for (int i = 0; i < PAGES; i++) {
                view(browser, address(), new ArrayList<>());
            }
            return (live() - before) / (double) PAGES;
        }

        /** Bytes of the heap after a collection. */
        private long live() throws IOException, InterruptedException {
            Process counting = new ProcessBuilder(
                            System.getProperty("java.home") + File.separator + "bin" + File.separator + "jcmd",
                            String.valueOf(process.pid()),
                            "GC.class_histogram")
                    .redirectErrorStream(true)
                    .start();
            String said = new String(counting.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            counting.waitFor();
            Matcher total = Pattern.compile("(?m)^Total +\\d+ +(\\d+)").matcher(said);
            if (!total.find()) {
                throw new IOException("the heap is not told:\n" + said);
            }
            return Long.parseLong(total.group(1));
        }

        String address() {
            return "http://127.0.0.1:" + port + "/";
        }

        private void await() throws IOException, InterruptedException {
            HttpRequest first = HttpRequest.newBuilder(URI.create(address())).build();
            while (process.isAlive()) {
                try {
                    if (HTTP.send(first, HttpResponse.BodyHandlers.ofByteArray())
                                    .statusCode()
                            == 200) {
                        return;
                    }
                } catch (IOException notYet) {
                    // it does not listen yet
                }
                TimeUnit.MILLISECONDS.sleep(20);
            }
            throw new IOException("it did not start:\n" + Files.readString(data.resolve("log")));
        }

        @Override
        public void close() {
            process.destroy();
            try {
                process.waitFor(20, TimeUnit.SECONDS);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
            process.destroyForcibly();
        }
    }
}
