package longrun.ui.house;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import com.microsoft.playwright.options.ColorScheme;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import longrun.browser.BrowserTest;
import longrun.browser.Typist;
import longrun.checked.report.Report;
import longrun.ui.frame.Caution;
import longrun.words.CautionWords;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A whole house in the browser. */
class HouseViewIT extends BrowserTest {

    private static final List<String> PLACES = List.of("house", "appliances", "findings");

    /** From the first page through the second door to an empty house. */
    private Page begin(int width) {
        Page page = open("/", width);
        page.getByText("A whole house").click();
        page.getByText("Begin a new house").click();
        page.waitForURL("**/house/*/house");
        return ready(page);
    }

    private static Page ready(Page page) {
        assertThat(page.locator(".saved")).containsText("Saved");
        return page;
    }

    private static void to(Page page, String place) {
        page.locator(".thread a[href$=" + place + "]").click();
        assertThat(page.locator("h2.place"))
                .hasText(place.substring(0, 1).toUpperCase(Locale.ROOT) + place.substring(1));
    }

    private static void addAppliance(Page page, int index, String kind, String input) {
        page.locator("#add-kind").selectOption(kind);
        Locator field = page.locator("#e-appliances-" + index + "-input");
        assertThat(field).isFocused();
        page.keyboard().type(input);
        // heard, whether understood or not
        assertThat(page.locator("#e-appliances-" + index + "-input-said")).not().containsText("Not the output");
    }

    @ParameterizedTest
    @ValueSource(ints = {1440, 390})
    void theOwnerBuilderBeginsFromNothing(int width) {
        Page page = begin(width);
        page.locator("#e-name").fill("Hill house");
        assertThat(page.locator(".head h1")).hasText("Hill house");
        page.getByText("10 psi line to a regulator on the wall").click();
        assertThat(page.locator("#e-regulators-1-outlet")).hasValue("11");
        assertThat(page.locator("#e-regulators-0-outlet")).hasValue("10");
        to(page, "appliances");
        addAppliance(page, 0, "on-demand-water-heater", "199,000");
        addAppliance(page, 1, "range", "65000");
        addAppliance(page, 2, "furnace", "60,000");
        if (width < 900) {
            page.locator("[data-do=answer]").click();
        }
        assertThat(page.locator("#slot-load")).containsText("324,000");
        assertThat(page.locator(".state")).containsText("questions open");
        assertNoSidewaysScrolling(page);
    }

    /** 324,000 Btu/h, 57.9 ft with elbows and the tee: row 60 of 2018 IFGC Table 402.4(28); 1 in. carries 434,000, 3/4 231,000, 1/2 110,000. */
    @Test
    void fromNothingToATwoStageHouseSizedWithThreeAppliances() {
        Page page = begin(1440);
        page.getByText("10 psi line to a regulator on the wall").click();
        to(page, "appliances");
        addAppliance(page, 0, "on-demand-water-heater", "199,000");
        addAppliance(page, 1, "range", "65000");
        addAppliance(page, 2, "furnace", "60,000");
        page.locator(".thread a[href$=route]").click();
        page.waitForSelector("#legs-0");
        page.locator("#legs-0").fill("down 2, north 58, up 2");
        String[][] lines = {
            {"", "up 4, north 6, east 10", "20"},
            {"on", "north 8, down 3", "11"},
            {"", "east 12", "12"},
            {"ra", "north 10, down 5", "15"},
            {"fu", "east 8, down 5", "13"},
        };
        for (int i = 1; i <= lines.length; i++) {
            page.keyboard().press("Enter");
            assertThat(page.locator("#feeds-" + i)).isFocused();
            page.keyboard().type(lines[i - 1][0]);
            page.keyboard().press("Tab");
            assertThat(page.locator("#legs-" + i)).isFocused();
            page.keyboard().type(lines[i - 1][1]);
            assertThat(page.locator(".lines.route tbody").nth(i).locator("td.feet"))
                    .hasText(lines[i - 1][2]);
            if (i == 1) {
                page.locator("#material-1").selectOption("steel");
                page.locator("#legs-1").focus();
                assertThat(page.locator("#material-1")).hasValue("steel");
            }
        }
        screenshot(page, "house-1440-light-walked");
        assertThat(page.locator(".state")).containsText("Sized, not approved");
        assertThat(page.locator("#slot-load")).containsText("324,000");
        assertThat(page.locator("#slot-run")).containsText("57.9");
        assertThat(page.locator("#slot-sizes .sizes")).containsText("Y11/2A1B3/4C3/4D1/2E1/2");
        assertAccessible(page);
    }

