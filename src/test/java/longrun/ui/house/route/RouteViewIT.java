package longrun.ui.house.route;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.FilePayload;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import longrun.Samples;
import longrun.browser.BrowserTest;
import longrun.store.DraftStore;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;

/** The pipe route in the browser: a fitter's walk by keyboard, the drawing, light and dark, wide and narrow. */
class RouteViewIT extends BrowserTest {

    private static final String REGULATOR = "{\"format\":\"longrun-plan/1\",\"name\":\"Fitter's"
            + " walk\",\"regulators\":[{\"id\":\"R1\",\"kind\":\"integral-two-stage\",\"fedBy\":\"tank\",\"outlet\":\"11"
            + " in w.c.\",\"allowedDrop\":\"0.5 in w.c.\"}]}";

    @Autowired
    DraftStore store;

    private int keys;

    private long house(String json) {
        return store.create("", json).id();
    }

    private Page openRoute(long id, int width, ColorScheme scheme) {
        Page page = open("/house/" + id + "/route", width, scheme);
        page.waitForSelector(".lines.route tbody.next");
        return page;
    }

    private void type(Page page, String text) {
        keys += text.length();
        page.keyboard().type(text);
    }

    private void press(Page page, String key) {
        keys++;
        page.keyboard().press(key);
    }

    private static String size(Page page, int line) {
        return page.locator(".lines.route tbody")
                .nth(line)
                .locator("td.size")
                .innerText()
                .strip()
                .replaceAll("\\s+", " ");
    }

    @Test
    void fitterEntersFourAppliancesAndFiveSectionsByKeyboardAlone() {
        Page page = open("/house/" + house(REGULATOR) + "/appliances", 1440);
        page.locator("#add-kind").focus();
        long start = System.nanoTime();
        String[][] appliances = {{"On", "199000"}, {"Ra", "65000"}, {"Fu", "60000"}, {"Cl", "22000"}};
        for (int i = 0; i < appliances.length; i++) {
            page.locator("#add-kind").focus();
            keys++; // the way to the list of kinds
            type(page, appliances[i][0]);
            page.keyboard().press("Tab");
            Locator input = page.locator("#e-appliances-" + i + "-input");
            input.waitFor();
            input.focus();
            type(page, appliances[i][1]);
            assertThat(page.locator("#e-appliances-" + i + "-input-said")).containsText("Btu/h");
        }
        page.navigate(page.url().replace("/appliances", "/route"));
        page.waitForSelector("#feeds-0");
        page.locator("#legs-0").focus();
        type(page, "n 2, u 4, e 14");
        assertThat(page.locator("#material-0")).isVisible();
        page.locator("#material-0").focus();
        keys += 2;
        type(page, "s");
        assertThat(page.locator("#material-0")).hasValue("steel");
        String[][] lines = {
            {"on", "n 8, d 3"},
            {"", "e 12"},
            {"ra", "n 10, d 5"},
            {"fu", "e 8, d 5"},
        };
        page.locator("#legs-0").focus();
        for (int i = 0; i < lines.length; i++) {
            press(page, "Enter");
            assertThat(page.locator("#feeds-" + (i + 1))).isFocused();
            type(page, lines[i][0]);
            if (!lines[i][0].isEmpty()) {
                assertThat(page.locator("#feeds-" + (i + 1))).not().hasValue("");
            }
            press(page, "Tab");
            assertThat(page.locator("#legs-" + (i + 1))).isFocused();
            type(page, lines[i][1]);
            assertThat(page.locator(".lines.route tbody").nth(i + 1).locator("td.feet"))
                    .not()
                    .hasText("");
        }
        // "e 8" alone has a size already; the line is whole with its last digit.
        assertThat(page.locator(".lines.route tbody").nth(4).locator("td.feet")).hasText("13");
        // The clothes dryer hangs on nothing yet and may come upon any of them: the sizes are sizes so far.
        assertThat(page.locator(".lines.route tbody").nth(4).locator("td.size")).hasText("1/2so far");
        double seconds = (System.nanoTime() - start) / 1e9;
        System.out.printf(Locale.ROOT, "Fitter's walk: %d keys, %.1f s of the program's own time%n", keys, seconds);
        assertThat(List.of(size(page, 0), size(page, 1), size(page, 2), size(page, 3), size(page, 4)))
                .containsExactly("1 so far", "3/4 so far", "3/4 so far", "1/2 so far", "1/2 so far");
        assertThat(keys).isLessThan(220);
        assertThat(page.locator("#legs-0").inputValue()).isEqualTo("n 2, u 4, e 14");
        assertThat(page.locator(".pan-box svg [data-key=E].sec")).hasCount(1);
    }

