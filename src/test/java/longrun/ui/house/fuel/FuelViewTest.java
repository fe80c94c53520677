package longrun.ui.house.fuel;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.dom.Element;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import longrun.Samples;
import longrun.store.DraftStore;
import longrun.ui.field.Field;
import longrun.ui.frame.Entry;
import longrun.ui.house.HouseView;
import longrun.ui.house.OpenHouses;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** The place of the year's fuel, without a browser. */
class FuelViewTest extends OpenHouses {

    @Autowired
    DraftStore store;

    private HouseView page;

    private FuelView open(String json) {
        long id = store.create("", json).id();
        UI.getCurrent().navigate("house/" + id + "/fuel");
        page = (HouseView) UI.getCurrent().getCurrentView();
        return (FuelView) page.placeShown();
    }

    private static String demo() {
        return Samples.text("data/demo/orchard-house.json");
    }

    @Test
    void daysOfAFillAndTheDayToCallAreTold() {
        FuelView place = open(demo());
        assertThat(place.answers().slot("coldest").shown()).matches("4[0-9](\\.\\d)? days");
        assertThat(place.answers().slot("warmest").shown()).isEqualTo("over a year");
        assertThat(place.answers().slot("call").shown()).isEqualTo("20 Nov 2026");
        assertThat(place.answers().slot("next").shown()).isEqualTo("27 Nov 2026");
        assertThat(place.answers().plot().shown()).contains("call by 20 Nov");
    }

    @Test
    void gallonsOfEveryMonthAndUseStandInTheTable() {
        FuelView place = open(demo());
        assertThat(place.gallons().shown())
                .contains("Heating", "Hot water", "Range", "Jan", "Year")
                .doesNotContain("not known");
    }

    @Test
    void aUseThatIsNotKnownIsNeverZero() {
        FuelView place = open(demo().replace("\"designLoad\": \"38,000 Btu/h\", ", ""));
        assertThat(place.gallons().shown()).contains("not known");
        assertThat(place.answers().slot("annual").shown()).isEqualTo("not known");
        assertThat(place.answers().slot("cost").shown()).isEqualTo("not known");
        assertThat(place.answers().plot().shown()).contains("not known yet");
    }

    @Test
    void aClimateToBeginWithSaysWhereItIsFrom() {
        FuelView place = open("{\"format\":\"longrun-plan/1\"}");
        place.climate().begin();
        assertThat(page.session().at("/site/monthlyMeanTemp")).hasSize(12);
        assertThat(page.session().text("/site/monthlyMeanTemp/0")).isEqualTo("19 degF");
        assertThat(place.climate().saidNow()).contains("cold inland", "secondary");
    }

    @Test
    void unfinishedMeansWaitWithoutHoldingUpTheHouse() {
        FuelView place = open("{\"format\":\"longrun-plan/1\"}");
        for (int m = 0; m < 12; m++) {
            assertThat(page.session().errors()).isEmpty();
            assertThat(page.session().at("/site/monthlyMeanTemp").isNothing()).isTrue();
            place.climate().months().entry(m).getElement().setProperty("value", String.valueOf(30 + m));
            place.climate().months().typed(m, String.valueOf(30 + m));
        }
        assertThat(page.session().at("/site/monthlyMeanTemp")).hasSize(12);
        assertThat(page.session().at("/site/monthlyMeanTempBegun").isNothing()).isTrue();
    }

    @Test
    void aWrongMeanIsSaidAtItsMonth() {
        FuelView place = open(demo());
        place.climate().months().typed(3, "mild");
        assertThat(place.climate().months().entry(3).isWrong()).isTrue();
        assertThat(place.climate().months().entry(2).isWrong()).isFalse();
        assertThat(page.session().text("/site/monthlyMeanTempBegun/3")).isEqualTo("mild");
    }

    @Test
    void everyErrorOfAFileOfDaysIsNamedAtOnce() {
        FuelView place = open(demo());
        String before = page.session().draft().toString();
        place.climate().take("winter.csv", "date,high,low\n2025-01-01,34,18\n2025-13-01,34,18\n2025-01-03,mild,18\n");
        assertThat(place.climate().errorsShown()).hasSize(2);
        assertThat(place.climate().errorsShown().get(0)).startsWith("winter.csv:3:date");
        assertThat(place.climate().errorsShown().get(1)).startsWith("winter.csv:4:high");
        assertThat(page.session().draft().toString()).isEqualTo(before);
    }

    @Test
    void meansAreMadeFromAYearOfDays() {
        FuelView place = open("{\"format\":\"longrun-plan/1\"}");
        StringBuilder csv = new StringBuilder("date,high,low\n");
        for (int m = 1; m <= 12; m++) {
            csv.append(String.format(java.util.Locale.ROOT, "2025-%02d-10,%d,%d%n", m, 40 + m, 20 + m));
        }
        place.climate().take("year.csv", csv.toString());
        assertThat(page.session().text("/site/monthlyMeanTemp/0")).isEqualTo("31 degF");
        assertThat(page.session().text("/site/monthlyMeanTemp/11")).isEqualTo("42 degF");
    }

    @Test
    void ticketsAreHeldAgainstTheModel() {
        String tickets = "\"deliveries\": [{\"date\":\"2025-11-20\",\"volume\":\"240 gal\"},"
                + "{\"date\":\"2026-01-05\",\"volume\":\"251 gal\"},{\"date\":\"2026-02-20\",\"volume\":\"255 gal\"}],";
        FuelView place = open(demo().replace("\"use\": {", tickets + "\"use\": {"));
        assertThat(place.tickets().said()).contains("K-factor", "of the model");
    }

