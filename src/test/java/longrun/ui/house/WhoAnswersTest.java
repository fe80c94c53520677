package longrun.ui.house;

import static org.assertj.core.api.Assertions.assertThat;

import longrun.draft.NextStep;
import longrun.draft.OpenQuestions;
import longrun.draft.PlaceKind;
import longrun.draft.PressureReduction;
import longrun.draft.entry.NewItem;
import longrun.finding.AskWhom;
import longrun.ui.Shown;
import org.junit.jupiter.api.Test;

/** What the owner is asked on the way is what the owner can answer; the rest is taken along, and counted. */
class WhoAnswersTest extends OpenHouse {

    private HouseView withARange() {
        HouseView page = open("findings");
        page.session().change(PressureReduction.WALL::into);
        page.session()
                .add(
                        "/appliances",
                        NewItem.of("id", "range").and("kind", "range").and("input", "65000 Btu/h"));
        return page;
    }

    @Test
    void whatASupplierKnowsIsNotAskedOfTheOwnerButCounted() {
        OpenQuestions open = OpenQuestions.of(withARange().session());
        assertThat(open.next()).isNotEmpty().noneMatch(a -> a.whom().isForSomeoneElse());
        assertThat(open.forSomeoneElse()).containsKeys(AskWhom.SUPPLIER, AskWhom.INSPECTOR);
        int along =
                open.forSomeoneElse().values().stream().mapToInt(l -> l.size()).sum();
        assertThat(open.count()).isEqualTo(open.own().size() + along);
    }

    @Test
    void thePipeThatComesWithThePictureAsksNothingUntilItIsPaced() {
        HouseView page = withARange();
        assertThat(OpenQuestions.of(page.session()).countIn(PlaceKind.ROUTE)).isZero();
        assertThat(HouseShown.status(page, PlaceKind.ROUTE)).startsWith("not entered yet");
        page.session().change(d -> d.root().withArray("/sections/0/legs").add("north 40 ft"));
        assertThat(OpenQuestions.of(page.session()).forSomeoneElse().get(AskWhom.FITTER))
                .anyMatch(a -> a.first().field().equals("/sections/0/depth"));
    }

    @Test
    void ofTheEntriesOfTwoRegulatorsTheSupplierIsAskedOnce() {
        assertThat(OpenQuestions.of(withARange().session()).forSomeoneElse().get(AskWhom.SUPPLIER))
                .filteredOn(a -> a.first().field().endsWith("/minInlet"))
                .singleElement()
                .satisfies(a ->
                        assertThat(a.entries()).containsExactly("/regulators/0/minInlet", "/regulators/1/minInlet"));
    }

    @Test
    void aHouseThatAsksItsOwnerNothingStillListsWhatItAsksOthers() {
        HouseView page = open("findings");
        page.session().change(d -> d.root().putObject("code").put("adopted", "county code"));
        page.session().change(PressureReduction.WALL::into);
        NextStep step = NextStep.of(page.session());
        assertThat(step.isAsked())
                .as("the first appliance comes before all questions")
                .isFalse();
        assertThat(HouseShown.findings(page))
                .doesNotContain("For yourself")
                .contains("For the supplier, 2", "For the inspector, 1");
    }

    @Test
    void anApplianceNamesInOneLineWhatItsPlateIsAskedAndTellsAllOfItOnceUnfolded() {
        withARange();
        String page = Shown.text(open("appliances").getElement());
        assertThat(page)
                .contains("4 questions: gas, room, least inlet pressure, greatest inlet pressure")
                .contains("What least inlet pressure for propane does the rating plate of the range give?");
    }
}
