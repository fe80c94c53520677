package longrun.ui.start;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import longrun.browser.OwnProgram;
import longrun.store.Damage;
import longrun.store.ListedHouse;
import longrun.store.OpenStore;
import longrun.store.StoreTrouble;
import longrun.store.StoreTrouble.Kind;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.mock.env.MockEnvironment;

/** What the page says of each damage to the saved houses, and what its buttons do. */
class TroublePageTest {

    /** Kept once, with their copy; each damage is done to a folder copied from it. */
    @TempDir
    static Path sound;

    @TempDir
    Path folder;

    private final HttpClient browser = HttpClient.newHttpClient();
    private int port;
    private CompletableFuture<Void> shown = CompletableFuture.completedFuture(null);

    @BeforeEach
    void copyTheHouses() throws IOException {
        Damage.copyAll(sound, folder);
    }

    @BeforeAll
    static void keepHousesAndMakeTheirCopy() {
        try (OpenStore store = new OpenStore(sound)) {
            store.drafts.create("Mill", "{\"x\":1}");
            store.drafts.create("<b>Pond</b>", "{\"x\":2}");
        }
        assertThat(Damage.trouble(sound)).isEmpty();
    }

    @AfterEach
    void letThePageGo() throws Exception {
        if (!shown.isDone()) {
            choose("again", "");
        }
        shown.get(20, TimeUnit.SECONDS);
    }

    private String pageOfTheDamage(Kind expected) throws Exception {
        StoreTrouble trouble = Damage.trouble(folder).orElseThrow();
        assertThat(trouble.kind()).isEqualTo(expected);
        port = OwnProgram.freePort();
        MockEnvironment environment = new MockEnvironment()
                .withProperty("longrun.data", folder.toString())
                .withProperty("server.port", Integer.toString(port))
                .withProperty("longrun.hosts", "kitchen-computer, Other.example");
        shown = CompletableFuture.runAsync(() -> {
            try {
                TroublePage.showUntilChosen(trouble, environment);
            } catch (IOException e) {
                throw new IllegalStateException(e);
            }
        });
        HttpResponse<String> answer = get("/house/1/house");
        assertThat(answer.statusCode()).isEqualTo(503);
        return Jsoup.parse(answer.body()).text();
    }

