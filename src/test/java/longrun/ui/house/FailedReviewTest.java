package longrun.ui.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DateTimeException;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import longrun.draft.HouseSession;
import longrun.draft.HouseState;
import longrun.draft.PlaceKind;
import longrun.draft.SaveState;
import longrun.draft.demo.DemoHouse;
import longrun.plan.Plan;
import longrun.plan.json.PlanReader;
import longrun.review.Review;
import longrun.review.ReviewParts;
import longrun.review.Reviewer;
import longrun.ui.Shown;
import org.junit.jupiter.api.Test;

/** A house whose working out fails by a fault of the program: it opens, keeps what is entered, and nothing is known. */
class FailedReviewTest extends OpenHouse {

    private final Function<Plan, Review> fine = plan -> Reviewer.standard().review(plan, ReviewParts.ALL);

    /** Fails where the house has this name, as a date no calendar holds once did. */
    private Review failing(Plan plan) {
        if (plan.name().is("Beyond"::equals)) {
            throw new DateTimeException("no such year");
        }
        if (plan.name().is("Deep"::equals)) {
            return deeper(plan);
        }
        return fine.apply(plan);
    }

    private Review deeper(Plan plan) {
        Review review = deeper(plan);
        throw new IllegalStateException("never here " + review);
    }

    private HouseView demoNamed(String name) throws Exception {
        String json = ((com.fasterxml.jackson.databind.node.ObjectNode) PlanReader.tree(DemoHouse.json()))
                .put("name", name)
                .toString();
        id = store.create(name, json).id();
        HouseView page = open("house");
        page.open(HouseSession.of(store, this::failing, store.find(id).orElseThrow()));
        page.kept("", Map.of(), Optional.empty());
        return page;
    }

    @Test
    void aHouseThatCannotBeWorkedOutOpensInEveryPlaceWithItsEntries() throws Exception {
        for (String name : new String[] {"Beyond", "Deep"}) {
            HouseView page = demoNamed(name);
            for (PlaceKind place : PlaceKind.values()) {
                page.show(place);
                String shown = Shown.inSight(page.getElement());
                assertThat(shown)
                        .as("%s", place)
                        .contains("This house can\u2019t be worked out at the moment", "Every entry is kept")
                        .doesNotContain("Sized, not approved", "nothing missing", "Nothing is found", "0 must fix");
            }
            page.show(PlaceKind.APPLIANCES);
            assertThat(HouseShown.entry(page, "/appliances/0/input").text()).isEqualTo("199,000");
            assertThat(page.session().draft().get("sections")).hasSize(6);
        }
    }

    @Test
    void whatWasKnownBeforeIsNotShownOfWhatCannotBeWorkedOut() throws Exception {
        HouseView page = demoNamed("Orchard");
        for (PlaceKind place : PlaceKind.values()) {
            page.show(place);
        }
        assertThat(HouseShown.figure(page, "load")).isEqualTo("324,000 Btu/h");
        page.session().set("/name", "Beyond");
        assertThat(page.session().review()).isEmpty();
        for (PlaceKind place : PlaceKind.values()) {
            page.show(place);
            assertThat(Shown.inSight(page.getElement()))
                    .as("%s", place)
                    .doesNotContain("324,000", "59.5", "Vapour against", "The row used for section", "The year");
        }
        assertThat(HouseShown.state(page)).startsWith(HouseState.FAILED);
    }

    @Test
    void theEntryThatBroughtItAboutIsStoredAndCanBeTakenBackOrTypedOver() throws Exception {
        HouseView page = demoNamed("Orchard");
        page.session().set("/name", "Beyond");
        assertThat(page.session().saveState()).isInstanceOf(SaveState.Saved.class);
        assertThat(store.find(id).orElseThrow().json()).contains("Beyond");
        page.session().undo();
        assertThat(HouseShown.notice(page)).isEmpty();
        assertThat(HouseShown.state(page)).startsWith(HouseState.SIZED);
        page.session().redo();
        assertThat(HouseShown.notice(page)).contains("can\u2019t be worked out");
        page.session().endStep();
        page.session().set("/name", "Beyond the orchard");
        assertThat(HouseShown.state(page)).startsWith(HouseState.SIZED);
        assertThat(HouseShown.notice(page)).isEmpty();
    }

    @Test
    void aWrongEntryBesideItIsSaidAllTheSame() throws Exception {
        HouseView page = demoNamed("Beyond");
        page.session().set("/appliances/0/input", "many");
        assertThat(page.session().error("/appliances/0/input")).isPresent();
        page.session().endStep();
        page.session().set("/site/people", "5");
        assertThat(HouseShown.notice(page)).contains("can\u2019t be worked out");
        page.session().set("/name", "Orchard");
        assertThat(HouseShown.state(page)).contains("left out");
        assertThat(HouseShown.notice(page)).isEmpty();
    }

    @Test
    void ofAHouseThatCannotBeWorkedOutItIsNeverSaidThatAllIsEntered() throws Exception {
        for (String name : new String[] {"Beyond", "Deep"}) {
            assertThat(HouseShown.next(demoNamed(name)))
                    .startsWith("What is open can\u2019t be told")
                    .doesNotContain("All that is asked is entered");
        }
    }
}
