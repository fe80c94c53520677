package longrun.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.HttpURLConnection;
import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import longrun.http.Service.Answer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;

/** Who is let in (RFC 9110 section 15.5.20 for 421; RFC 6454 for origins), and what a browser is told. */
@SpringBootTest(
        webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT,
        properties = {"longrun.hosts=kitchen-computer, Other.example", "longrun.limits.sessions=5"})
class HostAndOriginFilterTest {

    private static final String UPGRADE =
            "Upgrade: websocket\r\nSec-WebSocket-Version: 13\r\n" + "Sec-WebSocket-Key: dGhlIHNhbXBsZSBub25jZQ==";
    private static final String PLAN = "{\"format\":\"longrun-plan/1\"}";
    private static final String JSON = "Content-Type: application/json";

    @LocalServerPort
    private int port;

    private Answer get(String path, String... headers) throws IOException {
        return Service.ask(port, "GET", path, "", headers);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/",
                "/houses",
                "/run",
                "/frontend/look.css",
                "/api/tables",
                "/api/none-such",
                "/error",
                "/?v-r=init",
                "/VAADIN/push?v-r=push"
            })
    void anotherNameThatResolvesToThisComputerGetsNothing(String path) throws Exception {
        for (String host : List.of("evil.example:" + port, "evil.example", "localhost.evil.example", "127.0.0.2")) {
            Answer answer = get(path, "Host: " + host);
            assertThat(answer.status()).as(host + path).isEqualTo(421);
            assertThat(answer.body()).startsWith("Longrun answers only to localhost");
            assertThat(answer.header("Set-Cookie")).isEmpty();
        }
        assertThat(get(path, "Host: evil.example", UPGRADE).status()).isEqualTo(421);
    }

    @Test
    void theNameAnAddressLineGivesCountsToo() throws Exception {
        assertThat(get("http://evil.example/", "Host: localhost").status()).isIn(400, 421);
    }

    @ParameterizedTest
    @ValueSource(strings = {"localhost", "LocalHost", "127.0.0.1", "[::1]", "kitchen-computer", "other.example"})
    void itsOwnNamesAreAnswered(String host) throws Exception {
        assertThat(get("/", "Host: " + host + ":" + port).status()).isEqualTo(200);
        assertThat(get("/api/tables", "Host: " + host).status()).isEqualTo(200);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "http://evil.example",
                "null",
                "http://localhost",
                "http://localhost:1",
                "http://localhost:1@localhost",
                "https://localhost.evil.example",
                "localhost"
            })
    void aPageOfAnotherOriginIsRefused(String origin) throws Exception {
        String host = "Host: localhost:" + port;
        String from = "Origin: " + origin;
        assertThat(Service.ask(port, "POST", "/api/review", PLAN, host, from, JSON)
                        .status())
                .isEqualTo(403);
        assertThat(Service.ask(port, "POST", "/?v-r=uidl&v-uiId=0", "{}", host, from, JSON)
                        .status())
                .isEqualTo(403);
        assertThat(get("/VAADIN/push?v-r=push", host, from, UPGRADE).status()).isEqualTo(403);
        assertThat(get("/houses", host, from).status()).isEqualTo(403);
    }

    @Test
    void itsOwnPagesAndProgramsThatAreNoPageAreAnswered() throws Exception {
        String host = "Host: localhost:" + port;
        String own = "Origin: http://localhost:" + port;
        assertThat(Service.ask(port, "POST", "/api/review", PLAN, host, own, JSON)
                        .status())
                .isEqualTo(200);
        assertThat(Service.ask(port, "POST", "/api/review", PLAN, host, JSON).status())
                .isEqualTo(200);
    }

    /** Fetch metadata (W3C): what a page of another site loads carries no Origin, but says where it comes from. */
    @ParameterizedTest
    @CsvSource({
        "cross-site, no-cors, image, 403",
        "same-site, no-cors, script, 403",
        "cross-site, navigate, iframe, 403",
        "cross-site, navigate, document, 200",
        "none, navigate, document, 200",
        "same-origin, cors, empty, 200"
    })
    void aPageOfAnotherSiteMayLinkHereAndNothingElse(String site, String mode, String dest, int status)
            throws Exception {
        assertThat(get(
                                "/houses",
                                "Host: localhost:" + port,
                                "Sec-Fetch-Site: " + site,
                                "Sec-Fetch-Mode: " + mode,
                                "Sec-Fetch-Dest: " + dest)
                        .status())
                .isEqualTo(status);
    }

    @Test
    void aPageSaysWhatItMayLoadAndThatItStandsInNoFrame() throws Exception {
        Answer page = get("/houses", "Host: localhost:" + port);
        String policy = page.header("Content-Security-Policy").orElseThrow();
        assertThat(policy.split("; *"))
                .contains("default-src 'none'", "frame-ancestors 'none'", "connect-src 'self'", "base-uri 'self'");
        Matcher nonce = Pattern.compile("script-src 'self' 'nonce-([^']{20,})' 'unsafe-eval';")
                .matcher(policy);
        assertThat(nonce.find()).as(policy).isTrue();
        assertThat(policy.substring(policy.indexOf("script-src"), policy.indexOf("style-src")))
                .doesNotContain("unsafe-inline");
        assertThat(page.body()).contains("nonce=\"" + nonce.group(1) + "\"");
        assertThat(get("/houses", "Host: localhost:" + port)
                        .header("Content-Security-Policy")
                        .orElseThrow())
                .as("each answer its own nonce")
                .isNotEqualTo(policy);
        assertThat(page.header("Set-Cookie").orElseThrow()).contains("HttpOnly").contains("SameSite=Strict");
    }

    @ParameterizedTest
    @ValueSource(strings = {"/", "/frontend/look.css", "/api/tables", "/api/none-such"})
    void everyAnswerSaysHowABrowserTreatsIt(String path) throws Exception {
        Answer answer = get(path, "Host: localhost:" + port);
        assertThat(answer.header("X-Content-Type-Options")).contains("nosniff");
        assertThat(answer.header("Referrer-Policy")).contains("no-referrer");
        assertThat(answer.header("Content-Security-Policy").orElse("")).contains("frame-ancestors 'none'");
    }

    @Test
    void theErrorPageIsNoPageToAskFor() throws Exception {
        assertThat(get("/error", "Host: localhost:" + port).status()).isEqualTo(404);
        assertThat(get("/error", "Host: localhost:" + port, "Accept: text/html").status())
                .isEqualTo(404);
    }

    /** Five visitors that never came back are kept; the sixth drives out the first, never one that did come back. */
    @Test
    void aVisitorThatCameBackOutlastsThoseThatDidNot() throws Exception {
        String first = newVisitor();
        assertThat(isKnown(first)).isTrue();
        String once = newVisitor();
        List<String> more = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            more.add(newVisitor());
        }
        assertThat(isKnown(once)).as("the oldest that never came back").isFalse();
        assertThat(isKnown(first)).isTrue();
        assertThat(isKnown(more.get(4))).isTrue();
    }

    private String newVisitor() throws IOException {
        String cookie = get("/", "Host: localhost:" + port).header("Set-Cookie").orElseThrow();
        return cookie.substring(0, cookie.indexOf(';'));
    }

    /** Whoever is known gets no new cookie. */
    private boolean isKnown(String cookie) throws IOException {
        var asked = (HttpURLConnection)
                URI.create("http://localhost:" + port + "/").toURL().openConnection();
        asked.setRequestProperty("Cookie", cookie);
        assertThat(asked.getResponseCode()).isEqualTo(200);
        return asked.getHeaderField("Set-Cookie") == null;
    }
}
