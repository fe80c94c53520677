package longrun.ui.house.route;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import longrun.Samples;
import longrun.draft.sections.RouteLines;
import longrun.draft.sections.WholeRoute;
import longrun.finding.Severity;
import longrun.quantity.Length;
import longrun.ui.Fired;
import longrun.ui.Shown;
import longrun.words.UnitSystem;
import org.junit.jupiter.api.Test;

/** The pipe route over a stored house, without a browser. The sizes are those of the drawn example: 59.5 ft, row 60. */
class RouteViewTest extends OpenRoutes {

    private static final String HOUSE =
            "{\"format\":\"longrun-plan/1\",\"regulators\":[{\"id\":\"R1\",\"kind\":\"integral-two-stage\",\"fedBy\":\"tank\",\"outlet\":\"11"
                    + " in w.c.\",\"allowedDrop\":\"0.5 in w.c.\"}],\"appliances\":[{\"id\":\"heater\",\"name\":\"Water"
                    + " heater\",\"kind\":\"on-demand-water-heater\",\"input\":\"199,000"
                    + " Btu/h\"},{\"id\":\"range\",\"kind\":\"range\",\"input\":\"65,000 Btu/h\"}]}";

    private RouteRow row(int index) {
        return view.table().rows().get(index);
    }

    private void typeThreeLines() {
        view.hand().legs(0, "north 2, up 4, east 14");
        row(0).tools().material().choose("steel");
        row(0).tools().setting().choose("indoors");
        row(1).feeds().choose("app:heater");
        view.hand().legs(1, "n 8, d 3");
        row(2).feeds().choose("app:range");
        view.hand().legs(2, "east 12, down 5");
    }

    @Test
    void lineIsBegunByItsFirstEntryAndNamedByTheTool() {
        open(HOUSE);
        view.hand().legs(0, "up 4");
        assertThat(desk.session().text("/sections/0/id")).isEqualTo("A");
        assertThat(desk.session().text("/sections/0/from")).isEqualTo("R1");
        assertThat(desk.session().text("/sections/0/legs/0")).isEqualTo("up 4 ft");
        assertThat(view.table().rows()).hasSize(2);
    }

    @Test
    void nextLineLeavesTheBranchAndTakesMaterialAndPlaceFromTheOneAbove() {
        open(HOUSE);
        typeThreeLines();
        assertThat(desk.session().text("/sections/1/from")).isEqualTo("A");
        assertThat(desk.session().text("/sections/2/from")).isEqualTo("A");
        assertThat(desk.session().text("/sections/2/material")).isEqualTo("steel");
        assertThat(desk.session().text("/sections/2/setting")).isEqualTo("indoors");
        assertThat(desk.session().text("/appliances/0/fedBy")).isEqualTo("B");
        assertThat(desk.session().errors()).isEmpty();
    }

    @Test
    void aMaterialMayStandWithTheLegs() {
        open(HOUSE);
        typeThreeLines();
        view.hand().legs(1, "csst n 8, d 3");
        assertThat(desk.session().text("/sections/1/material")).isEqualTo("csst");
        assertThat(desk.session().at("/sections/1/legs").toString()).isEqualTo("[\"north 8 ft\",\"down 3 ft\"]");
        view.hand().legs(1, "pe n 8, d");
        assertThat(desk.session().text("/sections/1/material"))
                .as("half an entry changes no material")
                .isEqualTo("csst");
        assertThat(desk.session().text("/sections/2/material")).isEqualTo("steel");
    }

    @Test
    void whatIsSaidOfTheWholeRouteLeavesExceptionsAndIsOneStep() {
        open(HOUSE);
        typeThreeLines();
        row(1).tools().material().choose("csst");
        row(2).tools().setting().choose("outdoors");
        assertThat(RouteRow.flags(new RouteLines(desk.session().draft()).at(2), "indoors"))
                .isEqualTo("outdoors");
        view.whole().choice(WholeRoute.MATERIAL).choose("copper");
        assertThat(desk.session().text("/sections/0/material")).isEqualTo("copper");
        assertThat(desk.session().text("/sections/1/material")).isEqualTo("csst");
        assertThat(desk.session().text("/sections/2/material")).isEqualTo("copper");
        assertThat(view.whole().element().getTextRecursively()).contains("other in B", "other in C");
        view.whole().choice(WholeRoute.JOINTS).choose("flared");
        assertThat(desk.session().at("/sections/0/joints").toString()).isEqualTo("[\"flared\"]");
        assertThat(desk.session().at("/sections/1/joints").isNothing()).isTrue();
        desk.session().undo();
        desk.session().undo();
        assertThat(desk.session().text("/sections/0/material")).isEqualTo("steel");
        assertThat(desk.session().text("/sections/2/material")).isEqualTo("steel");
    }