    @Test
    void listAndDrawingLightOneAnother() {
        Page page = openRoute(house(Samples.text("drawing/orchard-house.json")), 1440, ColorScheme.LIGHT);
        page.locator("#legs-3").focus();
        assertThat(page.locator(".pan-box .sec.on")).hasAttribute("data-key", "C");
        page.locator(".pan-box .words[data-key=B] text").last().click();
        assertThat(page.locator(".lines.route tbody.on th.id")).hasText("B");
        assertThat(page.locator(".answer .whose")).containsText("Section B");
        sizesOfTheDrawing(page);
    }

    /** By keys and by the mouse; an answer of the program leaves the size a person chose. */
    private static void sizesOfTheDrawing(Page page) {
        Locator box = page.locator(".drawing .pan-box");
        double drawn = box.locator("svg").boundingBox().width;
        box.focus();
        page.keyboard().press("+");
        page.keyboard().press("+");
        assertThat(page.locator("pan-tools [role=status]")).hasText("156 %");
        assertThat(box.locator("svg").boundingBox().width).isCloseTo(drawn * 1.5625, within(2.0));
        page.keyboard().press("ArrowRight");
        page.waitForFunction("document.querySelector('.drawing .pan-box').scrollLeft > 50");
        BoundingBox at = box.boundingBox();
        page.mouse().move(at.x + 300, at.y + 60);
        page.mouse().down();
        page.mouse().move(at.x + 200, at.y + 60);
        page.mouse().up();
        page.waitForFunction("document.querySelector('.drawing .pan-box').scrollLeft > 150");
        page.locator("#legs-3").focus();
        assertThat(page.locator(".pan-box .sec.on")).hasAttribute("data-key", "C");
        assertThat(box.locator("svg").boundingBox().width).isCloseTo(drawn * 1.5625, within(2.0));
        page.getByText("As drawn").click();
        assertThat(box.locator("svg").boundingBox().width).isCloseTo(drawn, within(2.0));
    }

    @Test
    void undoBringsBackWhatStoodAndEscapeThePreviousText() {
        Page page = openRoute(house(Samples.text("drawing/orchard-house.json")), 1440, ColorScheme.LIGHT);
        page.locator("#legs-3").focus();
        page.locator("#legs-3").fill("east 90");
        assertThat(page.locator(".lines.route tbody").nth(3).locator("td.feet")).hasText("90");
        page.keyboard().press("Escape");
        assertThat(page.locator("#legs-3")).hasValue("east 12");
        assertThat(page.locator(".lines.route tbody").nth(3).locator("td.feet")).hasText("12");
    }

    private static final String TUBING = "{\"format\":\"longrun-plan/1\",\"name\":\"Tubing"
            + " walk\",\"fittingAllowance\":\"none\",\"regulators\":[{\"id\":\"R1\",\"kind\":\"integral-two-stage\",\"fedBy\":\"tank\",\"outlet\":\"11"
            + " in w.c.\",\"allowedDrop\":\"0.5 in"
            + " w.c.\"}],\"sections\":[{\"id\":\"A\",\"from\":\"R1\",\"material\":\"csst\",\"legs\":[\"20"
            + " ft\"]}],\"appliances\":[{\"id\":\"range\",\"kind\":\"range\",\"input\":\"65,000"
            + " Btu/h\",\"fedBy\":\"A\"}]}";

