package longrun.ui.house;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import longrun.Samples;
import longrun.browser.BrowserTest;
import longrun.store.DraftStore;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;

/** An owner with a gauge reading in hand, in the browser: when to call, how long a fill lasts, what the cold does. */
class TankAndFuelIT extends BrowserTest {

    @Autowired
    DraftStore store;

    private Page openPlace(String place, int width, ColorScheme scheme) {
        String json = Samples.text("data/demo/orchard-house.json")
                .replace(
                        "\"leadDays\": 7", "\"leadDays\": 7, \"unreachable\": [{\"from\":\"01-04\",\"to\":\"01-17\"}]");
        long id = store.create("Orchard house", json).id();
        Page page = open("/house/" + id + "/" + place, width, scheme);
        page.waitForSelector(".pan-box svg");
        page.waitForFunction("document.querySelector('.saved').textContent.includes('Saved')");
        return page;
    }

    private static void go(Page page, String place) {
        page.locator(".thread a[href$='/" + place + "']").click();
    }

    @Test
    void aGaugeReadingTellsWhenToCallAndHowLongAFillLasts() {
        Page page = openPlace("tank", 1440, ColorScheme.LIGHT);
        page.locator("#e-tank-gauge").fill("45");
        page.locator("#e-tank-gaugeDate").fill("2026-10-20");
        assertThat(page.locator("#fig-now .f")).hasText("225 gal");
        go(page, "fuel");
        assertThat(page.locator("#fig-coldest")).containsText("A fill lasts, in January");
        assertThat(page.locator("#fig-coldest .f")).containsText("days");
        assertThat(page.locator("#fig-warmest")).containsText("A fill lasts, in July");
        assertThat(page.locator("#fig-warmest .f")).hasText("over a year");
        assertThat(page.locator("#fig-call .f")).containsText("2026");
        assertThat(page.locator(".pan-box svg title").first()).containsText("call by");
    }

    @Test
    void theVapourFollowsTheSliderFromTheKeyboardAndNothingIsKeptUnasked() {
        Page page = openPlace("tank", 1440, ColorScheme.LIGHT);
        assertThat(page.locator("#fig-rule .f")).hasText("433,000 Btu/h");
        Locator air = page.locator("#play-air");
        air.focus();
        for (int i = 0; i < 8; i++) {
            page.keyboard().press("ArrowLeft");
        }
        assertThat(page.locator(".play").nth(1).locator("output")).hasText("0 \u00b0F");
        assertThat(page.locator("#fig-rule .f")).hasText("309,000 Btu/h");
        assertThat(page.locator("#e-tank-gauge")).hasValue("62");
        page.locator("#play-gauge").focus();
        page.keyboard().press("ArrowRight");
        page.getByText("Keep this reading").click();
        assertThat(page.locator("#e-tank-gauge")).hasValue("31");
    }

    @Test
    void aShowerAnswersToSliderAndValvesFromTheKeyboard() {
        Page page = openPlace("hot-water", 1440, ColorScheme.LIGHT);
        Locator said = page.locator(".evening");
        assertThat(said).containsText("In series: comfortable for all 60 minutes");
        page.locator("input[name=positions]").first().focus();
        page.keyboard().press("ArrowDown");
        assertThat(said).containsText("On-demand alone");
        page.keyboard().press("ArrowDown");
        assertThat(said).containsText("Storage alone: ");
        assertThat(page.locator(".pan-box svg title").first()).containsText("closed 3 4 5");
        page.locator("#play-minutes").focus();
        page.keyboard().press("Home");
        assertThat(said).containsText("comfortable for all 1 minute.");
        page.keyboard().press("End");
        assertThat(said).containsText("of 120 minutes are comfortable");
        assertThat(page.locator("#e-use-hotWater-storage-setTemp")).hasValue("140");
    }

    @ParameterizedTest
    @CsvSource({"1440,LIGHT", "1440,DARK", "390,LIGHT", "390,DARK"})
    void tankFuelAndHotWaterCanBeReadByEverybody(int width, ColorScheme scheme) {
        for (String place : new String[] {"tank", "fuel", "hot-water"}) {
            Page page = openPlace(place, width, scheme);
            assertThat(page.locator(".pan-box svg").first()).isVisible();
            assertAccessible(page);
            assertNoSidewaysScrolling(page);
            screenshot(page, place + "-" + width + "-" + scheme.name().toLowerCase(java.util.Locale.ROOT));
        }
    }
}