    @Test
    void aReloadInMidEntryKeepsWhatWasTyped() {
        Page page = begin(1440);
        to(page, "appliances");
        addAppliance(page, 0, "range", "65,0");
        page.reload();
        ready(page);
        assertThat(page.locator("#e-appliances-0-input")).hasValue("65,0");
        page.locator("#e-appliances-0-input").fill("65,000");
        assertThat(page.locator("#slot-load")).containsText("65,000");
    }

    @Test
    void twoTabsAskBeforeOneOverwritesTheOther() {
        Page first = begin(1440);
        Page second = ready(openBeside(first, first.url().replaceAll("^https?://[^/]+", "")));
        first.bringToFront();
        first.locator("#e-name").fill("First");
        assertThat(first.locator(".head h1")).hasText("First");
        assertThat(second.locator(".notice")).containsText("Another tab changed this house");
        second.bringToFront();
        assertThat(second.locator("#e-name")).hasValue("");
        assertAccessible(second);
        screenshot(second, "house-1440-light-two-tabs");
        second.getByText("Take what the other tab has").click();
        assertThat(second.locator("#e-name")).hasValue("First");
        assertThat(second.locator(".notice")).isHidden();
    }

    @Test
    void theChoiceBetweenTwoTabsIsInViewAndNoWordIsLostBeforeItIsMade() {
        Page first = begin(1440);
        Page second = ready(openBeside(first, first.url().replaceAll("^https?://[^/]+", "")));
        second.bringToFront();
        second.locator("#e-code-adopted").scrollIntoViewIfNeeded();
        second.evaluate("scrollTo(0, document.body.scrollHeight)");
        first.bringToFront();
        first.locator("#e-name").fill("First");
        assertThat(first.locator(".head h1")).hasText("First");
        second.bringToFront();
        assertThat(second.locator(".notice")).containsText("Another tab changed this house");
        assertThat(second.locator(".notice")).isInViewport();
        second.locator("#e-code-adopted").fill("County code");
        first.bringToFront();
        first.locator("#e-name").fill("First, gone on");
        assertThat(first.locator(".head h1")).hasText("First, gone on");
        second.bringToFront();
        second.reload();
        assertThat(second.locator(".notice")).containsText("Another tab changed this house");
        assertThat(second.locator("#e-code-adopted")).hasValue("County code");
        second.getByText("Take what the other tab has").click();
        assertThat(second.locator("#e-name")).hasValue("First, gone on");
        assertThat(second.locator(".notice")).isHidden();
        second.locator(".head button:has-text('Undo')").click();
        assertThat(second.locator("#e-code-adopted")).hasValue("County code");
    }

    @Test
    void anUnknownAddressSaysSoInOurWords() {
        for (String address : List.of("/house/abc/house", "/nowhere")) {
            Page page = open(address, 1440);
            assertThat(page.locator("h2.place")).hasText("There is no page at this address");
            page.getByText("The houses kept here").click();
            assertThat(page.locator("h2.place")).hasText("Houses");
            forgetNetworkErrors();
        }
    }

    @Test
    void undoAndRedoByTheirKeys() {
        Page page = begin(1440);
        page.locator("#e-name").fill("Hill house");
        assertThat(page.locator(".head h1")).hasText("Hill house");
        page.keyboard().press("Control+z");
        assertThat(page.locator("#e-name")).hasValue("");
        page.keyboard().press("Control+y");
        assertThat(page.locator("#e-name")).hasValue("Hill house");
    }