    private static FilePayload csv(String text) {
        return new FilePayload("hill.csv", "text/csv", text.getBytes(StandardCharsets.UTF_8));
    }

    /** The values of the table are invented. */
    @Test
    void makersTableIsReadFromAFileOrRefusedCellByCell() {
        String good = "length_ft,14,19,26\n10,60,140,320\n30,34,80,190\n";
        Page page = openRoute(house(TUBING), 1440, ColorScheme.LIGHT);
        assertThat(page.locator(".lines.route td.size").first()).hasText("EHD 18");
        page.locator(".tubing-tables summary").click();
        page.locator("text=Add a maker\u2019s table").click();
        page.locator("#e-tubingTables-0-file").setInputFiles(csv(good.replace("80", "8o")));
        assertThat(page.locator(".tubing .errors li"))
                .hasText(
                        "hill:3:3: '8o' is not a positive number, write a capacity" + " in thousand Btu/h, such as 49");
        assertThat(page.locator("#e-tubingTables-0-name")).hasValue("hill");
        assertThat(page.locator("#e-tubingTables-0-csv")).hasValue(Pattern.compile("8o"));
        // gone to another place and back, a file is still heard
        page.locator(".thread a[href$='/appliances']").click();
        page.waitForSelector("#add-kind");
        page.locator(".thread a[href$='/route']").click();
        page.locator("#e-tubingTables-0-file").setInputFiles(csv(good));
        assertThat(page.locator(".tubing .as-read p")).containsText("3 sizes, EHD 14 to 26; 2 lengths, 10 to 30 ft");
        page.locator("#e-tubingTables-0-inlet").fill("11");
        page.locator("#e-tubingTables-0-drop").fill("0.5");
        assertThat(page.locator("#e-tubingTables-0-drop-said")).containsText("0.5 in. w.c.");
        page.locator("#legs-0").focus();
        page.locator("#table-0").selectOption("hill");
        assertThat(page.locator(".lines.route td.size").first()).hasText("EHD 19");
        assertThat(page.locator(".tubing")).containsText("Section A is sized by it.");
        assertAccessible(page);
        screenshot(page, "route-1440-light-6-tubing");
        page.locator(".tubing button:has-text('Remove')").click();
        assertThat(page.locator(".lines.route td.size").first()).hasText("EHD 18");
        page.setViewportSize(390, 900);
        page.locator("button:has-text('Undo')").first().click();
        assertThat(page.locator(".tubing .as-read p")).isVisible();
        assertNoSidewaysScrolling(page);
        assertAccessible(page);
        screenshot(page, "route-390-light-6-tubing");
    }

    @ParameterizedTest
    @EnumSource(
            value = ColorScheme.class,
            names = {"LIGHT", "DARK"})
    void nothingBarsAnyone(ColorScheme scheme) {
        long id = house(Samples.text("drawing/orchard-house.json"));
        long empty = house("{\"format\":\"longrun-plan/1\"}");
        for (int width : new int[] {1440, 390}) {
            String name = "route-" + width + "-" + scheme.name().toLowerCase(Locale.ROOT) + "-";
            Page page = openRoute(empty, width, scheme);
            assertAccessible(page);
            screenshot(page, name + "1-empty");
            page = openRoute(id, width, scheme);
            page.locator("#legs-2").focus();
            assertThat(page.locator(".pan-box .sec.on")).hasAttribute("data-key", "B");
            assertAccessible(page);
            assertNoSidewaysScrolling(page);
            screenshot(page, name + "5-done");
            page.locator("#legs-2").fill("north 8, sideways 3");
            assertThat(page.locator("#legs-2-said")).containsText("Not understood");
            assertAccessible(page);
            screenshot(page, name + "4-wrong-entry");
            page.locator("#legs-2").fill("north 8, down 3");
            assertThat(page.locator("#legs-2-said")).not().containsText("Not understood");
        }
    }
}
