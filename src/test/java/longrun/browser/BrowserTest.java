package longrun.browser;

import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.boot.test.web.server.LocalServerPort;

/** A program started within the test, on a free port and with houses of its own, and a Chromium to look at it with. */
@SpringBootTest(
        webEnvironment = WebEnvironment.RANDOM_PORT,
        properties = "longrun.data=target/browser-houses/${random.uuid}")
public abstract class BrowserTest extends Browsing {

    @LocalServerPort
    private int port;

    @Override
    protected String address(String path) {
        return "http://127.0.0.1:" + port + path;
    }
}