    @Test
    void namesThatLookLikeMarkUpAreWordsEverywhere() {
        String name = "<script>alert(1)</script><img src=x onerror=alert(2)> \"O'Hara\" & \ud83d\udd25";
        Page page = begin(1440);
        page.onDialog(d -> {
            throw new AssertionError("mark-up was run: " + d.message());
        });
        page.locator("#e-name").fill(name);
        assertThat(page.locator(".head h1")).hasText(name);
        page.getByText("Add a room").click();
        page.locator("#e-rooms-0-name").fill(name);
        to(page, "appliances");
        addAppliance(page, 0, "range", "65000");
        page.locator("#e-appliances-0-name").fill(name);
        assertThat(page.locator(".appliance h3")).hasText(name);
        to(page, "findings");
        assertThat(page.locator(".place-body")).containsText(name);
        page.locator(".home").click();
        page.getByText("A whole house").click();
        assertThat(page.locator(".houses").first()).containsText(name); // the second are those deleted
        assertAccessible(page);
    }

    @Test
    void aFindingGoesToItsFieldInWhateverPlace() {
        Page page = begin(1440);
        to(page, "appliances");
        page.locator("#add-kind").selectOption("range");
        assertThat(page.locator(".appliance")).hasCount(1);
        to(page, "findings");
        page.locator(".find:has-text('INPUT') .go").first().click();
        assertThat(page.locator("#e-appliances-0-input")).isFocused();
        assertThat(page).hasURL(java.util.regex.Pattern.compile(".*/appliances$"));
    }

    @Test
    void theServerGoneIsSaidInOurWordsAndTheEntryIsKept() {
        Page page = begin(1440);
        page.context().route("**/*v-r=uidl*", Route::abort);
        page.locator("#e-site-elevation").fill("820");
        assertThat(page.locator(".gone")).isVisible();
        assertThat(page.locator(".saved")).not().containsText("Saved");
        screenshot(page, "house-1440-light-server-gone");
        page.context().unroute("**/*v-r=uidl*");
        page.reload();
        ready(page);
        assertThat(page.locator("#e-site-elevation")).hasValue("820");
        assertThat(page.locator("#e-site-elevation-said")).containsText("820 ft");
        forgetNetworkErrors();
    }

    @Test
    void otherUnitsLeaveWhatWasTypedAsTyped() {
        Page page = begin(1440);
        page.locator("#e-site-elevation").fill("820");
        page.locator(".units select").selectOption("METRIC");
        assertThat(page.locator("#e-site-elevation")).hasValue("820 ft");
        assertThat(page.locator("#e-site-elevation-said")).hasText("250 m");
    }

    @Test
    void everyPrintedSheetOfAPlaceBearsTheCautionAndItsDay() throws IOException {
        Page page = open("/", 1440, ColorScheme.DARK);
        page.getByText("A whole house").click();
        page.getByText("Show the demo house").click();
        ready(page);
        for (String place : List.of("house", "findings")) {
            to(page, place);
            byte[] pdf = page.pdf(new Page.PdfOptions().setPreferCSSPageSize(true));
            try (var document = Loader.loadPDF(pdf)) {
                for (int sheet = 1; sheet <= document.getNumberOfPages(); sheet++) {
                    PDFTextStripper one = new PDFTextStripper();
                    one.setStartPage(sheet);
                    one.setEndPage(sheet);
                    String text = one.getText(document).replaceAll("\\s+", " ");
                    for (String sentence : Caution.TEXT.split("(?<=[.?]) ")) {
                        org.assertj.core.api.Assertions.assertThat(text)
                                .as("%s, sheet %d", place, sheet)
                                .contains(sentence);
                    }
                    if (sheet == 1) {
                        org.assertj.core.api.Assertions.assertThat(text).containsPattern("Printed \\d+ \\w+ 20\\d\\d");
                    }
                }
            }
        }
    }

