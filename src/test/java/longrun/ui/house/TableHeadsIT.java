package longrun.ui.house;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.util.List;
import longrun.browser.BrowserTest;
import longrun.draft.demo.DemoHouse;
import longrun.store.DraftStore;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** Whoever reads a table by its heads reads right at any width: over each figure in sight stands its own head. */
class TableHeadsIT extends BrowserTest {

    private static final List<Integer> WIDTHS =
            List.of(360, 390, 480, 600, 768, 820, 899, 900, 960, 1024, 1100, 1200, 1201, 1280, 1366, 1440, 1600);

    /**
     * Cells that do not stand under the head of their own column, by the grid the rows declare and by where they are
     * drawn; rows drawn as blocks, each cell with its own label, have no head to stand under, and rows kept out of sight
     * have nothing to be read.
     */
    private static final String ASTRAY = """
        () => {
          const seen = (e) => { const r = e.getBoundingClientRect(); return r.width > 1 && r.height > 1; };
          const grid = (row) => {
            const out = [];
            for (const cell of row.cells) for (let i = 0; i < cell.colSpan; i++) out.push(cell);
            return out;
          };
          const astray = [];
          for (const table of document.querySelectorAll('table')) {
            const head = table.tHead?.rows[table.tHead.rows.length - 1];
            if (!head || !seen(head)) continue;
            const heads = grid(head);
            for (const body of table.tBodies) for (const row of body.rows) {
              if (!seen(row) || getComputedStyle(row).display !== 'table-row' || row.matches('.under')) continue;
              const cells = grid(row);
              for (let c = 0; c < Math.max(cells.length, heads.length); c++) {
                const cell = cells[c];
                const own = heads[c];
                if (!cell && !own) continue;
                if (!cell || !own || seen(cell) !== seen(own)) {
                  if ((cell && seen(cell)) || (own && seen(own) && own.textContent.trim())) {
                    astray.push(`${own?.textContent ?? 'no head'} / ${cell?.textContent ?? 'no cell'}`);
                  }
                  continue;
                }
                if (!seen(cell)) continue;
                const middle = (r) => (r.left + r.right) / 2;
                const a = cell.getBoundingClientRect();
                const b = own.getBoundingClientRect();
                if (middle(a) < b.left - 1 || middle(a) > b.right + 1) {
                  astray.push(`${own.textContent} over ${cell.textContent}`);
                }
              }
            }
          }
          return astray;
        }
        """;

    @Autowired
    DraftStore store;

    @Test
    void everyFigureStandsUnderTheHeadOfItsColumn() {
        long house = store.create("", DemoHouse.json()).id();
        Page page = open("/house/" + house + "/route", 1600);
        for (String place : List.of("route", "appliances", "tank", "fuel", "hot-water", "findings", "house")) {
            page.setViewportSize(1600, 900);
            page.locator(".thread a[href$=" + place + "]").click();
            assertThat(page.locator(".thread a[href$=" + place + "]")).hasAttribute("aria-current", "page");
            assertHeads(page, place);
        }
    }

    @Test
    void everyFigureOfARunStandsUnderTheHeadOfItsColumn() {
        Page page = open("/run", 1600);
        page.getByText("Show the demo run").first().click();
        assertThat(page.locator(".state")).not().containsText("Nothing");
        assertHeads(page, "run");
    }

    private static void assertHeads(Page page, String place) {
        for (int width : WIDTHS) {
            page.setViewportSize(width, 900);
            assertThat((List<?>) page.evaluate(ASTRAY))
                    .as(place + " at " + width + " px")
                    .isEmpty();
        }
        page.setViewportSize(1024, 900);
    }
}