    @Test
    void aSectionThatIsAssumedSaysSoUntilItIsSeen() {
        open(HOUSE);
        typeThreeLines();
        desk.session().choose("/sections/1/assumed", true);
        assertThat(RouteRow.flags(new RouteLines(desk.session().draft()).at(1), "indoors"))
                .isEqualTo("not seen");
        assertThat(row(1).element().getTextRecursively()).contains("is assumed, not seen");
        assertThat(desk.session().review().orElseThrow().piping().isProvisional(1))
                .isTrue();
        view.hand().put(1, "assumed", "");
        assertThat(desk.session().at("/sections/1/assumed").isNothing()).isTrue();
        assertThat(desk.session().review().orElseThrow().piping().isProvisional(1))
                .isFalse();
    }

    @Test
    void everyLineIsSizedAndTheRowFramed() {
        open(HOUSE);
        typeThreeLines();
        assertThat(shown(0, "load")).isEqualTo("264,000");
        assertThat(List.of(shown(0, "size"), shown(1, "size"), shown(2, "size")))
                .containsExactly("1", "3/4", "1/2");
        assertThat(Shown.text(view.element(), ".used-row h3")).isEqualTo("The row used for section C");
        // the water heater's trap, not entered but asked for, makes the shorter way the longer run
        assertThat(Shown.text(view.element(), ".fit h3 .light")).isEqualTo("for the longest run, 31.0 ft measured");
    }

    @Test
    void pressureAtEachInletStandsUnderTheRow() {
        open(HOUSE);
        typeThreeLines();
        view.show(false); // the keys rest
        assertThat(Shown.markUp(view.element(), "[aria-label='Pressure along the longest run'] .draw-box"))
                .contains("<svg");
        assertThat(pressures())
                .hasSizeGreaterThanOrEqualTo(2)
                .first()
                .as("no label is entered, so there is no setting to ask for")
                .isEqualTo("not known");
        assertThat(pressureWords().get(0)).contains("Entered: 11 in. w.c.");
        assertThat(pressures().get(1)).startsWith("8.").endsWith("in. w.c.");
    }

    @Test
    void whatTookThePressureAndWhatMayBeAddedStandBesideTheInlet() {
        open(Samples.text("data/demo/orchard-house.json"));
        view.hand().inHand(2);
        assertThat(pressureWords().get(0))
                .startsWith("Ask the supplier to set it to no less than 10.25 in. w.c. and no more than 11.67 in. w.c.:"
                        + " Furnace asks for the least, Water heater allows the most, of the labels entered.");
        assertThat(pressureWords().get(1))
                .startsWith("With everything firing: of the 11 in. w.c. set, the regulator\u2019s fall takes 0.81 in."
                        + " w.c., the pipe 0.28 in. w.c., the connector 0.35 in. w.c. The label asks for 8 in."
                        + " w.c. to 14 in. w.c.: enough, if R2 falls no more than the default held from memory. Up"
                        + " to 32,000 Btu/h more may be drawn here with no pipe changed; past that section B"
                        + " grows.");
        assertThat(pressureWords().get(2))
                .contains("(assumed, its capacity is not entered)")
                .contains("neither its label\u2019s least nor its greatest is entered");
        assertThat(Shown.text(view.element(), ".tight"))
                .contains("farther: nothing changes")
                .contains("Section A is the tightest of this run: it carries 324,000 Btu/h, and 1 in. may carry 434,000"
                        + " Btu/h");
    }

    @Test
    void choosingInTheListLightsTheDrawing() {
        open(HOUSE);
        typeThreeLines();
        view.hand().inHand(1);
        assertThat(desk.inHand).contains("B");
        assertThat(Shown.markUp(view.element(), ".drawing .pan-box")).contains("data-key=\"B\" class=\"sec on\"");
        assertThat(Shown.text(view.element(), ".used-row h3")).isEqualTo("The row used for section B");
    }