    @ParameterizedTest
    @EnumSource(
            value = ColorScheme.class,
            names = {"LIGHT", "DARK"})
    void nothingBarsAnyoneAnywhere(ColorScheme scheme) {
        for (int width : new int[] {1440, 390}) {
            String name = width + "-" + scheme.name().toLowerCase(Locale.ROOT);
            Page page = open("/", width, scheme);
            assertThat(page.locator("a.door")).hasCount(3);
            assertAccessible(page);
            screenshot(page, "start-" + name);
            if (width
                    == 390
                    == (scheme == ColorScheme.DARK)) { // its tables are long: each width once, each scheme once
                page.getByText(Report.TITLE).click();
                assertThat(page.locator("#not-checked")).isVisible();
                page.evaluate("document.querySelectorAll('details').forEach(d => d.open = true)");
                assertThat(page.locator("body")).containsText(CautionWords.CARE);
                assertAccessible(page);
                assertNoSidewaysScrolling(page);
                screenshot(page, "checked-" + name);
                page.locator(".home").click();
            }
            page.locator("a.door", new Page.LocatorOptions().setHasText("A whole house"))
                    .click();
            page.getByText("Begin a new house").click();
            ready(page);
            assertAccessible(page);
            screenshot(page, "house-" + name + "-1-empty");
            page.locator("#e-site-elevation").fill("high");
            assertThat(page.locator("#e-site-elevation-said")).containsText("Not understood");
            assertAccessible(page);
            screenshot(page, "house-" + name + "-2-wrong-entry");
            page.locator(".home").click();
            page.getByText("A whole house").click();
            page.getByText("Show the demo house").click();
            ready(page);
            for (String place : PLACES) {
                to(page, place);
                page.evaluate("document.querySelectorAll('details').forEach(d => d.open = true)");
                page.evaluate("document.querySelectorAll('.answer button.ask').forEach(a => a.click())");
                assertThat(page.locator("main")).containsText(place.equals("findings") ? "where from" : "I don");
                org.assertj.core.api.Assertions.assertThat(page.locator("body").textContent())
                        .contains(Caution.TEXT);
                assertAccessible(page);
                assertNoSidewaysScrolling(page);
                screenshot(page, place + "-" + name + "-demo");
            }
        }
    }

    @Test
    void tabGoesFromNumberToNumberAndTheArrowDownToTheAnswersWithoutOne() {
        Page page = begin(1440);
        to(page, "appliances");
        addAppliance(page, 0, "range", "65,000");
        page.keyboard().press("Tab");
        assertThat(page.locator("#e-appliances-0-minInlet")).isFocused();
        page.keyboard().type("5");
        page.keyboard().press("Tab");
        assertThat(page.locator("#e-appliances-0-maxInlet")).isFocused();
        page.keyboard().press("Shift+Tab");
        assertThat(page.locator("#e-appliances-0-minInlet")).isFocused();
        Locator field = page.locator(".fld:has(> #e-appliances-0-minInlet)");
        page.keyboard().press("ArrowDown");
        assertThat(field.getByText("not known")).isFocused();
        page.keyboard().press("ArrowDown");
        assertThat(field.getByText("none", new Locator.GetByTextOptions().setExact(true)))
                .isFocused();
        page.keyboard().press("ArrowUp");
        page.keyboard().press("Enter");
        assertThat(page.locator("#e-appliances-0-minInlet")).hasValue("");
        page.keyboard().press("ArrowUp");
        assertThat(page.locator("#e-appliances-0-minInlet")).isFocused();
        page.keyboard().press("Tab");
        assertThat(field.getByText("not known")).isFocused(); // of an empty field they are stops of their own
        page.keyboard().press("ArrowUp");
        page.keyboard().type("-");
        assertThat(field.getByText("none", new Locator.GetByTextOptions().setExact(true)))
                .hasAttribute("aria-pressed", "true");
        page.keyboard().type("?");
        assertThat(field.getByText("not known")).hasAttribute("aria-pressed", "true");
        page.keyboard().type("6-");
        assertThat(page.locator("#e-appliances-0-minInlet")).hasValue("6-");
        page.keyboard().press("Backspace");
        assertAccessible(page);
    }

