package longrun.ui.fill;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.io.IOException;
import java.util.regex.Pattern;
import longrun.browser.BrowserTest;
import longrun.ui.frame.Caution;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** How long a fill lasts in the browser: an owner with a gauge reading, a bill and a tank size in hand. */
class FillViewIT extends BrowserTest {

    private static String focused(Page page) {
        return String.valueOf(page.evaluate("document.activeElement.id || document.activeElement.name"));
    }

    private static void tabTo(Page page, String id) {
        for (int i = 0; i < 45 && !focused(page).equals(id); i++) {
            page.keyboard().press("Tab");
        }
        assertThat(focused(page)).isEqualTo(id);
    }

    /** From the first page by keyboard alone to the day to call; then print, other widths and the other theme. */
    @Test
    void theDayToCallByIsFoundByKeyboardFromTheFirstPage() throws IOException {
        Page page = open("/", 1440);
        assertThat(page.locator(".door b"))
                .hasText(new String[] {"Size a run", "How long does a fill last", "A whole house"});
        assertNoSidewaysScrolling(page);
        screenshot(page, "doors-1440");
        page.keyboard().press("Tab");
        for (int i = 0; i < 12 && !page.locator("a.door[href=fill]:focus").isVisible(); i++) {
            page.keyboard().press("Tab");
        }
        page.keyboard().press("Enter");
        assertThat(page.locator(".saved")).containsText("Saved");
        assertThat(page.locator(".state")).hasText("Nothing to work out yet");
        assertAccessible(page);
        screenshot(page, "fill-1440-1-empty");
        tabTo(page, "tank");
        page.keyboard().press("ArrowLeft");
        page.keyboard().press("ArrowRight");
        tabTo(page, "fill-gauge");
        page.keyboard().type("62");
        assertThat(page.locator("#fill-gauge-date")).not().hasValue("");
        tabTo(page, "name-0");
        page.keyboard().type("house");
        page.keyboard().press("Tab");
        page.keyboard().press("Tab");
        page.keyboard().press("Tab");
        page.keyboard().type("900");
        assertThat(page.locator(".state")).hasText(Pattern.compile("Call (by .+|today|now)"));
        assertThat(page.locator(".hand")).containsText("days");
        assertThat(page.locator(".ladder tr.on")).containsText("500");
        assertThat(page.locator(".plot svg title")).not().isEmpty();
        page.keyboard().press("Enter");
        assertThat(page.locator("#name-1")).isFocused();
        page.keyboard().type("furnace");
        page.keyboard().press("Tab");
        page.keyboard().type("60k");
        assertThat(page.locator("#how-1")).hasValue("HEATS");
        page.keyboard().press("Tab");
        page.keyboard().press("Tab");
        page.keyboard().type("lots");
        assertThat(page.locator("#amount-1-said")).containsText("Not understood");
        assertThat(page.locator(".state")).hasText("Waiting for an entry");
        assertAccessible(page);
        screenshot(page, "fill-1440-2-wrong");
        page.locator("#amount-1").focus(); // the look for barriers opens a page of its own
        page.keyboard().press("Control+A");
        page.keyboard().type("30,000");
        assertThat(page.locator(".state")).hasText(Pattern.compile("Call (by .+|today|now)"));
        assertAccessible(page);
        page.keyboard().press("Control+Z");
        assertThat(page.locator("#amount-1")).not().hasValue("30,000");
        page.keyboard().press("Control+Y");
        assertThat(page.locator("#amount-1")).hasValue("30,000");
        assertNoSidewaysScrolling(page);
        screenshot(page, "fill-1440-3-done");
        pasteFills(page);
        String days = page.locator(".hand .whole").innerText();
        printsOnOnePage(page, days);
        page.reload();
        assertThat(page.locator("#fill-gauge")).hasValue("62");
        assertThat(page.locator(".hand .whole")).hasText(days);
    }

    private static void pasteFills(Page page) {
        page.locator("#past-date-0").focus();
        page.evaluate(
                "document.activeElement.dispatchEvent(new ClipboardEvent('paste', {bubbles: true, cancelable: true,"
                        + " clipboardData: (() => { const d = new DataTransfer();"
                        + " d.setData('text/plain', 'Date\\tGallons\\n2026-01-12\\t231\\n2026-02-24\\t241\\n2026-04-20\\t193');"
                        + " return d; })()}))");
        assertThat(page.locator("#past-gallons-2")).hasValue("193");
        assertThat(page.locator(".past ~ p")).containsText("give or take");
        assertThat(page.locator(".past tbody").nth(2).locator(".reck")).containsText("%");
        assertThat(page.locator(".past tbody").first().locator(".reck")).hasText("start");
    }

    private static void printsOnOnePage(Page page, String days) throws IOException {
        for (String size : new String[] {"Letter", "A4"}) {
            byte[] pdf = page.pdf(new Page.PdfOptions().setFormat(size).setPrintBackground(false));
            try (PDDocument document = Loader.loadPDF(pdf)) {
                assertThat(document.getNumberOfPages()).as(size).isEqualTo(1);
                String text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
                assertThat(text).contains("Which tank to ask for", "A fill lasts", "Call", "2026-04-20", days);
                assertThat(text).contains(Caution.TEXT.substring(0, 60));
            }
        }
    }

    @Test
    void nothingBarsAnyoneInEitherThemeOnAPhoneOrATablet() {
        for (int width : new int[] {1024, 390}) {
            Page page = open("/fill", width, ColorScheme.DARK);
            assertThat(page.locator(".saved")).containsText("Saved");
            page.getByText("Show the demo").last().click();
            assertThat(page.locator(".state")).hasText(Pattern.compile("Call (by .+|today|now)"));
            assertAccessible(page);
            assertNoSidewaysScrolling(page);
            screenshot(page, "fill-" + width + "-dark");
            if (width < 900) {
                assertThat(page.locator(".foot")).containsText("Call by");
                page.locator("[data-do=answer]").click();
                assertThat(page.locator(".answer .state")).isVisible();
                assertAccessible(page);
            }
        }
    }
}