    @Test
    void choosingElsewhereTakesTheLineInHand() {
        open(HOUSE);
        typeThreeLines();
        desk.takeInHand("A");
        assertThat(Shown.markUp(view.element(), ".drawing .pan-box")).contains("data-key=\"A\" class=\"sec on\"");
    }

    @Test
    void halfTypedLegsAreNoLengthOnceTheKeysRest() {
        open(HOUSE);
        typeThreeLines();
        Optional<Length> before =
                desk.session().review().orElseThrow().sizing().stage(0).longestRun();
        desk.session().endStep();
        view.hand().legs(1, "north 80");
        view.hand().legs(1, "north 80, sideways 3");
        desk.session().typingPaused();
        assertThat(desk.session().review().orElseThrow().sizing().stage(0).longestRun())
                .isEqualTo(before);
        assertThat(before).isPresent();
    }

    @Test
    void wrongLegsAreSaidBesideThemAndTheLineWaitsForItsSize() {
        open(HOUSE);
        typeThreeLines();
        view.hand().legs(1, "north 8, sideways 3");
        assertThat(row(1).legs().isWrong()).isTrue();
        assertThat(desk.session().text("/sections/1/legs/1")).isEqualTo("sideways 3 ft");
        assertThat(shown(1, "size")).isEqualTo("waiting");
        assertThat(shown(0, "size")).isEqualTo("1");
        view.hand().legs(1, "north 8, down 3");
        assertThat(row(1).legs().isWrong()).isFalse();
    }

    @Test
    void whatIsBeingTypedIsNeverWrittenBack() {
        open(HOUSE);
        view.hand().legs(0, "n 8");
        assertThat(row(0).legs().text()).isEmpty(); // the browser holds it; the page wrote nothing
        desk.session().undo();
        desk.session().redo();
        assertThat(row(0).legs().text()).isEqualTo("north 8");
    }

    @Test
    void applianceMovesFromLineToLine() {
        open(HOUSE);
        typeThreeLines();
        row(1).feeds().choose("app:range");
        assertThat(desk.session().text("/appliances/1/fedBy")).isEqualTo("B");
        assertThat(desk.session().text("/appliances/0/fedBy")).isEmpty();
    }

    @Test
    void raisedSizeIsKeptAndSaysWhatTheTableNeeds() {
        open(HOUSE);
        typeThreeLines();
        row(2).tools().chosen().choose("3/4");
        assertThat(shown(2, "size")).isEqualTo("3/4 needs 1/2");
        row(0).tools().installed().choose("1/2");
        assertThat(shown(0, "size")).isEqualTo("1/2 too small");
        assertThat(desk.session().findings())
                .filteredOn(f -> f.rule().equals("section-undersized") && f.severity() == Severity.MUST_FIX)
                .singleElement()
                .satisfies(f -> assertThat(Shown.text(view.element(), "[aria-label='Found in the route']"))
                        .contains(f.found()));
    }

    @Test
    void cappedEndKeepsItsReserve() {
        open(HOUSE);
        typeThreeLines();
        row(3).feeds().choose("cap");
        view.hand().legs(3, "south 6");
        view.hand().put(3, "reserve", "40,000 Btu/h");
        assertThat(desk.session().errors()).isEmpty();
        assertThat(shown(0, "load")).isEqualTo("304,000");
    }

    @Test
    void removedLineLetsGoOfWhatHungOnItAndHandsOnWhatLeftIt() {
        open(HOUSE);
        typeThreeLines();
        view.hand().removed(0);
        assertThat(desk.session().text("/sections/0/id")).isEqualTo("B");
        assertThat(desk.session().text("/sections/0/from")).isEqualTo("R1");
        desk.session().undo();
        assertThat(desk.session().text("/sections/0/id")).isEqualTo("A");
    }

    @Test
    void eachChoiceOfFittingsShowsItsEffectInFeet() {
        open(Samples.text("drawing/orchard-house.json"));
        view.hand().inHand(2);
        String words = Shown.text(view.element(), ".fit .scale");
        assertThat(words).contains("0.0 ft, row 50").contains("+9.4 ft, row 60").contains("+12.5 ft, row 60");
    }