    private HttpResponse<String> get(String path) throws Exception {
        for (int i = 0; ; i++) {
            try {
                return browser.send(
                        HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + path))
                                .build(),
                        BodyHandlers.ofString());
            } catch (IOException e) {
                if (i == 100) {
                    throw e;
                }
                Thread.sleep(50);
            }
        }
    }

    private HttpResponse<String> post(String form, String... heads) throws Exception {
        HttpRequest.Builder call = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + "/choose"))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(form));
        for (int i = 0; i < heads.length; i += 2) {
            call.header(heads[i], heads[i + 1]);
        }
        return browser.send(call.build(), BodyHandlers.ofString());
    }

    private HttpResponse<String> choose(String what, String copy) throws Exception {
        return post("token=" + token() + "&do=" + what + "&copy=" + copy);
    }

    private String token() throws Exception {
        Matcher token = Pattern.compile("name='token' value='([0-9a-f]+)'").matcher(get("/").body());
        assertThat(token.find()).isTrue();
        return token.group(1);
    }

    private String firstCopy() throws Exception {
        Matcher copy = Pattern.compile("name='copy' value='(longrun-[^']+zip)'").matcher(get("/").body());
        assertThat(copy.find()).isTrue();
        return copy.group(1);
    }

    private List<String> houses() {
        try (OpenStore store = new OpenStore(folder)) {
            return store.drafts.list().stream().map(ListedHouse::name).toList();
        }
    }

    @Test
    void emptyFileIsCalledDamagedAndTheLastCopyOpens() throws Exception {
        Damage.truncate(folder, 0);
        assertThat(pageOfTheDamage(Kind.DAMAGED))
                .contains(
                        "are damaged",
                        "The file is empty (0 bytes).",
                        "Nothing was written to them",
                        "Open the copy of")
                .contains("The same by hand", "Gas can kill.");

        HttpResponse<String> done = choose("copy", firstCopy());

        assertThat(done.statusCode()).isEqualTo(200);
        assertThat(done.body()).contains("kept-aside");
        shown.get(20, TimeUnit.SECONDS);
        assertThat(houses()).containsExactlyInAnyOrder("Mill", "<b>Pond</b>");
    }

    @Test
    void truncatedFileIsCalledDamaged() throws Exception {
        Damage.truncate(folder, 6000);
        assertThat(pageOfTheDamage(Kind.DAMAGED)).contains("are damaged", "Begin with no houses");
        choose("begin", "");
        shown.get(20, TimeUnit.SECONDS);
        assertThat(houses()).isEmpty();
    }

    @Test
    void changedTextNamesTheHouseAndGivesTheOthers() throws Exception {
        Damage.changeText(folder);
        String page = pageOfTheDamage(Kind.DAMAGED);
        assertThat(page).contains("2 houses are not as they were stored", "<b>Pond</b>", "Mill");
        assertThat(get("/").body()).doesNotContain("<b>Pond");
    }

    @Test
    void missingFileIsMissed() throws Exception {
        Files.move(Damage.file(folder), folder.resolve("moved"));
        assertThat(pageOfTheDamage(Kind.MISSING)).contains("is missing", "Put it back", "Open the copy of");
        Files.move(folder.resolve("moved"), Damage.file(folder));
        choose("again", "");
        shown.get(20, TimeUnit.SECONDS);
        assertThat(houses()).hasSize(2);
    }

    @Test
    void olderFileMayBeGoneOnWith() throws Exception {
        byte[] older = Files.readAllBytes(Damage.file(folder));
        try (OpenStore store = new OpenStore(folder)) {
            store.drafts.create("Later", "{}");
        }
        Files.write(Damage.file(folder), older);
        assertThat(pageOfTheDamage(Kind.OLDER)).contains("are older", "Go on with the houses that are there");
        choose("go-on", "");
        shown.get(20, TimeUnit.SECONDS);
        assertThat(houses()).hasSize(2);
    }

    @Test
    void laterVersionIsTold() throws Exception {
        Damage.laterVersion(folder);
        assertThat(pageOfTheDamage(Kind.LATER_VERSION))
                .contains("a later version of Longrun", "Start the later Longrun")
                .doesNotContain("Begin with no houses");
        choose("copy", firstCopy());
        shown.get(20, TimeUnit.SECONDS);
        assertThat(houses()).hasSize(2);
    }

    @Test
    void copyOfALaterVersionIsNotOpened() throws Exception {
        Damage.laterVersion(folder);
        byte[] later = Files.readAllBytes(Damage.file(folder));
        pageOfTheDamage(Kind.LATER_VERSION);
        Path copy = folder.resolve("copies").resolve(firstCopy());
        try (var zip = new java.util.zip.ZipOutputStream(Files.newOutputStream(copy))) {
            zip.putNextEntry(new java.util.zip.ZipEntry("longrun.mv.db"));
            zip.write(later);
        }

        HttpResponse<String> refused = choose("copy", copy.getFileName().toString());

        assertThat(refused.statusCode()).isEqualTo(409);
        assertThat(refused.body()).contains("the copy is of a later version too");
        assertThat(Files.readAllBytes(Damage.file(folder))).isEqualTo(later);
    }

    @Test
    void changedMigrationIsTold() throws Exception {
        Damage.otherMigration(folder);
        assertThat(pageOfTheDamage(Kind.OTHER_VERSION)).contains("by a Longrun that differs from this one");
    }

    @Test
    void readOnlyDiskIsTold() throws Exception {
        assumeTrue(Damage.mountSmall(folder, 4_000), "skipped: root alone mounts");
        try {
            try (OpenStore store = new OpenStore(folder)) {
                store.drafts.create("Mill", "{}");
            }
            assumeTrue(Damage.remount(folder, "ro"), "skipped: it cannot be made read-only");
            assertThat(pageOfTheDamage(Kind.NOT_WRITABLE))
                    .contains("Longrun cannot write its houses", "Let Longrun write there", "Try again");
            choose("again", "");
            shown.get(20, TimeUnit.SECONDS);
        } finally {
            Damage.unmount(folder);
        }
    }

    @Test
    void fullDiskIsTold() throws Exception {
        assumeTrue(Damage.mountSmall(folder, 2_000), "skipped: root alone mounts");
        try {
            try (OpenStore store = new OpenStore(folder)) {
                store.drafts.create("Mill", "{}");
            }
            Files.write(
                    folder.resolve("ballast"),
                    new byte[(int) Files.getFileStore(folder).getUsableSpace() - 4_096]);
            assertThat(pageOfTheDamage(Kind.NO_ROOM)).contains("The disk is full", "Make room on it", "Try again");
            choose("again", "");
            shown.get(20, TimeUnit.SECONDS);
        } finally {
            Damage.unmount(folder);
        }
    }

    @Test
    void anotherPageCannotChoose() throws Exception {
        Damage.truncate(folder, 0);
        pageOfTheDamage(Kind.DAMAGED);

        assertThat(post("token=0&do=begin").statusCode()).isEqualTo(403);
        assertThat(post("token=" + token() + "&do=begin", "Sec-Fetch-Site", "cross-site")
                        .statusCode())
                .isEqualTo(403);
        assertThat(choose("copy", "..%2F..%2Fsecret.zip").statusCode()).isEqualTo(409);
        assertThat(choose("copy", "nothing").statusCode()).isEqualTo(409);
        assertThat(Damage.file(folder)).isEmptyFile();
    }

    @Test
    void otherNamesOfThisComputerAreNotAnswered() throws Exception {
        Damage.truncate(folder, 0);
        pageOfTheDamage(Kind.DAMAGED);
        assertThat(askedAs("elsewhere.example")).startsWith("HTTP/1.1 421").doesNotContain("token");
    }

    /** As the front door has them: {@code HostAndOriginFilterTest}. */
    @Test
    void namesGivenAtTheStartAreAnsweredInAnyCase() throws Exception {
        Damage.truncate(folder, 0);
        pageOfTheDamage(Kind.DAMAGED);
        for (String name :
                List.of("kitchen-computer", "other.example", "OTHER.EXAMPLE:80", "LocalHost", "[::1]:8080")) {
            assertThat(askedAs(name)).as(name).startsWith("HTTP/1.1 503").contains("token");
        }
    }

    /** As the front door has them: {@code HostAndOriginFilterTest}. */
    @Test
    void everyAnswerSaysHowABrowserTreatsIt() throws Exception {
        Damage.truncate(folder, 0);
        pageOfTheDamage(Kind.DAMAGED);
        for (String name : List.of("localhost", "elsewhere.example")) {
            assertThat(askedAs(name).toLowerCase(Locale.ROOT))
                    .as(name)
                    .contains("\r\nx-content-type-options: nosniff\r\n")
                    .contains("\r\nx-frame-options: deny\r\n")
                    .contains("\r\nreferrer-policy: no-referrer\r\n")
                    .contains("\r\ncross-origin-opener-policy: same-origin\r\n")
                    .contains("\r\ncross-origin-resource-policy: same-origin\r\n")
                    .contains("frame-ancestors 'none'");
        }
    }

    private String askedAs(String host) throws IOException {
        try (var socket = new java.net.Socket("127.0.0.1", port)) {
            socket.getOutputStream()
                    .write(("GET / HTTP/1.1\r\nHost: " + host + "\r\nConnection: close\r\n\r\n")
                            .getBytes(StandardCharsets.US_ASCII));
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Test
    void theServiceSaysTheSameAsJson() throws Exception {
        Damage.truncate(folder, 0);
        pageOfTheDamage(Kind.DAMAGED);
        HttpResponse<String> answer = get("/api/tables");
        assertThat(answer.statusCode()).isEqualTo(503);
        assertThat(new com.fasterxml.jackson.databind.ObjectMapper()
                        .readTree(answer.body())
                        .path("detail")
                        .asText())
                .contains("are damaged");
    }

    @Test
    void portInUseIsNoPage() throws Exception {
        try (ServerSocket taken = new ServerSocket(0, 1, java.net.InetAddress.getByName("127.0.0.1"))) {
            Damage.truncate(folder, 0);
            StoreTrouble trouble = Damage.trouble(folder).orElseThrow();
            MockEnvironment environment = new MockEnvironment()
                    .withProperty("longrun.data", folder.toString())
                    .withProperty("server.port", Integer.toString(taken.getLocalPort()));
            assertThatThrownBy(() -> TroublePage.showUntilChosen(trouble, environment))
                    .isInstanceOf(IOException.class);
        }
    }
}
