package longrun.ui.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.Predicate;
import longrun.draft.PlaceKind;
import longrun.draft.PressureReduction;
import longrun.draft.demo.DemoHouse;
import longrun.draft.entry.DraftTree;
import longrun.finding.Finding;
import longrun.finding.Severity;
import org.junit.jupiter.api.Test;

/** What the answer panel says to do next: never what is done already, and never that all is done while something is open. */
class NextStepTest extends OpenHouse {

    private HouseView demo() {
        id = store.create("", DemoHouse.json()).id();
        return open("house");
    }

    /** Leaves the findings of these severities and places open and has all others accepted by the inspector. */
    private static void acceptAllBut(HouseView page, Predicate<Finding> open) {
        List<Finding> accepted =
                page.session().findings().stream().filter(f -> !open.test(f)).toList();
        page.session()
                .change(d -> accepted.forEach(f -> d.root()
                        .withArray("answers")
                        .addObject()
                        .put("rule", f.rule())
                        .put("at", f.at())
                        .put("says", "accepted")
                        .put("who", "inspector")
                        .put("date", "2026-10-01")));
    }

    @Test
    void aLengthThatIsEnteredIsNotAskedForAgain() {
        HouseView page = demo();
        assertThat(page.session().at("/sections")).allMatch(s -> !s.get("legs").isEmpty());
        assertThat(HouseShown.next(page)).doesNotContain("Enter the length");
        page.session().change(d -> DraftTree.put(d.root(), "/sections/2/legs", tree("[]")));
        assertThat(HouseShown.next(page)).startsWith("Enter the length of section ");
    }

    @Test
    void placesNotBegunComeInTheOrderOfTheThread() {
        HouseView page = open("route");
        page.session().change(PressureReduction.WALL::into);
        page.session().change(d -> {
            d.root().withArray("/sections/0/legs").add("north 40 ft");
            d.root()
                    .withArray("/sections")
                    .addObject()
                    .put("id", "A")
                    .put("from", "R2")
                    .put("material", "steel")
                    .withArray("/legs")
                    .add("north 20 ft");
            d.root()
                    .withArray("/appliances")
                    .addObject()
                    .put("id", "range")
                    .put("kind", "range")
                    .put("input", "65000 Btu/h")
                    .put("fedBy", "A");
        });
        assertThat(HouseShown.next(page)).startsWith("Enter the parts at each appliance");
        page.session()
                .change(d -> d.root()
                        .withArray("/appliances/0/connection")
                        .addObject()
                        .put("part", "shutoff"));
        assertThat(HouseShown.next(page)).startsWith("Enter the tank:");
    }

    @Test
    void aPlaceNotBegunThatOtherFiguresWaitForIsTheNextStepOnceAllElseIsAnswered() {
        HouseView page = demo();
        page.session().change(d -> {
            d.root().withObject("/use").remove(List.of("hotWater", "pricePerKwh"));
            d.root().withObject("/site").remove("coldWater");
        });
        acceptAllBut(page, f -> PlaceKind.of(f.field()) == PlaceKind.HOT_WATER);
        page.session().set("/appliances/1/gas", "propane");
        page.session().set("/sections/0/under", "none");
        assertThat(page.session().findings())
                .isNotEmpty()
                .allMatch(f -> PlaceKind.of(f.field()) == PlaceKind.HOT_WATER);
        assertThat(HouseShown.next(page)).startsWith("Hot water: not entered yet.");
    }

    @Test
    void aCautionIsNotPassedOverOnceAllElseIsAnswered() {
        HouseView page = demo();
        page.session().set("/tank/waterCapacity", "120 gal");
        assertThat(page.session().findings()).anyMatch(f -> f.severity() == Severity.CAUTION);
        acceptAllBut(page, f -> f.severity() == Severity.CAUTION);
        page.session().set("/appliances/1/gas", "propane");
        page.session().set("/sections/0/under", "none");
        acceptAllBut(page, f -> f.severity() == Severity.CAUTION);
        assertThat(page.session().findings()).isNotEmpty().allMatch(f -> f.severity() == Severity.CAUTION);
        assertThat(HouseShown.next(page)).startsWith("Look at this caution:");
    }
}
