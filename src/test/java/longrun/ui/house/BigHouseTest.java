package longrun.ui.house;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.flow.dom.Element;
import java.util.List;
import java.util.Set;
import longrun.finding.Finding;
import longrun.ui.Shown;
import longrun.ui.house.appliances.AppliancesPlace;
import longrun.ui.house.route.RouteView;
import org.junit.jupiter.api.Test;

/** Houses of many sections: fields stay as many as are in sight, all else grows no faster than the house. */
class BigHouseTest extends OpenHouse {

    private static final Set<String> FIELDS = Set.of("input", "select");

    private HouseView big(int appliances, int sections, String place) {
        id = store.create("", BigHouse.json(appliances, sections)).id();
        return open(place);
    }

    private static long fields(Element e) {
        return (!e.isTextNode() && FIELDS.contains(e.getTag()) ? 1 : 0)
                + e.getChildren().mapToLong(BigHouseTest::fields).sum();
    }

    private static long nodes(Element e) {
        return 1 + e.getChildren().mapToLong(BigHouseTest::nodes).sum();
    }

    @Test
    void theRouteHasAsManyFieldsForTwoHundredSectionsAsForAHundred() {
        long hundred = fields(big(50, 100, "route").getElement());
        long twoHundred = fields(big(100, 200, "route").getElement());
        long forty = fields(big(20, 40, "route").getElement());
        assertThat(twoHundred).isEqualTo(hundred).isLessThan(forty);
    }

    @Test
    void thePageGrowsNoFasterThanTheHouse() {
        for (String place : new String[] {"route", "appliances", "connections", "house"}) {
            long hundred = nodes(big(50, 100, place).getElement());
            long twoHundred = nodes(big(100, 200, place).getElement());
            assertThat((double) twoHundred / hundred).as(place).isLessThan(2.1);
        }
    }

    @Test
    void aLineOfTextSaysWhatItsFieldsWouldAndHasThemOnceInHand() {
        HouseView page = big(50, 100, "route");
        RouteView route = (RouteView) page.placeShown();
        long before = fields(page.getElement());
        String id = page.session().text("/sections/50/id");
        assertThat(Shown.text(page.getElement())).contains(id + page.session().text("/sections/50/from"));
        route.hand().inHand(50);
        assertThat(page.lineInHand()).contains(id);
        assertThat(fields(page.getElement())).isGreaterThan(before).isLessThan(2 * before);
        route.hand().legs(50, "north 7");
        assertThat(page.session().text("/sections/50/legs/0")).isEqualTo("north 7 ft");
    }

    @Test
    void appliancesInSightHaveFieldsTheOthersStandAsText() {
        HouseView page = big(50, 100, "appliances");
        AppliancesPlace place = appliances(page);
        assertThat(fields(place.element()))
                .as("until the browser has told what is in sight only the two that add an appliance")
                .isEqualTo(2);
        assertThat(Shown.text(place.element())).contains("Range 0", "Range 49", "65,000 Btu/h, fed by section D49");
        place.inSight(10, 12);
        long three = fields(place.element());
        assertThat(three).isGreaterThan(3 * 8);
        assertThat(HouseShown.entry(page, "/appliances/11/input").text()).isEqualTo("65,000");
        place.inSight(10, 12);
        assertThat(fields(place.element())).isEqualTo(three);
        page.goTo("/appliances/40/input");
        assertThat(HouseShown.entry(page, "/appliances/40/input").text()).isEqualTo("65,000");
    }

    @Test
    void manyAnswersStandAsTextUntilOneIsInHand() {
        HouseView page = big(50, 100, "findings");
        List<Finding> open = page.session().findings();
        page.session().change(d -> {
            for (Finding f : open.subList(0, 60)) {
                d.root()
                        .withArray("answers")
                        .addObject()
                        .put("rule", f.rule())
                        .put("at", f.at())
                        .put("says", "accepted")
                        .put("who", "inspector");
            }
        });
        assertThat(Shown.text(page.getElement())).contains("by inspector, no date");
        assertThat(fields(page.getElement())).isLessThan(10);
    }

    @Test
    void aHouseOfAFewSectionsHasFieldsThroughout() {
        HouseView page = big(6, 12, "route");
        assertThat(fields(page.getElement())).isGreaterThan(3 * 12);
        assertThat(fields(big(6, 12, "appliances").getElement())).isGreaterThan(6 * 8);
    }
}
