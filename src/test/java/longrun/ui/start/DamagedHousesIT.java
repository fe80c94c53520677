package longrun.ui.start;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Download;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import longrun.browser.Browsing;
import longrun.browser.OwnProgram;
import longrun.store.Damage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The whole program on houses that were damaged while it was off: the page, the choice, and the houses back. */
class DamagedHousesIT extends Browsing {

    @TempDir
    Path folder;

    private OwnProgram program;

    @Override
    protected String address(String path) {
        return program.address(path);
    }

    @AfterEach
    void stopTheProgram() throws InterruptedException {
        try {
            closePages();
        } finally {
            program.close();
        }
    }

    private void start() throws IOException, InterruptedException {
        program = OwnProgram.start(folder, OwnProgram.freePort());
    }

    @Test
    void damageIsSaidOnThePageAndTheCopyOfTheDayComesBack() throws Exception {
        start();
        Page page = open("/houses", 1440);
        page.getByText("Show the demo house").click();
        page.waitForURL("**/house/*/house");
        assertThat(page.locator(".saved")).containsText("Saved");
        program.kill();
        start(); // this start makes the copy
        program.kill();
        page.close();
        Damage.truncate(folder, 9_000); // its two heads and the beginning of what it holds

        program = OwnProgram.startDamaged(folder, OwnProgram.freePort());
        Page damaged = open("/houses", 1440);
        assertThat(damaged.locator("h2")).hasText("The saved houses are damaged");
        assertAccessible(damaged);
        screenshot(damaged, "damaged-light-1440");
        screenshot(open("/houses", 1440, ColorScheme.DARK), "damaged-dark-1440");
        Page phone = open("/houses", 390, ColorScheme.DARK);
        screenshot(phone, "damaged-dark-390");
        assertNoSidewaysScrolling(phone);
        assertAccessible(phone);
        screenshot(open("/houses", 390, ColorScheme.LIGHT), "damaged-light-390");
        assertThat(OwnProgram.said(folder))
                .contains("are damaged", "Open the last copy")
                .doesNotContain("\tat ");

        damaged.locator("button.act.main").click();

        damaged.waitForURL("**/houses");
        assertThat(damaged.locator(".houses li")).hasCount(1);
        assertThat(damaged.locator(".houses li a").first()).containsText("Orchard");
        damaged.waitForTimeout(500); // what the other pages tried meanwhile is told by then
        forgetNetworkErrors(); // the page of damage is a 503, and while Longrun started again nothing answered
    }

    @Test
    void housesAreSavedAndOpenedAgainInTheBrowser() throws Exception {
        start();
        Page page = open("/houses", 1440);
        page.getByText("Show the demo house").click();
        page.waitForURL("**/house/*/house");
        page.navigate(address("/houses"));
        Download one = page.waitForDownload(
                () -> page.getByText("Save the plan file").first().click());
        assertThat(one.suggestedFilename()).endsWith(".json");
        Download all =
                page.waitForDownload(() -> page.getByText("Save all houses").click());
        assertThat(all.suggestedFilename()).startsWith("houses-").endsWith(".zip");
        Path zip = folder.resolve("houses.zip");
        all.saveAs(zip);

        page.waitForFileChooser(() ->
                        page.getByText("Open a plan file or a zip of them").click())
                .setFiles(zip);

        assertThat(page.locator(".said-list")).hasText("One house was opened.");
        assertThat(page.locator(".houses li")).hasCount(2);
        screenshot(page, "houses-light-1440");
        assertAccessible(page);
        page.setViewportSize(390, 844);
        assertNoSidewaysScrolling(page);
        screenshot(page, "houses-light-390");
        page.waitForFileChooser(() ->
                        page.getByText("Open a plan file or a zip of them").click())
                .setFiles(Files.write(folder.resolve("none.zip"), new byte[] {1, 2}));
        assertThat(page.locator(".said-list")).containsText("none.zip was not opened: it cannot be read as a zip.");
    }

    @Test
    void secondProgramWithTheSameHousesSaysSoAndPortInUseIsOneLine() throws Exception {
        start();
        Path second = Files.createDirectory(folder.resolve("second"));
        String port = OwnProgram.runToItsEnd(folder, second, program.port());
        assertThat(port)
                .contains("Another Longrun is already running with the saved houses in")
                .doesNotContain("\tat ");
        String other = OwnProgram.runToItsEnd(second, second, program.port());
        assertThat(other).contains("Port " + program.port() + " is in use").doesNotContain("\tat ");
    }
}
