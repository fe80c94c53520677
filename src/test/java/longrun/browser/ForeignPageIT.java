package longrun.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.sun.net.httpserver.HttpServer;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A page of another origin in the same browser: it neither reads nor changes. */
class ForeignPageIT extends BrowserTest {

    private static final String READ =
            "url => fetch(url, {credentials: 'include'}).then(r => r.text(), () => 'refused')";
    private static final String CHANGE = "url => fetch(url, {method: 'POST', mode: 'no-cors', credentials: 'include',"
            + " body: '{}'}).then(r => r.type + r.status, () => 'refused')";
    private static final String LOADS = "url => new Promise(done => { const it = document.createElement('script');"
            + " it.onload = () => done(true); it.onerror = () => done(false); it.src = url; document.body.append(it); })";

    private HttpServer elsewhere;

    @BeforeEach
    void startElsewhere() throws Exception {
        elsewhere = HttpServer.create(new InetSocketAddress(InetAddress.getByName("127.0.0.1"), 0), 0);
        elsewhere.createContext("/", exchange -> {
            byte[] page = ("<!doctype html><title>Elsewhere</title><h1>Elsewhere</h1><iframe src='" + address("/houses")
                            + "'></iframe>")
                    .getBytes(StandardCharsets.UTF_8);
            exchange.getResponseHeaders().set("Content-Type", "text/html");
            exchange.sendResponseHeaders(200, page.length);
            exchange.getResponseBody().write(page);
            exchange.close();
        });
        elsewhere.start();
    }

    @AfterEach
    void stopElsewhere() {
        elsewhere.stop(0);
    }

    @Test
    void neitherReadsNorChanges() {
        Page own = open("/houses", 1440);
        assertThat(own.locator("h1")).isVisible();
        Page foreign = own.context().newPage();
        foreign.navigate("http://localhost:" + elsewhere.getAddress().getPort() + "/");
        assertThat(foreign.locator("h1")).hasText("Elsewhere");
        for (String path : new String[] {"/houses", "/api/tables", "/?v-r=init"}) {
            assertThat(foreign.evaluate(READ, address(path))).as(path).isEqualTo("refused");
        }
        assertThat(foreign.evaluate(CHANGE, address("/?v-r=uidl&v-uiId=0"))).isIn("refused", "opaque0");
        assertThat(foreign.evaluate(LOADS, address("/frontend/keep.js"))).isEqualTo(false);
        assertThat(foreign.frames().get(1).content()).doesNotContain("<vaadin").doesNotContain("Longrun</");
        assertThat(URI.create(own.url()).getPath()).isEqualTo("/houses");
        own.reload();
        assertThat(own.locator("h1")).isVisible();
    }

    /** A name that resolves to this computer makes the other page's origin look like this one: its name gives it away. */
    @Test
    void aNameThatResolvesHereReadsNothing() {
        Page page = open("/houses", 1440);
        assertThat(page.locator("h1")).isVisible();
        Page rebound = page.context().newPage();
        var answer = rebound.navigate(address("/houses").replace("127.0.0.1", "rebound.localhost"));
        assertThat(answer.status()).isEqualTo(421);
        assertThat(rebound.content()).contains("Longrun answers only to localhost");
    }
}
