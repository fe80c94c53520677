package longrun.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.Rule;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.ColorScheme;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.TestInstance;

/**
 * A Chromium to look at a program with, whoever started it. Every test has pages of its own; what a page says in its
 * console as an error is collected, and a test that leaves one behind fails.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
public abstract class Browsing {

    private static final Path SCREENSHOTS = Path.of("target", "screenshots");

    private Playwright playwright;
    private Browser browser;
    private final List<BrowserContext> contexts = new ArrayList<>();
    private final List<String> errors = new ArrayList<>();

    @BeforeAll
    void startBrowser() throws IOException {
        PlaywrightAssertions.setDefaultAssertionTimeout(20_000); // a shared machine may be slow; no fact hangs on it
        playwright = playwright();
        browser = launch(playwright);
    }

    /** What drives a browser; it brings none of its own. */
    public static Playwright playwright() {
        Map<String, String> env = new HashMap<>(System.getenv());
        env.put("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1");
        return Playwright.create(new Playwright.CreateOptions().setEnv(env));
    }

    /** The browser that was found or installed for the tests. */
    public static Browser launch(Playwright playwright) throws IOException {
        return playwright
                .chromium()
                .launch(new BrowserType.LaunchOptions()
                        .setExecutablePath(chromium())
                        .setArgs(List.of(
                                "--no-sandbox",
                                "--disable-gpu",
                                "--disable-quic",
                                "--no-first-run",
                                "--disable-background-networking",
                                "--disable-component-update",
                                "--disable-sync")));
    }

    private static Path chromium() throws IOException {
        String file = System.getProperty("longrun.chromium");
        if (file != null && Files.exists(Path.of(file))) {
            return Path.of(Files.readString(Path.of(file)).strip());
        }
        return Path.of("/usr/bin/chromium");
    }

    @AfterAll
    void stopBrowser() {
        browser.close();
        playwright.close();
    }

    /** Closes every page; whoever stops the program itself closes them before, or they say that nobody answers. */
    @AfterEach
    protected void closePages() {
        contexts.forEach(BrowserContext::close);
        contexts.clear();
        List<String> seen = List.copyOf(errors);
        errors.clear();
        assertThat(seen).as("errors in the browser's console").isEmpty();
    }

    /** Where the program answers. */
    protected abstract String address(String path);

    /** A page in a browser of its own, light. */
    protected Page open(String path, int width) {
        return open(path, width, ColorScheme.LIGHT);
    }

    protected Page open(String path, int width, ColorScheme scheme) {
        BrowserContext context = browser.newContext(new Browser.NewContextOptions()
                .setViewportSize(width, width < 500 ? 844 : 900)
                .setHasTouch(width < 500)
                .setColorScheme(scheme)
                .setAcceptDownloads(true));
        contexts.add(context);
        return goTo(context.newPage(), path);
    }

    /** Another page in the same browser. */
    protected Page openBeside(Page page, String path) {
        return goTo(page.context().newPage(), path);
    }

    private Page goTo(Page page, String path) {
        page.onConsoleMessage(m -> {
            if (m.type().equals("error")) {
                errors.add(m.text());
            }
        });
        page.onPageError(errors::add);
        page.navigate(address(path));
        return page;
    }

    /** For a test that stops the answers on purpose: the browser's own lines about them are no fault of the page. */
    protected void forgetNetworkErrors() {
        errors.removeIf(e -> e.startsWith("Failed to load resource"));
    }

    /** WCAG 2.0, 2.1 and 2.2, A and AA. */
    protected void assertAccessible(Page page) {
        boolean dark = (boolean) page.evaluate("matchMedia('(prefers-color-scheme: dark)').matches");
        List<Rule> violations =
                (dark ? ofColour(page) : ofEverything(page)).analyze().getViolations();
        assertThat(violations)
                .as("violations of WCAG A and AA")
                .extracting(r -> r.getId() + ": " + r.getNodes())
                .isEmpty();
    }

    private static AxeBuilder ofEverything(Page page) {
        return new AxeBuilder(page)
                .withTags(List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22a", "wcag22aa"));
    }

    /** In the dark nothing but the colours differs from the light page, which is looked at whole. */
    private static AxeBuilder ofColour(Page page) {
        return new AxeBuilder(page).withRules(List.of("color-contrast", "link-in-text-block"));
    }

    protected void assertNoSidewaysScrolling(Page page) {
        assertThat(((Number) page.evaluate("document.documentElement.scrollWidth - innerWidth")).intValue())
                .as("pixels the page is wider than the window")
                .isLessThanOrEqualTo(0);
    }

    /** Kept under target/screenshots for a person to look at, where {@code -Dlongrun.screenshots=true} asks for it. */
    protected void screenshot(Page page, String name) {
        if (!Boolean.getBoolean("longrun.screenshots")) {
            return;
        }
        page.screenshot(new Page.ScreenshotOptions()
                .setPath(SCREENSHOTS.resolve(name + ".png"))
                .setFullPage(true));
    }
}
