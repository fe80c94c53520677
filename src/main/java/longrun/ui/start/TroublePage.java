package longrun.ui.start;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.security.SecureRandom;
import java.time.Clock;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.regex.Pattern;
import longrun.draft.PlanFiles;
import longrun.http.AllowedHosts;
import longrun.store.StoreFolder;
import longrun.store.StoreRecovery;
import longrun.store.StoreTrouble;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.core.env.Environment;

/**
 * What stands at Longrun's address while the saved houses are not opened: what happened, what can be done, and the
 * buttons that do it. It is served by the JDK alone, since nothing of the program runs on houses that are not whole; it
 * answers this computer only, and takes a choice only from its own page.
 */
public final class TroublePage {

    private static final Logger LOG = LoggerFactory.getLogger(TroublePage.class);
    private static final Pattern STYLE = Pattern.compile("/frontend/[a-z]+\\.css");
    private static final int LONGEST_CHOICE = 4096;

    private final StoreTrouble trouble;
    private final StoreRecovery recovery;
    private final AllowedHosts names;
    private final String token = HexFormat.of().formatHex(random());
    private final CountDownLatch chosen = new CountDownLatch(1);

    private TroublePage(StoreTrouble trouble, Environment environment) {
        this.trouble = trouble;
        this.recovery = new StoreRecovery(StoreFolder.of(environment), Clock.systemUTC());
        this.names = AllowedHosts.of(environment);
    }

    /**
     * Shows the page until a choice was made that lets Longrun start again.
     *
     * @throws IOException where the page's port is in use
     */
    public static void showUntilChosen(StoreTrouble trouble, Environment environment) throws IOException {
        TroublePage page = new TroublePage(trouble, environment);
        int port = environment.getProperty("server.port", Integer.class, 8080);
        String address = environment.getProperty("server.address", "127.0.0.1");
        HttpServer server = HttpServer.create(new InetSocketAddress(InetAddress.getByName(address), port), 0);
        ExecutorService threads = Executors.newFixedThreadPool(4);
        server.setExecutor(threads);
        server.createContext("/", page::answer);
        server.start();
        LOG.info(
                "What can be done is shown at http://localhost:{}",
                server.getAddress().getPort());
        try {
            page.chosen.await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } finally {
            server.stop(1);
            threads.shutdown();
        }
    }

    private static byte[] random() {
        byte[] bytes = new byte[16];
        new SecureRandom().nextBytes(bytes);
        return bytes;
    }

    private void answer(HttpExchange call) throws IOException {
        try (call) {
            String path = call.getRequestURI().getPath();
            if (!names.has(call.getRequestHeaders().getFirst("Host"))) {
                send(
                        call,
                        AllowedHosts.MISDIRECTED_REQUEST,
                        "text/plain; charset=utf-8",
                        AllowedHosts.REFUSAL.getBytes(StandardCharsets.UTF_8));
            } else if (call.getRequestMethod().equals("POST") && path.equals("/choose")) {
                choose(call);
            } else if (STYLE.matcher(path).matches()) {
                style(call, path);
            } else if (path.startsWith("/api/")) {
                send(call, 503, "application/problem+json", problem());
            } else if (path.equals("/readable.zip")) {
                readable(call);
            } else {
                send(call, 503, "text/html; charset=utf-8", page("").getBytes(StandardCharsets.UTF_8));
            }
        } catch (RuntimeException e) {
            LOG.warn("The page of what can be done failed", e);
        }
    }

    private static void send(HttpExchange call, int status, String kind, byte[] body) throws IOException {
        var head = call.getResponseHeaders();
        head.set("Content-Type", kind);
        head.set("Cache-Control", "no-store");
        AllowedHosts.SECURITY_HEADERS.forEach(head::set);
        head.set("Content-Security-Policy", TroubleWords.POLICY);
        boolean bodyless = call.getRequestMethod().equals("HEAD");
        call.sendResponseHeaders(status, bodyless ? -1 : body.length);
        if (!bodyless) {
            call.getResponseBody().write(body);
        }
    }

    private static void style(HttpExchange call, String path) throws IOException {
        try (InputStream in = TroublePage.class.getResourceAsStream("/META-INF/resources" + path)) {
            if (in == null) {
                send(call, 404, "text/plain; charset=utf-8", new byte[0]);
            } else {
                send(call, 200, "text/css; charset=utf-8", in.readAllBytes());
            }
        }
    }

    private byte[] problem() {
        String words =
                (trouble.what() + " " + trouble.todo()).replace("\\", "\\\\").replace("\"", "\\\"");
        return ("{\"type\":\"about:blank\",\"title\":\"The saved houses are not open\",\"status\":503,\"detail\":\""
                        + words + "\"}")
                .getBytes(StandardCharsets.UTF_8);
    }

    private void readable(HttpExchange call) throws IOException {
        List<PlanFiles.PlanFile> files = recovery.readable().stream()
                .map(f -> new PlanFiles.PlanFile(PlanFiles.fileName(f.name()), f.json()))
                .toList();
        call.getResponseHeaders().set("Content-Disposition", "attachment; filename=\"houses-that-can-be-read.zip\"");
        send(call, 200, "application/zip", PlanFiles.zip(files));
    }

    private void choose(HttpExchange call) throws IOException {
        Map<String, String> form = form(call);
        String from = call.getRequestHeaders().getFirst("Sec-Fetch-Site");
        if (!token.equals(form.get("token")) || from != null && !from.equals("same-origin")) {
            send(
                    call,
                    403,
                    "text/html; charset=utf-8",
                    page("Choose here; another page cannot.").getBytes(StandardCharsets.UTF_8));
            return;
        }
        String said;
        try {
            said = done(form.getOrDefault("do", ""), form.getOrDefault("copy", ""));
        } catch (IOException | StoreTrouble e) {
            LOG.warn("Not done: {}", e.getMessage());
            send(
                    call,
                    409,
                    "text/html; charset=utf-8",
                    page("That was not done: " + e.getMessage() + ".").getBytes(StandardCharsets.UTF_8));
            return;
        }
        LOG.info(said);
        send(
                call,
                200,
                "text/html; charset=utf-8",
                TroubleWords.startsAgain(said).getBytes(StandardCharsets.UTF_8));
        chosen.countDown();
    }

    private String done(String what, String copy) throws IOException {
        return switch (what) {
            case "copy" -> "The copy is opened. What lay there is kept in " + recovery.open(copy) + ".";
            case "go-on" -> {
                recovery.acceptOlder();
                yield "Longrun goes on with the houses that are there.";
            }
            case "begin" -> "Longrun begins with no houses. What lay there is kept in " + recovery.startEmpty() + ".";
            case "again" -> "Longrun looks once more.";
            default -> throw new IOException("there is no such choice");
        };
    }

    private static Map<String, String> form(HttpExchange call) throws IOException {
        byte[] body = call.getRequestBody().readNBytes(LONGEST_CHOICE);
        Map<String, String> form = new HashMap<>();
        for (String pair : new String(body, StandardCharsets.UTF_8).split("&", -1)) {
            int is = pair.indexOf('=');
            if (is > 0) {
                try {
                    form.put(pair.substring(0, is), URLDecoder.decode(pair.substring(is + 1), StandardCharsets.UTF_8));
                } catch (IllegalArgumentException e) {
                    throw new IOException("the choice cannot be read", e);
                }
            }
        }
        return form;
    }

    private String page(String said) {
        return TroubleWords.page(trouble, recovery, token, said);
    }
}
