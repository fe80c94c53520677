package longrun.ui.house.route;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.google.gson.JsonObject;
import com.microsoft.playwright.CDPSession;
import com.microsoft.playwright.Page;
import longrun.browser.BrowserTest;
import longrun.store.DraftStore;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** A fitter types faster than the program answers, on a computer four times slower than this one: nothing goes astray. */
class TypeAheadIT extends BrowserTest {

    private static final String HOUSE = """
            {"format":"longrun-plan/1","name":"Fast hands",
             "regulators":[{"id":"R1","kind":"integral-two-stage","fedBy":"tank","outlet":"11 in w.c.","allowedDrop":"0.5 in w.c."}],
             "appliances":[
              {"id":"heater","kind":"on-demand-water-heater","input":"199000 Btu/h"},
              {"id":"range","kind":"range","input":"65000 Btu/h"},
              {"id":"furnace","kind":"furnace","input":"60000 Btu/h"},
              {"id":"dryer","kind":"clothes-dryer","input":"22000 Btu/h"}]}
            """;

    @Autowired
    DraftStore store;

    private Page slow(String place) {
        Page page = open("/house/" + store.create("", HOUSE).id() + "/" + place, 1440);
        assertThat(page.locator(".saved")).containsText("Saved");
        CDPSession session = page.context().newCDPSession(page);
        JsonObject rate = new JsonObject();
        rate.addProperty("rate", 4);
        session.send("Emulation.setCPUThrottlingRate", rate);
        return page;
    }

    @Test
    void fiveLinesAreTypedWithoutWaitingForAnAnswer() {
        for (int round = 0; round < 2; round++) {
            Page page = slow("route");
            page.locator("#legs-0").focus();
            page.keyboard().type("n 2, u 4, e 14");
            String[][] lines = {{"on", "n 8, d 3"}, {"", "e 12"}, {"ra", "n 10, d 5"}, {"fu", "e 8, d 5"}};
            for (String[] line : lines) {
                page.keyboard().press("Enter");
                page.keyboard().type(line[0]);
                page.keyboard().press("Tab");
                page.keyboard().type(line[1]);
            }
            String[] feeds = {"", "app:heater", "", "app:range", "app:furnace"};
            String[] feet = {"20", "11", "12", "15", "13"};
            for (int i = 0; i < feet.length; i++) {
                assertThat(page.locator(".lines.route tbody").nth(i).locator("td.feet"))
                        .hasText(feet[i]);
                assertThat(page.locator("#feeds-" + i)).hasValue(feeds[i]);
            }
            assertThat(page.locator("#legs-0")).hasValue("n 2, u 4, e 14");
            assertThat(page.locator("#from-3")).hasValue("C");
            assertThat(page.locator("#slot-load")).containsText("346,000");
            // What the program heard, not what the page shows: the same after a reload.
            page.reload();
            assertThat(page.locator(".saved")).containsText("Saved");
            for (int i = 0; i < feet.length; i++) {
                assertThat(page.locator("#feeds-" + i)).hasValue(feeds[i]);
            }
        }
    }

    @Test
    void theThreadIsFollowedFromAFieldStillBeingHeard() {
        Page page = slow("appliances");
        for (int i = 0; i < 4; i++) {
            page.locator("#e-appliances-0-input").focus();
            page.keyboard().press("End");
            page.keyboard().press(i % 2 == 0 ? "0" : "Backspace");
            page.keyboard().press(i % 2 == 0 ? "Backspace" : "0");
            page.locator(".thread a[href$=route]").focus();
            assertThat(page.locator(".thread a[href$=route]")).isFocused();
            page.keyboard().press("Enter");
            assertThat(page.locator("h2.place")).hasText("Pipe route");
            assertThat(page.locator("#legs-0")).isVisible();
            page.locator("#legs-0").focus();
            page.keyboard().type("n");
            page.keyboard().press("Backspace");
            page.locator(".thread a[href$=appliances]").focus();
            page.keyboard().press("Enter");
            assertThat(page.locator("h2.place")).hasText("Appliances");
        }
    }
}
