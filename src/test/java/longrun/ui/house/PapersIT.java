package longrun.ui.house;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Download;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import longrun.browser.BrowserTest;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The papers of a house in a browser: looked at, saved, and opened again as the house. */
class PapersIT extends BrowserTest {

    @ParameterizedTest
    @ValueSource(ints = {1440, 390})
    void thePapersAreLookedAtSavedAndOpenedAgainAsTheHouse(int width) {
        Page page = open("/houses", width, width == 390 ? ColorScheme.DARK : ColorScheme.LIGHT);
        page.getByText("Show the demo house").click();
        assertThat(page.locator(".thread-nav")).containsText("Papers");
        page.locator(".thread-nav a[href$='/papers']").click();
        assertThat(page.locator(".pages img").first()).isVisible();
        page.locator(".pages img").first().scrollIntoViewIfNeeded(); // pictures out of sight are not loaded
        page.waitForFunction("document.querySelector('.pages img').naturalWidth > 1000");
        assertAccessible(page);
        assertNoSidewaysScrolling(page);
        if (width == 390) {
            return;
        }
        Locator look = page.locator(".sheets li").last().locator("button");
        look.focus();
        page.keyboard().press("Enter");
        assertThat(page.locator(".preview h3")).isFocused();
        assertThat(page.locator(".preview")).containsText("as they will be printed");
        assertThat(look).hasAttribute("aria-pressed", "true");
        Download saved = page.waitForDownload(
                () -> page.locator(".sheets li").last().locator("a").first().click());
        Path pdf = saved.path().resolveSibling("parts.pdf");
        saved.saveAs(pdf);
        page.locator(".home").click();
        page.getByText("A whole house").click();
        page.waitForFileChooser(() ->
                        page.getByText("Open a plan file or a zip of them").click())
                .setFiles(pdf);
        assertThat(page.locator(".head h1")).hasText("Orchard house");
    }
}
