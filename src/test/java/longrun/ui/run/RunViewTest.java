package longrun.ui.run;

import static org.assertj.core.api.Assertions.assertThat;

import com.github.mvysny.kaributesting.v10.LocatorJ;
import com.github.mvysny.kaributesting.v10.MockVaadin;
import com.github.mvysny.kaributesting.v10.Routes;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.dom.Element;
import elemental.json.Json;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import longrun.draft.run.Line;
import longrun.draft.run.Pipe;
import longrun.draft.run.PressureStart;
import longrun.ui.Fired;
import longrun.ui.Shown;
import longrun.ui.frame.Caution;
import longrun.words.UnitSystem;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The page without a browser. Figures: 2018 IFGC Table 402.4(28), row 60: 1/2 carries 110,000, 3/4 231,000, 1 in. 434,000 Btu/h. */
class RunViewTest {

    private RunView view;

    @BeforeEach
    void open() {
        MockVaadin.setup(new Routes());
        view = new RunView(new ReviewSizer(), run -> 1);
        UI.getCurrent().add(view);
        view.kept("", Map.of(), Optional.empty());
    }

    @AfterEach
    void close() {
        MockVaadin.tearDown();
    }

    private void type(int line, Line.Column column, String text) {
        Element in = view.lines().row(line).entry(column).getElement();
        in.setProperty("value", text);
        view.typed(line, column, view.lines().row(line).stored(column, text));
    }

    private void twoLines() {
        type(0, Line.Column.NAME, "to the branch");
        type(0, Line.Column.LENGTH, "22");
        type(1, Line.Column.NAME, "to the water heater");
        type(1, Line.Column.LENGTH, "12");
        type(1, Line.Column.INPUT, "199,000");
        type(2, Line.Column.NAME, "to the range");
        type(2, Line.Column.LENGTH, "18");
        type(2, Line.Column.INPUT, "65000");
    }

    private String page() {
        return view.getElement().getOuterHTML();
    }

    private String sizeOf(int line) {
        return Shown.text(find(view.lines().row(line).element(), "size"));
    }

    private static Element find(Element in, String clazz) {
        return in.getChildren()
                .map(c -> c.getClassList().contains(clazz) ? c : c.isTextNode() ? null : find(c, clazz))
                .filter(java.util.Objects::nonNull)
                .findFirst()
                .orElse(null);
    }

    private String state() {
        return Shown.text(view.getElement(), ".state") + ": " + Shown.text(view.getElement(), ".because");
    }

    @Test
    void cautionStandsWordForWordBeforeTheWork() {
        Element caution = view.getElement()
                .getChildren()
                .filter(e -> e.getClassList().contains("danger"))
                .findFirst()
                .orElseThrow();
        assertThat(Shown.text(find(caution, "c"))).isEqualTo(Caution.TEXT);
        assertThat(page().indexOf("Gas can kill")).isLessThan(page().indexOf("<main"));
    }

    @Test
    void twoLinesAndABranchAreSizedByTheLongestRun() {
        twoLines();
        assertThat(sizeOf(0)).isEqualTo("1");
        assertThat(sizeOf(1)).isEqualTo("3/4");
        assertThat(sizeOf(2)).isEqualTo("1/2");
        assertThat(state()).startsWith("Sized, not approved");
    }

    @Test
    void aWrongEntryIsKeptAndTheLastAnswerStaysShown() {
        twoLines();
        type(1, Line.Column.LENGTH, "12 x");
        assertThat(view.lines().row(1).entry(Line.Column.LENGTH).isWrong()).isTrue();
        assertThat(view.lines().row(1).entry(Line.Column.LENGTH).text()).isEqualTo("12 x");
        assertThat(view.draft().lines().get(1).length()).isEqualTo("12 x");
        assertThat(sizeOf(1)).isEqualTo("3/4");
        assertThat(state()).contains("line B, length");
        type(1, Line.Column.LENGTH, "12");
        assertThat(state()).startsWith("Sized, not approved");
    }

    @Test
    void aHalfTypedLengthIsNoEntryTheAnswerBeforeItStaysShown() {
        twoLines();
        type(1, Line.Column.LENGTH, "5");
        type(1, Line.Column.LENGTH, "5 ftt");
        assertThat(sizeOf(1)).isEqualTo("3/4");
        assertThat(Shown.text(view.lines().row(1).element())).contains("86 %");
    }

    @Test
    void anotherMaterialIsNeverGivenTheSizesOfTheOneBefore() {
        twoLines();
        type(1, Line.Column.LENGTH, "abc");
        view.choose(Pipe.CSST);
        assertThat(sizeOf(1)).isEqualTo("waiting");
        assertThat(state()).contains("Nothing is sized until it is corrected");
        assertThat(page()).doesNotContain("231,000");
    }