    @Test
    void thePageBeforeTheValveIsSignedFromTheKeyboard() {
        Page page = begin(1440);
        page.getByText("10 psi line to a regulator on the wall").click();
        page.locator(".thread a[href$=valve]").click();
        assertThat(page.locator("h2.place")).hasText("Before the valve");
        page.locator("[aria-label='Record this point: Gas type']").focus();
        page.keyboard().press("Enter");
        page.waitForSelector("#e-holdPoints-0-done");
        page.locator("#e-holdPoints-0-done input").first().focus();
        page.keyboard().press("ArrowRight");
        page.locator("#e-holdPoints-0-who").focus();
        page.keyboard().type("fitter");
        assertThat(page.locator(".point .verdict").first()).containsText("Recorded as done by fitter");
        assertThat(page.locator(".thread a[href$=valve]")).containsText("1 of 12 recorded");
        assertNoSidewaysScrolling(page);
    }

    /**
     * What an owner's walk takes is told, not judged: four appliances, a 500 gal tank, from the first page to what to ask the
     * supplier. A question is seen on the way when after any step it stands in sight on the page, in whatever form: as the
     * next step, as a line, or by its name in the one line of a part that folds several. What is asked of several parts
     * about the same entry is one question. What stands folded up is not in sight, and is counted with the open ones; the
     * list for the supplier, which is where the walk leads, is counted by itself.
     */
    @Test
    void anOwnerComesFromTheFirstPageToWhatToAskTheSupplier() {
        Typist typist = new Typist(open("/", 1440));
        Page page = typist.page();
        page.getByText("A whole house").click();
        page.getByText("Begin a new house").click();
        page.waitForURL("**/house/*/house");
        ready(page);
        page.locator("#e-name").focus();
        typist.type("Hill house");
        page.getByText("10 psi line to a regulator on the wall").click();
        to(page, "appliances");
        Set<String> seen = new TreeSet<>();
        for (String line : new String[] {"tankless 199k", "range 65k", "furnace 60k", "clothes dryer 22k"}) {
            page.locator("#add-line").focus();
            typist.type(line);
            typist.press("Enter");
            assertThat(page.locator("#add-line-said")).containsText("Added");
            see(page, seen);
        }
        assertThat(page.locator("#slot-load")).containsText("346,000");
        page.locator(".thread a[href$=route]").click();
        page.waitForSelector("#legs-0");
        page.locator("#legs-0").focus();
        typist.type("down 2, north 58, up 2");
        typist.press("Enter");
        see(page, seen);
        typist.line("on", "steel up 4, north 14");
        see(page, seen);
        typist.line("ra", "north 10, down 5");
        see(page, seen);
        typist.line("fu", "east 8, down 5");
        see(page, seen);
        typist.type("cl");
        typist.press("Tab");
        typist.type("west 9, down 3");
        see(page, seen);
        page.locator(".thread a[href$=tank]").click();
        page.locator("#e-tank-waterCapacity").focus();
        typist.type("500");
        assertThat(page.locator(".state")).not().containsText("Nothing to size");
        see(page, seen);
        page.locator(".thread a[href$=findings]").click();
        assertThat(page.locator("h2.place")).hasText("Findings");
        see(page, seen);
        page.locator("b:text-is('By who can answer')").click();
        assertThat(page.locator("h3:has-text('rating plate')"))
                .isVisible(); // sorted anew; both orders have a supplier's
        page.locator("#h-for-supplier").click();
        Locator forSupplier = page.locator("[aria-labelledby=h-for-supplier] .find:visible");
        assertThat(forSupplier.first()).containsText("?");
        see(page, seen);
        typist.tell(
                "owner's walk, four appliances and a tank; " + forSupplier.count()
                        + " to ask the supplier; open in the answer "
                        + page.locator("#slot-open").innerText().replaceAll("\\s+", " ") + "; seen on the way " + seen,
                seen.size());
    }

    private static void see(Page page, Set<String> seen) {
        page.waitForTimeout(300); // what a key changes is on the page by then
        for (Object each : (List<?>) page.evaluate("""
                () => [...document.querySelectorAll('[data-asks]')]
                  .filter(e => e.dataset.asks && e.checkVisibility())
                  .filter(e => !e.closest('[aria-labelledby=h-for-supplier]'))
                  .map(e => e.dataset.asks)
                """)) {
            seen.add((String) each);
        }
    }
}