    @Test
    void pasteIsShownAsUnderstoodBeforeItIsTaken() {
        open(HOUSE);
        view.pasted("Line\tFrom\tLegs, ft\tFeeds\n"
                + "1\tR1\tup 4, east 10\tbranch\n"
                + "2\t1\tnorth 8\tWater heater\n"
                + "3\t1\teast 12\tsauna");
        assertThat(Shown.count(view.element(), ".paste:not([hidden])")).isEqualTo(1);
        assertThat(desk.session().at("/sections").size()).isZero();
        assertThat(view.paste().lines().get(2).problems()).hasSize(1);
        view.paste().take();
        assertThat(desk.session().text("/sections/1/from")).isEqualTo("A");
        assertThat(desk.session().text("/appliances/0/fedBy")).isEqualTo("B");
        assertThat(desk.session().text("/sections/2/legs/0")).isEqualTo("east 12 ft");
    }

    @Test
    void pasteWithoutHeadingIsReadByWhatItHolds() {
        open(HOUSE);
        view.pasted("a\tR1\t14\trange\n");
        assertThat(view.paste().lines().get(0).legs()).containsExactly("14 ft");
        assertThat(view.paste().lines().get(0).feeds()).isEqualTo("app:range");
    }

    @Test
    void metricPageReadsBareNumbersAsMetres() {
        open(HOUSE);
        desk.units = UnitSystem.METRIC;
        view.show(true);
        view.hand().legs(0, "up 2");
        assertThat(desk.session().text("/sections/0/legs/0")).isEqualTo("up 2 m");
    }

    @Test
    void aSectionThatAGaugeWasReadAtAsksWhetherTheReadingGoesWithIt() {
        open(HOUSE);
        typeThreeLines();
        desk.session()
                .change(d ->
                        d.root().putArray("readings").addObject().put("at", "C").put("pressure", "10 in w.c."));
        view.hand().removed(2);
        assertThat(Shown.text(view.element(), ".removal"))
                .contains("Section C is named elsewhere", "A gauge reading of 10 in w.c.");
        assertThat(desk.session().at("/sections")).hasSize(3);
        Fired.press(Shown.first(view.element(), ".removal"), "Remove section C");
        assertThat(desk.session().at("/sections")).hasSize(2);
        assertThat(desk.session().at("/readings")).isEmpty();
        assertThat(desk.session().errors()).isEmpty();
        assertThat(Shown.count(view.element(), ".removal")).isZero();
        desk.session().undo();
        assertThat(desk.session().text("/readings/0/at")).isEqualTo("C");
        assertThat(desk.session().at("/sections")).hasSize(3);
    }

    @Test
    void whatIsPassedOnTheWayThroughTheListStaysWhereItHangs() {
        open(HOUSE);
        typeThreeLines();
        row(3).from().choose("A");
        row(3).feeds().choose("app:heater");
        row(3).feeds().choose("app:range");
        row(3).feeds().choose("cap");
        assertThat(desk.session().text("/appliances/0/fedBy")).isEqualTo("B");
        assertThat(desk.session().text("/appliances/1/fedBy")).isEqualTo("C");
        assertThat(desk.session().at("/sections/3/capped").isYes()).isTrue();
    }

    @Test
    void choiceWhoseAnswerIsOnTheWayIsHeldAgainstTheListAsItStandsNow() {
        open(HOUSE);
        typeThreeLines();
        row(3).feeds().choose("cap");
        row(3).from().spelled("a");
        assertThat(desk.session().text("/sections/3/from")).isEqualTo("A");
        row(3).from().spelled("q");
        assertThat(desk.session().text("/sections/3/from")).isEqualTo("A");
    }

    @Test
    void sectionsThatAreNoListSayWhichEntryIsWrongAndALineCanBeBegun() {
        open(HOUSE.replace("\"appliances\"", "\"sections\":\"as drawn\",\"appliances\""));
        assertThat(Shown.text(view.element())).contains("as drawn").contains("stands where a list is needed");
        view.hand().legs(0, "up 4");
        assertThat(desk.session().text("/sections/0/legs/0")).isEqualTo("up 4 ft");
        desk.session().undo();
        assertThat(desk.session().text("/sections")).isEqualTo("as drawn");
    }
}