    @Test
    void twoLinesThatLeaveTheRegulatorAskWhetherTheyShareAPiece() {
        type(0, Line.Column.NAME, "water heater");
        type(0, Line.Column.LENGTH, "30");
        type(0, Line.Column.INPUT, "199,000");
        type(1, Line.Column.NAME, "range");
        type(1, Line.Column.LENGTH, "14");
        type(1, Line.Column.INPUT, "65000");
        assertThat(state()).contains("Lines A and B each leave the regulator");
    }

    @Test
    void aMissingInputIsUnknownAndNeverZero() {
        twoLines();
        type(1, Line.Column.INPUT, "");
        assertThat(sizeOf(0)).isNotEqualTo("1/2").doesNotContain("/");
        assertThat(sizeOf(2)).as("it may grow with what is still to be typed").isEqualTo("1/2so far");
        view.inHand(2);
        assertThat(state()).startsWith("Unknown");
    }

    @Test
    void eachKeyChangesTheAnswer() {
        twoLines();
        for (String typed : new String[] {"199000", "19900", "1990", "19", "1", "", "2", "20", "200000"}) {
            type(1, Line.Column.INPUT, typed);
        }
        assertThat(find(view.lines().row(1).element(), "load").getText()).isEqualTo("200,000");
        type(1, Line.Column.INPUT, "20000");
        assertThat(find(view.lines().row(1).element(), "load").getText()).isEqualTo("20,000");
        assertThat(sizeOf(1)).isEqualTo("1/2");
    }

    @Test
    void undoTakesBackAWholeEntryAndRedoBringsItBack() {
        twoLines();
        Fired.event(view.getElement(), "sheet-undo", Json.createObject());
        assertThat(view.draft().lines().get(2).input()).isEmpty();
        Fired.event(view.getElement(), "sheet-redo", Json.createObject());
        assertThat(view.draft().lines().get(2).input()).isEqualTo("65000 Btu/h");
    }

    @Test
    void copperIsNamedBothWays() {
        twoLines();
        choose("pipe", Pipe.COPPER);
        assertThat(sizeOf(2)).isEqualTo("1/2(5/8 OD)");
    }

    @Test
    void corrugatedTubingIsSizedByItsEhdNumberAndAsksForTheBrand() {
        twoLines();
        choose("pipe", Pipe.CSST);
        assertThat(sizeOf(2)).isEqualTo("23");
        assertThat(page()).contains("Question");
    }

    @Test
    void twoPsiEndsTheFirstLineAtALineRegulator() {
        twoLines();
        choose("start", PressureStart.TWO_PSI);
        assertThat(view.draft().lines().get(0).feeds()).containsExactly(PressureStart.LINE_REGULATOR);
        assertThat(view.draft().lines().get(1).from()).isEqualTo(PressureStart.LINE_REGULATOR);
        choose("start", PressureStart.WALL);
        assertThat(view.draft().lines().get(0).feeds()).containsExactly("B", "C");
    }

    @Test
    void otherUnitsShowTheSameRunAndKeepWhatWasTyped() {
        twoLines();
        view.kept("", Map.of(), Optional.of(UnitSystem.METRIC));
        assertThat(view.lines().row(1).entry(Line.Column.LENGTH).text()).isEqualTo("12 ft");
        assertThat(Shown.saying(view.lines().row(1).entry(Line.Column.LENGTH))).contains("Length 3.66 m");
        assertThat(sizeOf(1)).isEqualTo("3/4");
    }

    @Test
    void whatTheBrowserKeptComesBackWithEntriesTheProgramHadNotHeard() {
        twoLines();
        String kept = view.draft().kept();
        RunView again = new RunView(new ReviewSizer(), run -> 1);
        UI.getCurrent().add(again);
        again.kept(kept, Map.of("2 INPUT", "70000"), Optional.empty());
        assertThat(again.draft().lines()).hasSize(3);
        assertThat(again.draft().lines().get(2).input()).isEqualTo("70000 Btu/h");
    }

    @Test
    void aPlanOfAWholeHouseIsNotOpenedAndNothingIsLost() {
        twoLines();
        view.opened(
                "house.json",
                "{\"format\":\"longrun-plan/1\",\"regulators\":[{\"id\":\"R1\",\"kind\":\"first-stage\"},{\"id\":\"R2\",\"kind\":\"second-stage\"}]}",
                false);
        assertThat(view.draft().lines()).hasSize(3);
        assertThat(page()).contains("Nothing here was changed");
    }

