package longrun.ui.house;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import longrun.browser.BrowserTest;
import longrun.store.DraftStore;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** A house of 150 appliances and 300 sections in a browser: what is come to has fields, by mouse, key and scroll. */
class BigHouseIT extends BrowserTest {

    @Autowired
    DraftStore store;

    private Page big(String place) {
        Page page = open("/house/" + store.create("", BigHouse.json(150, 300)).id() + "/" + place, 1440);
        assertThat(page.locator(".saved")).containsText("Saved");
        return page;
    }

    @Test
    void lineComeToBelowHasFieldsAndAnswers() {
        Page page = big("route");
        assertThat(page.locator("#legs-150")).hasCount(0);
        Locator line = page.locator(".lines.route tbody").nth(150);
        line.scrollIntoViewIfNeeded();
        assertThat(page.locator("#legs-150")).hasCount(1);
        page.locator("#legs-150").fill("north 7");
        assertThat(page.locator("#legs-150-said")).containsText("7.0 ft");
        page.keyboard().press("ArrowDown");
        assertThat(page.locator("#legs-151")).isFocused();
        assertThat((Integer) page.evaluate("document.querySelectorAll('.lines.route .main .in').length"))
                .isLessThan(300);
    }

    @Test
    void lineOfTextTakenByAKeyPutsTheCursorInItsLegs() {
        Page page = big("route");
        page.locator(".lines.route tbody").nth(200).locator("tr.text").focus();
        assertThat(page.locator("#legs-200")).isFocused();
    }

    @Test
    void applianceComeToBelowHasFields() {
        Page page = big("appliances");
        assertThat(page.locator("#e-appliances-0-input")).hasCount(1);
        assertThat(page.locator("#e-appliances-100-input")).hasCount(0);
        page.locator(".appliances > *").nth(100).scrollIntoViewIfNeeded();
        assertThat(page.locator("#e-appliances-100-input")).hasCount(1);
        page.locator("#e-appliances-100-input").fill("66k");
        assertThat(page.locator("#e-appliances-100-input-said")).containsText("66,000 Btu/h");
    }
}
