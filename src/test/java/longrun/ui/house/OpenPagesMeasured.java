package longrun.ui.house;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import longrun.Samples;
import longrun.browser.BrowserTest;
import longrun.store.DraftStore;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/**
 * Many pages open at once: what each costs, and that the one in hand still answers. The figures are printed and none of
 * them is judged by its time. The other pages are real ones, seven browsers with seven tabs each, each at a house of its
 * own and typed in once. Some minutes on a small machine, so it runs by its name only, not in every build.
 */
class OpenPagesMeasured extends BrowserTest {

    private static final int BROWSERS = Integer.getInteger("browsers", 7);
    private static final int TABS = 7;
    private static final int KEYS = 40;

    /** Common practice: a page is a few hundred kilobytes; ten times that would be a leak. */
    private static final double MOST_MB_A_PAGE = 4;

    @Autowired
    DraftStore store;

    private String newHouse() {
        return "/house/"
                + store.create("", Samples.text("data/demo/orchard-house.json")).id();
    }

    private static Page ready(Page page) {
        assertThat(page.locator(".saved")).containsText("Saved");
        return page;
    }

    private static double usedMb() {
        var memory = ManagementFactory.getMemoryMXBean();
        double least = Double.MAX_VALUE;
        for (int i = 0; i < 4; i++) {
            memory.gc();
            least = Math.min(least, memory.getHeapMemoryUsage().getUsed() / 1e6);
        }
        return least;
    }

    @Test
    void fiftyOpenPagesAllAnswer() {
        Page hand = ready(open(newHouse() + "/route", 1440));
        measure(hand, "Pipe route, warming up");
        String one = measure(hand, "Pipe route, 1 page open");
        String oneAppliances = measureAppliances(hand, "Appliances, 1 page open");
        double alone = usedMb();
        List<Page> pages = new ArrayList<>();
        for (int b = 0; b < BROWSERS; b++) {
            Page first = ready(open(newHouse() + "/route", 1440));
            pages.add(first);
            for (int t = 1; t < TABS; t++) {
                pages.add(ready(openBeside(first, newHouse() + "/route")));
            }
        }
        for (Page page : pages) {
            page.locator("#legs-1").press("End");
            page.keyboard().press("Backspace");
            assertThat(page.locator("#slot-run .f")).containsText("ft");
            assertThat(page.locator(".saved")).containsText("Saved");
        }
        double together = usedMb();
        hand.bringToFront();
        String fiftyAppliances = measureAppliances(hand, "Appliances, " + (BROWSERS * TABS + 1) + " pages open");
        String fifty = measure(hand, "Pipe route, " + (BROWSERS * TABS + 1) + " pages open");
        double each = (together - alone) / Math.max(1, pages.size());
        System.out.println(String.join("\n", one, oneAppliances, fifty, fiftyAppliances));
        System.out.printf(
                Locale.ROOT,
                "heap used after collection, MB: 1 page %.1f, all %.1f, each %.2f; load of the machine %.1f%n",
                alone,
                together,
                each,
                ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage());
        assertThat(pages).hasSize(BROWSERS * TABS);
        assertThat(each).as("MB a page").isLessThan(MOST_MB_A_PAGE);
    }

    private String measureAppliances(Page page, String what) {
        page.locator(".thread a[href$=appliances]").click();
        Locator field = page.locator("#e-appliances-0-input");
        field.fill("199000"); // without its comma it is a figure with one digit less too
        assertThat(page.locator("#e-appliances-0-input-said")).containsText("199,000 Btu/h");
        String said = measure(page, what, field, "#slot-load .f");
        page.locator(".thread a[href$=route]").click();
        page.waitForSelector("#legs-1");
        return said;
    }

    private static String measure(Page page, String what) {
        return measure(page, what, page.locator("#legs-1"), "#slot-run .f");
    }

    /** From a key to the changed figure, by the page's own clock; each key takes a digit away or gives it back. */
    private static String measure(Page page, String what, Locator field, String figure) {
        field.press("End");
        page.evaluate("""
                f => { window.took = []; const seen = document.querySelector(f).parentElement;
                  let at = 0, was = document.querySelector(f).textContent, heard = () => {};
                  window.keyed = () => { at = performance.now(); window.answer = new Promise((done) => { heard = done; }); };
                  document.addEventListener('keydown', window.keyed, true);
                  window.watch = new MutationObserver(() => {
                    const now = document.querySelector(f)?.textContent;
                    if (at && now && now !== was) { window.took.push(performance.now() - at); at = 0; was = now; heard(now); } });
                  window.watch.observe(seen, { childList: true, subtree: true, characterData: true }); }
                """, figure);
        String last = field.inputValue();
        last = last.substring(last.length() - 1);
        for (int i = 0; i < KEYS; i++) {
            assertThat(field).isFocused();
            page.keyboard().press(i % 2 == 0 ? "Backspace" : last);
            page.evaluate("Promise.race([answer, new Promise((late) => setTimeout(late, 20000))])");
            page.waitForTimeout(100);
        }
        double[] took = ((List<?>)
                        page.evaluate(
                                "() => { window.watch.disconnect(); document.removeEventListener('keydown', window.keyed, true); return window.took; }"))
                .stream().mapToDouble(n -> ((Number) n).doubleValue()).sorted().toArray();
        return String.format(
                Locale.ROOT,
                "%s: key to changed answer, ms: median %.0f, 95th percentile %.0f, slowest %.0f of %d",
                what,
                took[took.length / 2],
                took[(int) Math.ceil(took.length * 0.95) - 1],
                took[took.length - 1],
                took.length);
    }
}