    @Test
    void aRemovedLineHandsItsLinesToTheOneBefore() {
        twoLines();
        view.removed(0);
        assertThat(view.draft().lines()).extracting(Line::id).containsExactly("A", "B");
        assertThat(view.draft().lines())
                .extracting(Line::from)
                .containsExactly(PressureStart.FIRST_REGULATOR, PressureStart.FIRST_REGULATOR);
    }

    private void choose(String group, Enum<?> value) {
        Element radio = radio(view.getElement(), group, value.name());
        assertThat(radio).isNotNull();
        Fired.event(radio, "change", Json.createObject());
    }

    private static Element radio(Element in, String group, String value) {
        return in.getChildren()
                .map(c -> c.isTextNode()
                        ? null
                        : group.equals(c.getAttribute("name")) && value.equals(c.getAttribute("value"))
                                ? c
                                : radio(c, group, value))
                .filter(java.util.Objects::nonNull)
                .findFirst()
                .orElse(null);
    }

    @Test
    void theRunHasItsOwnDoor() {
        assertThat(RunView.class
                        .getAnnotation(com.vaadin.flow.router.Route.class)
                        .value())
                .isEqualTo("run");
        assertThat(LocatorJ._get(UI.getCurrent(), RunView.class)).isSameAs(view);
    }

    @Test
    void anInputInThousandsIsSizedAndStaysAsTyped() {
        type(0, Line.Column.LENGTH, "22");
        type(0, Line.Column.INPUT, "199k");
        assertThat(view.draft().lines().get(0).input()).isEqualTo("199 kBtu/h");
        assertThat(Shown.saying(view.lines().row(0).entry(Line.Column.INPUT))).contains("Input 199,000 Btu/h");
        type(1, Line.Column.LENGTH, "12");
        view.removed(1); // a change that writes the fields
        assertThat(view.lines().row(0).entry(Line.Column.INPUT).text()).isEqualTo("199k");
    }

    @Test
    void anEmptyRunClosesThePastePreviewAndUndoBringsTheLinesBack() {
        twoLines();
        view.pasted("to the grill\t12\t40,000");
        assertThat(Shown.count(view.getElement(), ".paste:not([hidden])")).isEqualTo(1);
        Fired.event(button(view.getElement(), "Begin an empty run"), "click", elemental.json.Json.createObject());
        assertThat(Shown.count(view.getElement(), ".paste:not([hidden])")).isZero();
        assertThat(view.draft().lines()).isEmpty();
        Fired.event(view.getElement(), "sheet-undo", elemental.json.Json.createObject());
        assertThat(view.draft().lines()).hasSize(3);
        assertThat(Shown.count(view.getElement(), ".paste:not([hidden])")).isZero();
    }

    private static Stream<Element> below(Element e) {
        return e.isTextNode()
                ? Stream.of()
                : Stream.concat(Stream.of(e), e.getChildren().flatMap(RunViewTest::below));
    }

