package longrun.ui.house;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static com.microsoft.playwright.assertions.PlaywrightAssertions.setDefaultAssertionTimeout;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import com.microsoft.playwright.options.ColorScheme;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import longrun.browser.BrowserTest;
import longrun.store.DraftStore;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;

/** The demo house's water heater: its shutoff put in the wrong place and mended, by mouse and by keyboard. */
class ConnectionsIT extends BrowserTest {

    private static final String WRONG = "comes before the shutoff";

    @Autowired
    DraftStore store;

    private long id;

    @BeforeAll
    static void waitLonger() {
        setDefaultAssertionTimeout(20_000);
    }

    @BeforeEach
    void begin() throws IOException {
        id = store.create("Orchard house", Files.readString(Path.of("data", "demo", "orchard-house.json")))
                .id();
    }

    private Page at(String place, int width, ColorScheme scheme) {
        Page page = open("/house/" + id + "/" + place, width, scheme);
        assertThat(page.locator(".saved")).containsText("Saved");
        return page;
    }

    private static void assertOrder(Page page, String first, String second) {
        assertThat(page.locator(".parts .handle").nth(0)).containsText(first);
        assertThat(page.locator(".parts .handle").nth(1)).containsText(second);
    }

    @Test
    void theOrderIsBrokenAtTheShutoffAndMendedByMouse() {
        Page page = at("connections", 1440, ColorScheme.LIGHT);
        assertOrder(page, "Shutoff", "Sediment trap");
        assertThat(page.locator(".mend")).hasCount(0);
        drag(page, "[data-part='0'] .grip", "[data-part='1'] .grip");
        assertOrder(page, "Sediment trap", "Shutoff");
        assertThat(page.locator(".mend .find.must")).containsText(WRONG);
        assertThat(page.locator(".slot.has-must")).containsText(WRONG);
        screenshot(page, "connections-wrong-1440");
        drag(page, "[data-part='0'] .grip", "[data-part='1'] .grip");
        assertOrder(page, "Shutoff", "Sediment trap");
        assertThat(page.locator(".mend")).hasCount(0);
    }

    private static void drag(Page page, String what, String past) {
        page.locator("hookup-board").scrollIntoViewIfNeeded();
        BoundingBox from = page.locator("hookup-board .for-wide " + what).boundingBox();
        BoundingBox to = page.locator("hookup-board .for-wide " + past).boundingBox();
        page.mouse().move(from.x + from.width / 2, from.y + from.height / 2);
        page.mouse().down();
        page.mouse().move(to.x + to.width / 2 + 20, from.y + from.height / 2);
        page.mouse().move(to.x + to.width - 4, from.y + from.height / 2);
        page.mouse().up();
    }

    @Test
    void theOrderIsBrokenAtTheShutoffAndMendedByKeyboard() {
        Page page = at("connections", 1440, ColorScheme.LIGHT);
        Locator first = page.locator(".parts .handle").nth(0);
        first.focus();
        page.keyboard().press("ArrowRight");
        assertOrder(page, "Sediment trap", "Shutoff");
        assertThat(page.locator(".parts .handle").nth(1)).isFocused();
        assertThat(page.locator(".mend .find.must")).containsText(WRONG);
        page.keyboard().press("ArrowLeft");
        assertOrder(page, "Shutoff", "Sediment trap");
        assertThat(page.locator(".parts .handle").nth(0)).isFocused();
        assertThat(page.locator(".mend")).hasCount(0);
    }

    @Test
    void aFindingLeadsFromItsListToThePartThatMendsIt() {
        Page page = at("connections", 1440, ColorScheme.LIGHT);
        page.locator(".parts .handle").nth(0).focus();
        page.keyboard().press("ArrowRight");
        assertThat(page.locator(".mend")).hasCount(1);
        page.locator(".thread a")
                .filter(new Locator.FilterOptions().setHasText("Findings"))
                .click();
        Locator finding = page.locator(".groups .find.must").filter(new Locator.FilterOptions().setHasText(WRONG));
        finding.getByText("what can happen?").click();
        assertThat(finding.locator(".example svg.hookup")).hasCount(2);
        finding.getByText("go to the entry").click();
        assertThat(page.locator(".parts .handle").nth(0)).isFocused();
    }

    @ParameterizedTest
    @CsvSource({"1440,LIGHT", "1440,DARK", "390,LIGHT", "390,DARK"})
    void connectionsCanBeUsedByEverybody(int width, ColorScheme scheme) {
        Page page = at("connections", width, scheme);
        page.locator(".moves button").nth(0).click();
        assertThat(page.locator(".mend")).hasCount(1);
        assertAccessible(page);
        assertNoSidewaysScrolling(page);
        screenshot(page, "connections-" + width + "-" + scheme.name().toLowerCase(java.util.Locale.ROOT));
        page.locator(".tabs button").nth(4).click();
        assertThat(page.locator(".bench svg.vents")).hasCount(1);
        assertAccessible(page);
        assertNoSidewaysScrolling(page);
        screenshot(page, "regulator-" + width + "-" + scheme.name().toLowerCase(java.util.Locale.ROOT));
    }

    @ParameterizedTest
    @CsvSource({"1440,LIGHT", "1440,DARK", "390,LIGHT", "390,DARK"})
    void findingsCanBeUsedByEverybody(int width, ColorScheme scheme) {
        Page page = at("findings", width, scheme);
        page.locator(".rule-topic > summary").nth(2).click();
        page.locator(".rule-topic[open] .ask").nth(1).click();
        assertAccessible(page);
        assertNoSidewaysScrolling(page);
        screenshot(page, "findings-" + width + "-" + scheme.name().toLowerCase(java.util.Locale.ROOT));
    }

    /** Three appliances, two regulators and the main shutoff, whichever is in hand. */
    @Test
    void thePrintShowsEveryApplianceWithItsPartsDrawnAndTold() throws IOException {
        Page page = at("connections", 1440, ColorScheme.LIGHT);
        assertThat(page.locator(".all-connections")).not().isVisible();
        byte[] pdf = page.pdf(new Page.PdfOptions().setPreferCSSPageSize(true));
        Files.write(Files.createDirectories(Path.of("target", "screenshots")).resolve("connections-printed.pdf"), pdf);
        try (var document = Loader.loadPDF(pdf)) {
            String text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
            org.assertj.core.api.Assertions.assertThat(text)
                    .contains("Water heater", "Range", "Furnace")
                    .contains("Shutoff; distance: 2 ft; in the same room: yes")
                    .contains("Shutoff; distance: 3 ft; in the same room: yes")
                    .contains("Shutoff; distance: 4 ft; in the same room: yes")
                    .contains("Flexible connector; length: 4 ft")
                    .contains("Regulator R1", "Regulator R2")
                    .contains("Main shutoff", "Outdoors: yes")
                    .doesNotContain("towards the burner", "Add a part");
        }
    }
}
