package longrun.ui.house;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.flow.component.UI;
import java.lang.management.ManagementFactory;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import longrun.draft.PlaceKind;
import longrun.plan.json.PlanReader;
import longrun.review.FullPlanReader;
import longrun.review.ReviewParts;
import longrun.review.Reviewer;
import longrun.store.DraftStore;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/**
 * Houses of many sections: what each place costs to open and a key to answer, in time and heap, without a browser. The
 * figures are printed and none is judged. It runs by its name only.
 */
class BigHouseMeasured extends OpenHouses {

    private static final int[][] SIZES = {{10, 20}, {50, 100}, {100, 200}, {150, 300}};

    @Autowired
    DraftStore store;

    private static double usedMb() {
        var memory = ManagementFactory.getMemoryMXBean();
        double least = Double.MAX_VALUE;
        for (int i = 0; i < 4; i++) {
            memory.gc();
            least = Math.min(least, memory.getHeapMemoryUsage().getUsed() / 1e6);
        }
        return least;
    }

    private static double ms(Runnable what) {
        long begun = System.nanoTime();
        what.run();
        return (System.nanoTime() - begun) / 1e6;
    }

    @Test
    void eachPlaceOfHousesOfManySections() throws Exception {
        open(10, 20, PlaceKind.ROUTE, false);
        open(10, 20, PlaceKind.APPLIANCES, false);
        for (int[] size : SIZES) {
            var plan = FullPlanReader.read(PlanReader.tree(BigHouse.json(size[0], size[1])))
                    .plan()
                    .orElseThrow();
            Reviewer reviewer = Reviewer.standard();
            double review = ms(() -> reviewer.review(plan, ReviewParts.ALL));
            review = Math.min(review, ms(() -> reviewer.review(plan, ReviewParts.ALL)));
            System.out.printf(Locale.ROOT, "%d/%d the review alone %.0f ms%n", size[0], size[1], review);
            for (PlaceKind place : PlaceKind.values()) {
                open(size[0], size[1], place, true);
            }
        }
        assertThat(SIZES).isNotEmpty();
    }

    private void open(int appliances, int sections, PlaceKind place, boolean said) {
        long id = store.create("", BigHouse.json(appliances, sections)).id();
        double before = usedMb();
        HouseView[] page = new HouseView[1];
        double opened = ms(() -> {
            UI.getCurrent().navigate("house/" + id + "/" + place.slug());
            page[0] = (HouseView) UI.getCurrent().getCurrentView();
            page[0].kept("", Map.of(), Optional.empty());
        });
        double heap = usedMb() - before;
        double key = Double.MAX_VALUE;
        for (int i = 0; i < 4; i++) {
            String input = i % 2 == 0 ? "66,000 Btu/h" : "65,000 Btu/h";
            key = Math.min(key, ms(() -> page[0].session().set("/appliances/0/input", input)));
        }
        long nodes = page[0].getElement().getOuterHTML().length();
        if (said) {
            System.out.printf(
                    Locale.ROOT,
                    "%d/%d %s: open %.0f ms, heap %.1f MB, key %.0f ms, markup %d kB%n",
                    appliances,
                    sections,
                    place.slug(),
                    opened,
                    heap,
                    key,
                    nodes / 1000);
        }
        UI.getCurrent().navigate("");
    }
}