    private static Element button(Element in, String says) {
        return below(in)
                .filter(e -> e.getTag().equals("button") && e.getText().equals(says))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void anInputThatMayBeMeantInThousandsIsAskedAndNotCalledSized() {
        twoLines();
        type(1, Line.Column.INPUT, "199");
        assertThat(state())
                .startsWith("1 question open")
                .contains("less than a pilot light burns")
                .doesNotContain("Sized");
        assertThat(page()).contains("Question").contains("go to the entry");
    }

    @Test
    void aLengthOfZeroIsAskedAndNotCalledSized() {
        twoLines();
        type(1, Line.Column.LENGTH, "0");
        assertThat(state()).startsWith("1 question open").contains("Line B: The length is 0 ft");
    }

    @Test
    void polyethyleneInTheHouseMustBeMended() {
        twoLines();
        view.choose(Pipe.POLYETHYLENE);
        assertThat(state()).contains("must fix").contains("polyethylene").doesNotContain("Sized");
        assertThat(page()).contains("Must fix").contains("does not lie in the ground");
        choose("start", PressureStart.TANK);
        assertThat(view.draft().plan().at("/sections/0/setting").asText())
                .as("from the tank to the branch it may lie in the ground")
                .isEqualTo("underground");
        assertThat(state()).as("at the range it may not").contains("2 must fix");
    }

    @Test
    void everyFindingOfTheReviewStandsOnThePage() {
        twoLines();
        choose("start", PressureStart.TWO_PSI);
        var review = longrun.review.Reviewer.standard()
                .review(
                        longrun.review.FullPlanReader.read(view.draft().plan())
                                .plan()
                                .orElseThrow(),
                        longrun.review.ReviewParts.PIPING);
        String shown = Shown.text(view.getElement());
        assertThat(review.findings()).isNotEmpty();
        assertThat(review.findings()).allSatisfy(f -> assertThat(shown).contains(f.found()));
        assertThat(shown).contains("Make a house of this run, and there enter its loss");
    }

    @Test
    void aLineOfItsOwnMaterialIsSizedInTheTableOfThatMaterial() {
        twoLines();
        type(2, Line.Column.LENGTH, "csst 18");
        assertThat(view.draft().lines()).extracting(Line::pipe).containsExactly(Pipe.STEEL, Pipe.STEEL, Pipe.CSST);
        assertThat(view.draft().lines().get(2).length()).isEqualTo("18 ft");
        assertThat(Shown.saying(view.lines().row(2).entry(Line.Column.LENGTH)))
                .contains("Corrugated tubing, length 18.0 ft");
        // 2018 IFGC Table 402.4(32), rows 60 and 70: EHD 19 carries 60,000 and 57,000, EHD 23 107,000 and 99,000 Btu/h.
        assertThat(sizeOf(0)).isEqualTo("1 in.");
        assertThat(sizeOf(2)).isEqualTo("23 EHD");
        view.inHand(2);
        assertThat(Shown.text(view.getElement())).contains("EHD");
        choose("pipe", Pipe.COPPER);
        assertThat(view.draft().lines())
                .as("the run's material is not that of a line with its own")
                .extracting(Line::pipe)
                .containsExactly(Pipe.COPPER, Pipe.COPPER, Pipe.CSST);
    }

    @Test
    void aLineTypedAfterAnotherMaterialGoesOnInIt() {
        type(0, Line.Column.LENGTH, "22 black iron");
        type(1, Line.Column.LENGTH, "csst 12");
        type(1, Line.Column.INPUT, "199,000");
        type(2, Line.Column.LENGTH, "18");
        assertThat(view.draft().lines()).extracting(Line::pipe).containsExactly(Pipe.STEEL, Pipe.CSST, Pipe.CSST);
    }

    @Test
    void aMaterialHalfTypedChangesNone() {
        twoLines();
        type(1, Line.Column.LENGTH, "pe");
        assertThat(view.draft().lines().get(1).pipe()).isEqualTo(Pipe.STEEL);
        assertThat(Shown.saying(view.lines().row(1).entry(Line.Column.LENGTH)).orElse(""))
                .contains("a length stands with its material");
        assertThat(sizeOf(1)).as("the answer before the entry").isEqualTo("3/4");
        type(1, Line.Column.LENGTH, "pe tubing 12");
        assertThat(Shown.saying(view.lines().row(1).entry(Line.Column.LENGTH)).orElse(""))
                .contains("sized in a whole house");
    }

    @Test
    void aMixedRunIsSavedAndOpenedWithTheMaterialOfEachLine() throws Exception {
        twoLines();
        view.isOf(2, Pipe.CSST);
        String file = longrun.draft.run.RunFile.write(view.draft());
        var again = longrun.draft.run.RunFile.read(file);
        assertThat(again.pipe()).isEqualTo(Pipe.STEEL);
        assertThat(again.lines()).extracting(Line::pipe).containsExactly(Pipe.STEEL, Pipe.STEEL, Pipe.CSST);
    }

    @Test
    void aFindingSaysItsLineAndWhatAHouseHoldsLeadsToOne() {
        twoLines();
        view.isOf(1, Pipe.POLYETHYLENE);
        assertThat(Shown.text(view.getElement())).contains("Line B: ");
        assertThat(page()).contains("Make a house of it");
        choose("start", PressureStart.TWO_PSI);
        assertThat(Shown.text(view.getElement())).contains("Where there are two: make a house of it");
    }

    @Test
    void aPlanWithTwoLineRegulatorsIsOfferedAsAHouse() {
        view.opened(
                "two.json",
                "{\"format\":\"longrun-plan/1\",\"regulators\":[{\"id\":\"R1\",\"kind\":\"two-psi\"},"
                        + "{\"id\":\"R2\",\"kind\":\"line\"},{\"id\":\"R3\",\"kind\":\"line\"}]}",
                false);
        assertThat(page()).contains("Nothing here was changed");
        assertThat(button(view.getElement(), "Open it as a whole house").hasAttribute("hidden"))
                .isFalse();
        view.opened("note.json", "{}", false);
        assertThat(button(view.getElement(), "Open it as a whole house").hasAttribute("hidden"))
                .isTrue();
    }
}
