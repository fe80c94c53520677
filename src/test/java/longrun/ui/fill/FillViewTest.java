package longrun.ui.fill;

import static org.assertj.core.api.Assertions.assertThat;

import com.github.mvysny.kaributesting.v10.MockVaadin;
import com.github.mvysny.kaributesting.v10.Routes;
import com.vaadin.flow.component.UI;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import longrun.draft.NotAPlan;
import longrun.draft.fill.FillEntry;
import longrun.draft.fill.FillFile;
import longrun.draft.fill.FuelUse;
import longrun.draft.fill.PastFillEntries;
import longrun.draft.fill.TankChoice;
import longrun.fuel.FuelReport;
import longrun.fuel.StartingClimate;
import longrun.review.FullPlanReader;
import longrun.review.Review;
import longrun.review.ReviewParts;
import longrun.review.Reviewer;
import longrun.ui.Fired;
import longrun.ui.Shown;
import longrun.ui.frame.Caution;
import longrun.words.FigureText;
import longrun.words.UnitSystem;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The page without a browser, on October 1, 2026. */
class FillViewTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 10, 1);

    private FillView view;

    @BeforeEach
    void open() {
        MockVaadin.setup(new Routes());
        view = opened();
    }

    @AfterEach
    void close() {
        MockVaadin.tearDown();
    }

    private static FillView opened() {
        FillView page = new FillView(new FillReviewer(), plan -> 1, () -> TODAY);
        UI.getCurrent().add(page);
        page.kept("", Map.of(), Optional.empty());
        return page;
    }

    private void type(FillEntry entry, String text) {
        FillPlaces.type(view, entry.name(), text);
    }

    private void type(int line, FuelUse.Column column, String text) {
        FillPlaces.type(view, "BURNS " + line + " " + column, text);
    }

    private void type(int fill, PastFillEntries.Column column, String text) {
        FillPlaces.type(view, "PAST " + fill + " " + column, text);
    }

    private void house() {
        type(FillEntry.GAUGE, "62");
        type(FillEntry.PRICE, "$2.85");
        type(0, FuelUse.Column.NAME, "furnace");
        type(0, FuelUse.Column.INPUT, "60k");
        type(0, FuelUse.Column.AMOUNT, "38,000");
        type(1, FuelUse.Column.NAME, "range");
        type(1, FuelUse.Column.INPUT, "65000");
        type(1, FuelUse.Column.AMOUNT, "35");
    }

    private Review review() {
        return Reviewer.standard().review(FullPlanReader.read(view.draft().plan()), ReviewParts.ALL);
    }

    private String answer() {
        return Shown.inSight(view.getElement());
    }

    private String state() {
        return Shown.text(view.getElement(), ".state") + ": " + Shown.text(view.getElement(), ".because");
    }

    private void fire(String event) {
        Fired.event(view.getElement(), event);
    }

    @Test
    void cautionStandsWordForWordBeforeTheWork() {
        assertThat(answer()).contains(Caution.TEXT);
    }

    @Test
    void anEmptyPageAsksForTheGaugeAndTheUseAndTellsWhereEachStartingValueIsFrom() {
        assertThat(state()).startsWith("Nothing to work out yet");
        assertThat(answer()).contains("starting value; 20 to 30 is common practice", "starting value: a week");
        assertThat(answer()).contains("starting value: take the one most like yours");
        type(FillEntry.GAUGE, "62");
        assertThat(state()).startsWith("1 question open").contains("what burns");
        assertThat(view.fields().field(FillEntry.GAUGE_DATE).entry().text())
                .as("the day is written into its own field")
                .isEqualTo("2026-10-01");
    }

    @Test
    void theFiguresAreTheWholeHousesToTheLastDigit() {
        house();
        FuelReport fuel = review().fuel().orElseThrow();
        long days = ChronoUnit.DAYS.between(TODAY, fuel.nextRefill().orElseThrow());
        String page = answer();
        assertThat(page)
                .contains("to the refill gauge, "
                        + longrun.draft.fill.FillState.spoken(fuel.nextRefill().orElseThrow()) + days + "days");
        assertThat(state())
                .startsWith("Call by "
                        + longrun.draft.fill.FillState.spoken(fuel.callBy().orElseThrow()));
        for (var figure :
                List.of(fuel.daysPerFill().coldestMonth(), fuel.daysPerFill().mean())) {
            assertThat(page).contains(FigureText.words(figure, UnitSystem.CUSTOMARY));
        }
        assertThat(page).contains(FigureText.words(fuel.annualGal(), UnitSystem.CUSTOMARY));
        assertThat(page)
                .contains(String.format(
                        java.util.Locale.ROOT, "%,.0f", fuel.cost().number()));
        assertThat(page)
                .contains(String.format(
                        java.util.Locale.ROOT, "%.1f", fuel.deliveriesPerYear().number()));
        assertThat(page).contains(FigureText.number(fuel.byUse().get("heating"), UnitSystem.CUSTOMARY));
    }

    @Test
    void theAnswerIsARangeAndSaysWhatWouldNarrowIt() {
        house();
        assertThat(answer()).contains("What would narrow it most", "the gauge, 5 in 100", "the climate, 2 \u00b0F");
        assertThat(state()).contains("It may be", "worked out, not measured: read the gauge again on");
    }

    @Test
    void eachOfTheStandardTanksStandsOnTheLadder() {
        house();
        assertThat(answer()).contains("120", "250", "320", "500 (stands there)", "1,000", "NFPA 58 6.4.1");
    }

    @Test
    void zeroUseSaysNoUseEnteredAndNeverEndlessDays() {
        type(FillEntry.GAUGE, "62");
        type(0, FuelUse.Column.NAME, "range");
        type(0, FuelUse.Column.INPUT, "65000");
        type(0, FuelUse.Column.AMOUNT, "0");
        assertThat(state()).startsWith("No use entered");
        assertThat(answer())
                .contains("no use entered")
                .doesNotContain("Infinity")
                .doesNotContain("NaN");
    }

    @Test
    void aUseNotKnownIsNeverZero() {
        house();
        type(1, FuelUse.Column.AMOUNT, "");
        assertThat(state()).startsWith("1 question open").contains("gallons a year of the range");
        assertThat(answer()).contains("not known");
    }

    @Test
    void wordsInNumberFieldsAreSaidBesideTheFieldAndTheLastAnswerStays() {
        house();
        String before = FigureText.words(review().fuel().orElseThrow().annualGal(), UnitSystem.CUSTOMARY);
        type(0, FuelUse.Column.AMOUNT, "a lot");
        assertThat(view.burns().row(0).entry(FuelUse.Column.AMOUNT).isWrong()).isTrue();
        assertThat(view.burns().row(0).entry(FuelUse.Column.AMOUNT).text()).isEqualTo("a lot");
        assertThat(state()).startsWith("Waiting for an entry").contains("line a, amount");
        assertThat(answer()).contains(before);
        type(0, FuelUse.Column.AMOUNT, "38,000");
        assertThat(state()).startsWith("Call by");
        for (FillEntry entry : List.of(
                FillEntry.GAUGE,
                FillEntry.REFILL_AT,
                FillEntry.COLDEST,
                FillEntry.DESIGN,
                FillEntry.LEAD,
                FillEntry.PRICE,
                FillEntry.COUNT,
                FillEntry.GAUGE_DATE)) {
            String stood = view.fields().field(entry).entry().text();
            type(entry, "elephants");
            assertThat(view.fields().field(entry).entry().isWrong())
                    .as(entry.name())
                    .isTrue();
            assertThat(view.fields().field(entry).entry().text()).isEqualTo("elephants");
            assertThat(state()).startsWith("Waiting for an entry").contains(entry.words());
            type(entry, stood);
            assertThat(view.fields().field(entry).entry().isWrong())
                    .as(entry.name())
                    .isFalse();
            assertThat(state()).startsWith("Call by");
        }
    }

    @Test
    void aGaugeOverAHundredADayToComeAndMonthsThatAreNoneSayWhatToWrite() {
        house();
        type(FillEntry.GAUGE, "140");
        assertThat(Shown.saying(view.fields().field(FillEntry.GAUGE).entry()))
                .hasValueSatisfying(s -> assertThat(s).contains("0 to 100"));
        type(FillEntry.GAUGE, "62");
        type(FillEntry.GAUGE_DATE, "2026-11-20");
        assertThat(Shown.saying(view.fields().field(FillEntry.GAUGE_DATE).entry()))
                .hasValueSatisfying(s -> assertThat(s).contains("still to come"));
        type(FillEntry.GAUGE_DATE, "2026-02-30");
        assertThat(Shown.saying(view.fields().field(FillEntry.GAUGE_DATE).entry()))
                .hasValueSatisfying(s -> assertThat(s).contains("write a date as"));
        type(FillEntry.GAUGE_DATE, "Oct 1 2026");
        type(1, FuelUse.Column.MONTHS, "winter");
        assertThat(Shown.saying(view.burns().row(1).entry(FuelUse.Column.MONTHS)))
                .hasValueSatisfying(s -> assertThat(s).contains("Sep to May"));
        type(1, FuelUse.Column.MONTHS, "Nov to Feb");
        assertThat(state()).startsWith("Call by");
        type(FillEntry.REFILL_AT, "85");
        assertThat(Shown.saying(view.fields().field(FillEntry.REFILL_AT).entry()))
                .hasValueSatisfying(s -> assertThat(s).contains("fills to 80 %"));
    }

    @Test
    void aLoadNoTankCarriesIsShortOnEveryRung() {
        house();
        type(2, FuelUse.Column.NAME, "pool heater");
        type(2, FuelUse.Column.INPUT, "9,000,000");
        type(2, FuelUse.Column.AMOUNT, "10");
        assertThat(answer()).contains("short", "No standard tank alone carries everything firing");
    }

    @Test
    void aPastRefillSaysCallNow() {
        house();
        type(FillEntry.GAUGE_DATE, "2026-01-05");
        assertThat(state()).startsWith("Call now");
    }

    @Test
    void theColdestMonthMovesAllTwelveAndBackAgain() {
        house();
        List<String> before = view.draft().months();
        type(FillEntry.COLDEST, "15.2");
        assertThat(view.draft().months().get(6)).isEqualTo("65.4 degF");
        type(FillEntry.COLDEST, "25.2");
        assertThat(view.draft().months()).isEqualTo(before);
    }

    @Test
    void anotherClimateFillsTheMonthsAndTheDesignTemperature() {
        view.hand().chose(StartingClimate.find("cold-north").orElseThrow());
        assertThat(view.draft().months().get(0)).isEqualTo("19 degF");
        assertThat(view.draft().text(FillEntry.DESIGN)).isEqualTo("-3.5 degF");
        view.hand().typedMonth(0, "");
        assertThat(view.draft().plan().at("/site/monthlyMeanTemp").isMissingNode())
                .isTrue();
        assertThat(view.draft().climate()).isEmpty();
        view.hand().typedMonth(0, "20");
        assertThat(view.draft().plan().at("/site/monthlyMeanTemp/0").asText()).isEqualTo("20 degF");
    }

    @Test
    void undoTakesBackAWholeEntryAndRedoBringsItBack() {
        house();
        fire("sheet-undo");
        assertThat(view.draft().lines().get(1).amount()).isEmpty();
        fire("sheet-redo");
        assertThat(view.draft().lines().get(1).amount()).isEqualTo("35 gal");
    }

    @Test
    void theKeysOfOneEntryAreOneStep() {
        house();
        for (String typed : new String[] {"4", "40", "400"}) {
            type(1, FuelUse.Column.AMOUNT, typed);
        }
        view.hand().inHand(1);
        for (String typed : new String[] {"3", "30"}) {
            type(1, FuelUse.Column.AMOUNT, typed);
        }
        fire("sheet-undo");
        assertThat(view.draft().lines().get(1).amount()).isEqualTo("400 gal");
        fire("sheet-undo");
        assertThat(view.draft().lines().get(1).amount()).isEmpty();
    }

    @Test
    void otherUnitsShowTheSameAndKeepWhatWasTyped() {
        house();
        view.kept("", Map.of(), Optional.of(UnitSystem.METRIC));
        assertThat(view.burns().row(1).entry(FuelUse.Column.AMOUNT).text()).isEqualTo("35 gal");
        assertThat(answer())
                .contains(FigureText.words(review().fuel().orElseThrow().annualGal(), UnitSystem.METRIC));
    }

    @Test
    void whatTheBrowserKeptComesBackWithEntriesTheProgramHadNotHeard() {
        house();
        String kept = view.draft().kept();
        FillView again = new FillView(new FillReviewer(), plan -> 1, () -> TODAY);
        UI.getCurrent().add(again);
        again.kept(kept, Map.of("GAUGE", "55", "BURNS 1 AMOUNT", "40"), Optional.empty());
        assertThat(again.draft().text(FillEntry.GAUGE)).isEqualTo("55 %");
        assertThat(again.draft().lines().get(1).amount()).isEqualTo("40 gal");
        assertThat(again.draft().isStartingValue(FillEntry.LEAD.name())).isTrue();
    }

    @Test
    void aSavedPageOpensAgainAndAWholeHouseIsLeftAlone() throws NotAPlan {
        house();
        String file = FillFile.write(view.draft());
        assertThat(file).doesNotContain("starting");
        FuelReport before = review().fuel().orElseThrow();
        view.opened("fill.longrun.json", file, false);
        assertThat(review().fuel().orElseThrow().annualGal().number())
                .isEqualTo(before.annualGal().number());
        assertThat(state()).startsWith("Call by");
        view.opened("house.json", "{\"format\":\"longrun-plan/1\",\"use\":{\"hotWater\":{}}}", false);
        assertThat(answer()).contains("Nothing here was changed");
        assertThat(view.draft().lines()).hasSize(2);
    }

    @Test
    void aHouseMadeOfItIsThePlanThatWasReviewed() {
        AtomicReference<String> made = new AtomicReference<>("");
        FillView page = new FillView(
                new FillReviewer(),
                plan -> {
                    made.set(plan.toString());
                    throw new org.springframework.dao.DataAccessResourceFailureException("no disk");
                },
                () -> TODAY);
        UI.getCurrent().add(page);
        page.kept(view.draft().kept(), Map.of("GAUGE", "62"), Optional.empty());
        page.acts().makeHouse();
        assertThat(made.get()).isEqualTo(page.draft().plan().toString()).doesNotContain("\"fill\"");
        assertThat(FullPlanReader.read(page.draft().plan()).plan()).isPresent();
        assertThat(Shown.inSight(page.getElement())).contains("No house was made");
    }

    @Test
    void pastFillsSetTheScaleAndForetellTheNext() {
        house();
        String plain = FigureText.words(review().fuel().orElseThrow().annualGal(), UnitSystem.CUSTOMARY);
        view.hand().pastedFills("Date\tGallons\n2026-01-12\t231\nFeb 24 2026\t300 gal");
        assertThat(view.draft().past()).hasSize(2);
        assertThat(Shown.text(view.past().element(), "p.s[role=status]"))
                .contains("every figure here is scaled by", "give or take");
        assertThat(answer()).contains("start").doesNotContain(plain);
        type(2, PastFillEntries.Column.DATE, "Apr 20 2026");
        assertThat(answer()).contains("predicted").doesNotContain("a fill is missing");
        type(2, PastFillEntries.Column.DATE, "2027-03-01");
        assertThat(answer()).contains("more than a full tank: a fill is missing");
        type(2, PastFillEntries.Column.DATE, "Apr 20 2026");
        type(2, PastFillEntries.Column.GALLONS, "100");
        assertThat(answer()).contains("% under");
        type(2, PastFillEntries.Column.DATE, "Apr 41 2026");
        assertThat(view.past().row(2).entry(PastFillEntries.Column.DATE).isWrong())
                .isTrue();
    }

    @Test
    void aCylinderIsGaugedByWeightToo() {
        house();
        view.hand().chose(TankChoice.LB_420);
        type(FillEntry.GAUGE, "200 lb");
        assertThat(state()).startsWith("Call");
        view.hand().chose(TankChoice.GAL_500);
        assertThat(Shown.saying(view.fields().field(FillEntry.GAUGE).entry()))
                .hasValueSatisfying(s -> assertThat(s).contains("percent"));
    }

    @Test
    void aRemovedLineTakesItsUseWithIt() {
        house();
        view.hand().removedLine(0);
        assertThat(view.draft().lines()).hasSize(1);
        assertThat(view.draft().plan().at("/use/heating").size()).isZero();
        assertThat(review().fuel().orElseThrow().annualGal().number()).isEqualTo(35);
    }

    @Test
    void aHeaterHeatsTheHouseUntilThePersonSaysOtherwise() {
        type(0, FuelUse.Column.NAME, "wall heater");
        assertThat(view.draft().lines().get(0).basis()).isEqualTo(FuelUse.Basis.HEATS);
        assertThat(view.burns().row(0).entry(FuelUse.Column.EFFICIENCY).text()).isEqualTo("80");
        view.hand().chose(0, FuelUse.Basis.GALLONS);
        type(0, FuelUse.Column.NAME, "wall heater in the shop");
        assertThat(view.draft().lines().get(0).basis()).isEqualTo(FuelUse.Basis.GALLONS);
    }

    /** What cannot be reckoned says what to write instead, in the answer. */
    @Test
    void anOddCountOrADesignTemperatureOverTheIndoorAirSaysWhatToWrite() {
        house();
        type(FillEntry.COUNT, "1.5");
        assertThat(state()).contains("a whole number of tanks");
        type(FillEntry.COUNT, "1");
        type(FillEntry.DESIGN, "75");
        assertThat(state()).contains("design temperature below the indoor air");
        assertThat(answer()).doesNotContain("NaN");
    }

    /** A file with any entry of its own turned into something else is shown with words or left alone, never a failure. */
    @Test
    void aDamagedFileIsShownWithWordsOrLeftAlone() throws com.fasterxml.jackson.core.JsonProcessingException {
        house();
        var json = new com.fasterxml.jackson.databind.ObjectMapper();
        String file = FillFile.write(view.draft());
        List<String> places = new java.util.ArrayList<>();
        leaves(json.readTree(file), "", places);
        assertThat(places).hasSizeGreaterThan(20);
        int i = 0;
        for (String place : places) {
            var tree = json.readTree(file);
            var value = i++ % 2 == 0 ? json.readTree("{\"x\":[1]}") : json.readTree("\"x\"");
            String parent = place.substring(0, place.lastIndexOf('/'));
            String name = place.substring(place.lastIndexOf('/') + 1);
            if (tree.at(parent) instanceof com.fasterxml.jackson.databind.node.ObjectNode object) {
                object.set(name, value);
            } else {
                ((com.fasterxml.jackson.databind.node.ArrayNode) tree.at(parent)).set(Integer.parseInt(name), value);
            }
            view.opened("damaged.json", tree.toString(), false);
            assertThat(answer()).as(place).containsAnyOf("is open; undo brings back", "was not opened");
        }
    }

    private static void leaves(com.fasterxml.jackson.databind.JsonNode node, String at, List<String> out) {
        if (node.isValueNode() || node.isEmpty()) {
            out.add(at);
            return;
        }
        if (node.isObject()) {
            node.fields().forEachRemaining(f -> leaves(f.getValue(), at + "/" + f.getKey(), out));
        } else {
            leaves(node.get(0), at + "/0", out);
        }
    }
}
