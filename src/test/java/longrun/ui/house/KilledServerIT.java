package longrun.ui.house;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.io.IOException;
import java.nio.file.Path;
import longrun.browser.Browsing;
import longrun.browser.OwnProgram;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program killed while a house is typed: what the page called saved is there when it is started again. */
class KilledServerIT extends Browsing {

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

    private String beginHouse(Page page) {
        page.getByText("A whole house").click();
        page.getByText("Begin a new house").click();
        page.waitForURL("**/house/*/house");
        assertThat(page.locator(".saved")).containsText("Saved");
        return page.url().replaceAll("^https?://[^/]+", "");
    }

    /** Opened by another browser, which has kept nothing of its own. */
    private Page openAfresh(String house) {
        Page page = open(house, 1440);
        assertThat(page.locator(".saved")).containsText("Saved");
        return page;
    }

    /** Everything typed has been heard and stored: the browser keeps nothing back, and the page says Saved. */
    private static void acknowledged(Page page) {
        page.waitForFunction("() => document.querySelector('.saved').textContent.startsWith('Saved')"
                + " && !Object.keys(localStorage).some(k => k.endsWith(':unsent'))");
    }

    @Test
    void everyEntryCalledSavedOutlivesTheProgramAndCanBeUndone() throws IOException, InterruptedException {
        int port = OwnProgram.freePort();
        program = OwnProgram.start(folder, port);
        Page page = open("/", 1440);
        String house = beginHouse(page);
        page.locator("#e-site-elevation").pressSequentially("1450");
        page.getByText("10 psi line to a regulator on the wall").click();
        page.locator(".thread a[href$=appliances]").click();
        page.locator("#add-kind").selectOption("range");
        assertThat(page.locator("#e-appliances-0-input")).isFocused();
        page.keyboard().type("65,000");
        assertThat(page.locator("#e-appliances-0-input-said")).containsText("65,000 Btu/h");
        page.locator(".thread a[href$=house]").click();
        String name = "The house on the hill above the orchard, with the barn";
        page.locator("#e-name").pressSequentially(name.substring(0, 20));
        assertThat(page.locator(".head h1")).hasText(name.substring(0, 20).strip());
        acknowledged(page);
        page.keyboard().type(name.substring(20)); // and in the midst of these it is killed
        program.kill();
        page.context().setOffline(true);
        // The head line holds what it has answered.
        String answered = page.locator(".head h1").textContent();

        program = OwnProgram.start(folder, port);
        Page again = openAfresh(house);
        String stored = again.locator("#e-name").inputValue();
        assertThat(name).startsWith(stored);
        assertThat(stored).startsWith(answered);
        assertThat(again.locator("#e-site-elevation")).hasValue("1450");
        assertThat(again.locator("#e-regulators-0-outlet")).hasValue("10");
        again.locator(".thread a[href$=appliances]").click();
        Locator input = again.locator("#e-appliances-0-input");
        assertThat(input).hasValue("65,000");
        Locator undo = again.locator(".head button:has-text('Undo')");
        undo.click();
        assertThat(again.locator(".head h1")).hasText("House without a name");
        undo.click();
        assertThat(input).hasValue("");
        undo.click();
        assertThat(again.locator(".appliance")).hasCount(0);
        for (int i = 0; i < 3; i++) {
            again.locator(".head button:has-text('Redo')").click();
        }
        assertThat(input).hasValue("65,000");
        assertThat(again.locator(".head h1")).hasText(stored.strip());
        again.close();

        // The browser it was typed in still has the rest, and hands it over.
        page.context().setOffline(false);
        page.reload();
        assertThat(page.locator("#e-name")).hasValue(name);
        assertThat(page.locator(".head h1")).hasText(name);
        forgetNetworkErrors();
    }
}
