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
import longrun.ui.Fired;
import longrun.ui.Shown;
import longrun.ui.frame.Entry;
import longrun.ui.house.HouseShown;
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
        assertThat(HouseShown.inPlace(page, "coldest")).matches("4[0-9](\\.\\d)? days");
        assertThat(HouseShown.inPlace(page, "warmest")).isEqualTo("over a year");
        assertThat(HouseShown.inPlace(page, "call")).isEqualTo("20 Nov 2026");
        assertThat(HouseShown.inPlace(page, "next")).isEqualTo("27 Nov 2026");
        assertThat(HouseShown.drawing(page, "Level of the tank through the year"))
                .contains("call by 20 Nov");
    }

    @Test
    void gallonsOfEveryMonthAndUseStandInTheTable() {
        FuelView place = open(demo());
        assertThat(HouseShown.part(page, "months"))
                .contains("Heating", "Hot water", "Range", "Jan", "Year")
                .doesNotContain("not known");
    }

    @Test
    void aUseThatIsNotKnownIsNeverZero() {
        FuelView place = open(demo().replace("\"designLoad\": \"38,000 Btu/h\", ", ""));
        assertThat(HouseShown.part(page, "months")).contains("not known");
        assertThat(HouseShown.inPlace(page, "annual")).isEqualTo("not known");
        assertThat(HouseShown.inPlace(page, "cost")).isEqualTo("not known");
        assertThat(HouseShown.drawing(page, "Level of the tank through the year"))
                .contains("not known yet");
    }

    @Test
    void aClimateToBeginWithSaysWhereItIsFrom() {
        FuelView place = open("{\"format\":\"longrun-plan/1\"}");
        Fired.press(page.getElement(), "Begin with a cold inland climate");
        assertThat(page.session().at("/site/monthlyMeanTemp")).hasSize(12);
        assertThat(page.session().text("/site/monthlyMeanTemp/0")).isEqualTo("19 degF");
        assertThat(HouseShown.part(page, "climate")).contains("cold inland", "secondary");
    }

    @Test
    void unfinishedMeansWaitWithoutHoldingUpTheHouseAlsoThoseTypedWhileTheProgramWasAway() {
        FuelView place = open("{\"format\":\"longrun-plan/1\"}");
        for (int m = 0; m < 12; m++) {
            assertThat(page.session().errors()).isEmpty();
            assertThat(page.session().at("/site/monthlyMeanTemp").isNothing()).isTrue();
            month(m, String.valueOf(30 + m));
        }
        assertThat(page.session().at("/site/monthlyMeanTemp")).hasSize(12);
        assertThat(page.session().at("/site/monthlyMeanTempBegun").isNothing()).isTrue();
    }

    @Test
    void aWrongMeanIsSaidAtItsMonth() {
        FuelView place = open(demo());
        month(3, "mild");
        assertThat(month(3).isWrong()).isTrue();
        assertThat(month(2).isWrong()).isFalse();
        assertThat(page.session().text("/site/monthlyMeanTempBegun/3")).isEqualTo("mild");
    }

    @Test
    void everyErrorOfAFileOfDaysIsNamedAtOnce() {
        FuelView place = open(demo());
        String before = page.session().draft().toString();
        ClimateFields climate = new ClimateFields(page);
        climate.take("winter.csv", "date,high,low\n2025-01-01,34,18\n2025-13-01,34,18\n2025-01-03,mild,18\n");
        List<String> errors = Shown.texts(climate.element(), ".errors li");
        assertThat(errors).hasSize(2);
        assertThat(errors.get(0)).startsWith("winter.csv:3:date");
        assertThat(errors.get(1)).startsWith("winter.csv:4:high");
        assertThat(page.session().draft().toString()).isEqualTo(before);
    }

    @Test
    void meansAreMadeFromAYearOfDays() {
        FuelView place = open("{\"format\":\"longrun-plan/1\"}");
        StringBuilder csv = new StringBuilder("date,high,low\n");
        for (int m = 1; m <= 12; m++) {
            csv.append(String.format(java.util.Locale.ROOT, "2025-%02d-10,%d,%d%n", m, 40 + m, 20 + m));
        }
        new ClimateFields(page).take("year.csv", csv.toString());
        assertThat(page.session().text("/site/monthlyMeanTemp/0")).isEqualTo("31 degF");
        assertThat(page.session().text("/site/monthlyMeanTemp/11")).isEqualTo("42 degF");
    }

    @Test
    void ticketsAreHeldAgainstTheModel() {
        String tickets = "\"deliveries\": [{\"date\":\"2025-11-20\",\"volume\":\"240 gal\"},"
                + "{\"date\":\"2026-01-05\",\"volume\":\"251 gal\"},{\"date\":\"2026-02-20\",\"volume\":\"255 gal\"}],";
        FuelView place = open(demo().replace("\"use\": {", tickets + "\"use\": {"));
        assertThat(HouseShown.part(page, "tickets")).contains("K-factor", "of the model");
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
        assertThat(HouseShown.part(page, "level"))
                .containsOnlyOnce("when no truck can come")
                .contains("4 Jan and 17 Jan");
    }

    @Test
    void aUseAddedStandsInTheList() {
        FuelView place = open(demo());
        Fired.press(page.getElement(), "Add a use");
        assertThat(page.session().at("/use/others")).hasSize(2);
        assertThat(HouseShown.entry(page, "/use/others/1/hoursPerDay").text()).isEmpty();
        Fired.press(page.getElement(), "Add a delivery ticket");
        assertThat(page.session().errors()).isEmpty();
    }

    @Test
    void doubtsAndWhatWasTakenAreSaid() {
        FuelView place = open(demo());
        assertThat(Shown.texts(page.getElement(), ".doubts li")).anyMatch(d -> d.contains("90,502"));
    }

    private Entry month(int month) {
        return (Entry)
                Shown.first(page.getElement(), "#month-" + month).getComponent().orElseThrow();
    }

    private void month(int month, String text) {
        String at = month(month).getElement().getAttribute("data-at");
        page.kept("", Map.of(at, text), Optional.empty());
    }

    private Entry typed(String pointer, String text) {
        Entry entry = HouseShown.entry(page, pointer);
        page.kept("", Map.of(String.valueOf(entry.getElement().getAttribute("data-at")), text), Optional.empty());
        return entry;
    }

    @Test
    void aPriceMayHaveItsDollarSign() {
        FuelView place = open(demo());
        Entry price = typed("/use/pricePerGal", "$2.80");
        assertThat(page.session().at("/use/pricePerGal").node().isNumber()).isTrue();
        assertThat(page.session().text("/use/pricePerGal")).isEqualTo("2.80");
        assertThat(Shown.saying(price)).contains("2.80 a gallon");
        typed("/use/pricePerGal", "2,80");
        assertThat(price.isWrong()).isTrue();
        assertThat(price.text()).isEqualTo("2,80");
    }

    @Test
    void aDateMayBeWrittenAsPeopleDoAndIsEchoed() {
        FuelView place = open(demo());
        Fired.press(page.getElement(), "Add a delivery ticket");
        Entry date = typed("/deliveries/0/date", "11/20/2026");
        assertThat(page.session().text("/deliveries/0/date")).isEqualTo("2026-11-20");
        assertThat(Shown.saying(date)).contains("November 20, 2026");
        typed("/deliveries/0/date", "03/04/2026");
        assertThat(page.session().text("/deliveries/0/date")).isEqualTo("03/04/2026");
        assertThat(date.isWrong()).isTrue();
        assertThat(Shown.saying(date).orElseThrow()).contains("March 4", "April 3", "2026-03-04");
        Element days = date.getElement()
                .getParent()
                .getChildren()
                .filter(e -> e.getClassList().contains("which"))
                .findFirst()
                .orElseThrow();
        assertThat(days.getChild(0).getText()).isEqualTo("March 4, 2026");
        assertThat(days.getChild(1).getText()).isEqualTo("April 3, 2026");
        typed("/deliveries/0/date", "2026-04-03");
        assertThat(days.getChildCount()).isZero();
    }

    @Test
    void aDayOfEveryYearMayHaveItsMonthsName() {
        FuelView place = open(demo());
        Fired.press(page.getElement(), "Add weeks when no truck can come");
        Entry from = typed("/site/unreachable/0/from", "Jan 10");
        assertThat(page.session().text("/site/unreachable/0/from")).isEqualTo("01-10");
        assertThat(Shown.saying(from)).contains("January 10");
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
        assertThat(headings(open("{\"format\":\"longrun-plan/1\",\"use\":{\"pricePerGal\":2.85}}")))
                .startsWith("Level through the year", "Heating", "Supplier", "The year", "Other uses", "Climate")
                .doesNotContain("A cold spell and a power cut");
        FuelView place = open(demo());
        assertThat(headings(place))
                .contains("Level through the year", "The year", "A cold spell and a power cut", "Doubts");
    }

    @Test
    void beforeAnythingIsEnteredThereAreEntriesAloneAndFiguresComeBehindThem() {
        FuelView place = open("{\"format\":\"longrun-plan/1\"}");
        assertThat(headings(place)).startsWith("Heating", "Supplier").doesNotContain("Level through the year");
        page.session().set("/use/pricePerGal", "2.85");
        place.show(false);
        place.work();
        assertThat(headings(place)).startsWith("Heating", "Supplier").contains("Level through the year", "The year");
    }

    @Test
    void aStorageHeaterInSeriesCanBeEnteredUntilTheYearIsKnown() {
        FuelView place = open(demo().replaceFirst("(?s)\"storage\": \\{[^}]*\\},\\s*", ""));
        assertThat(HouseShown.inPlace(page, "annual")).isEqualTo("not known");
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
        assertThat(HouseShown.inPlace(page, "annual")).endsWith("gal");
    }
}