    @Test
    void weeksWithoutTruckAreWarnedOf() {
        FuelView place = open(demo());
        page.session()
                .change(d -> d.root()
                        .withObject("/site")
                        .putArray("unreachable")
                        .addObject()
                        .put("from", "01-04")
                        .put("to", "01-17"));
        assertThat(place.answers().warned()).hasSize(1);
        assertThat(place.answers().warned().get(0)).contains("4 Jan and 17 Jan");
    }

    @Test
    void aUseAddedStandsInTheList() {
        FuelView place = open(demo());
        place.uses().addOther();
        assertThat(page.session().at("/use/others")).hasSize(2);
        assertThat(place.fields()
                        .find("/use/others/1/hoursPerDay")
                        .orElseThrow()
                        .pointer())
                .isEqualTo("/use/others/1/hoursPerDay");
        place.deliveries().addTicket();
        assertThat(page.session().errors()).isEmpty();
    }

    @Test
    void doubtsAndWhatWasTakenAreSaid() {
        FuelView place = open(demo());
        assertThat(place.answers().doubted()).anyMatch(d -> d.contains("90,502"));
    }

    private Entry typed(FuelView place, String pointer, String text) {
        Entry entry = place.fields().find(pointer).flatMap(Field::entry).orElseThrow();
        page.kept("", Map.of(String.valueOf(entry.getElement().getAttribute("data-at")), text), Optional.empty());
        return entry;
    }

    @Test
    void aPriceMayHaveItsDollarSign() {
        FuelView place = open(demo());
        Entry price = typed(place, "/use/pricePerGal", "$2.80");
        assertThat(page.session().at("/use/pricePerGal").node().isNumber()).isTrue();
        assertThat(page.session().text("/use/pricePerGal")).isEqualTo("2.80");
        assertThat(price.saying()).contains("2.80 a gallon");
        typed(place, "/use/pricePerGal", "2,80");
        assertThat(price.isWrong()).isTrue();
        assertThat(price.text()).isEqualTo("2,80");
    }

    @Test
    void aDateMayBeWrittenAsPeopleDoAndIsEchoed() {
        FuelView place = open(demo());
        place.deliveries().addTicket();
        Entry date = typed(place, "/deliveries/0/date", "11/20/2026");
        assertThat(page.session().text("/deliveries/0/date")).isEqualTo("2026-11-20");
        assertThat(date.saying()).contains("November 20, 2026");
        typed(place, "/deliveries/0/date", "03/04/2026");
        assertThat(page.session().text("/deliveries/0/date")).isEqualTo("03/04/2026");
        assertThat(date.isWrong()).isTrue();
        assertThat(date.saying().orElseThrow()).contains("March 4", "April 3", "2026-03-04");
        Element days = date.getElement()
                .getParent()
                .getChildren()
                .filter(e -> e.getClassList().contains("which"))
                .findFirst()
                .orElseThrow();
        assertThat(days.getChild(0).getText()).isEqualTo("March 4, 2026");
        assertThat(days.getChild(1).getText()).isEqualTo("April 3, 2026");
        typed(place, "/deliveries/0/date", "2026-04-03");
        assertThat(days.getChildCount()).isZero();
    }

    @Test
    void aDayOfEveryYearMayHaveItsMonthsName() {
        FuelView place = open(demo());
        place.deliveries().addClosed();
        Entry from = typed(place, "/site/unreachable/0/from", "Jan 10");
        assertThat(page.session().text("/site/unreachable/0/from")).isEqualTo("01-10");
        assertThat(from.saying()).contains("January 10");
    }

    private static List<String> headings(FuelView place) {
        return headings(place.element()).toList();
    }

    private static Stream<String> headings(Element at) {
        if (at.isTextNode() || at.hasAttribute("hidden")) {
            return Stream.empty();
        }
        return at.getTag().equals("h3")
                ? Stream.of(at.getText())
                : at.getChildren().flatMap(FuelViewTest::headings);
    }

    @Test
    void theDrawingComesFirstThenEntriesWithTheirFiguresAndNoHeadingStandsOverNothing() {
        assertThat(headings(open("{\"format\":\"longrun-plan/1\"}")))
                .startsWith("Level through the year", "Heating", "Supplier", "The year", "Other uses", "Climate")
                .doesNotContain("A cold spell and a power cut");
        FuelView place = open(demo());
        assertThat(headings(place))
                .contains("Level through the year", "The year", "A cold spell and a power cut", "Doubts");
    }

    @Test
    void aStorageHeaterInSeriesCanBeEnteredUntilTheYearIsKnown() {
        FuelView place = open(demo().replaceFirst("(?s)\"storage\": \\{[^}]*\\},\\s*", ""));
        assertThat(place.answers().slot("annual").shown()).isEqualTo("not known");
        Map.of(
                        "volume", "80 gal",
                        "setTemp", "140 degF",
                        "heatPumpOutput", "5000 Btu/h",
                        "standbyLoss", "4 Btu/(h.degF)",
                        "roomTemp", "60 degF",
                        "room", "unheated")
                .forEach((entry, typed) -> page.session().set("/use/hotWater/storage/" + entry, typed));
        assertThat(page.session().errors()).isEmpty();
        place.work();
        assertThat(place.answers().slot("annual").shown()).endsWith("gal");
    }
}
