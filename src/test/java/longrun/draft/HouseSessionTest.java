package longrun.draft;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import longrun.review.Reviewer;
import longrun.store.DraftStore;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;

/** One house open in one page, and in two. */
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.MOCK)
class HouseSessionTest {

    private static final String EMPTY = "{\"format\":\"longrun-plan/1\"}";
    private static final String INPUT = "/appliances/0/input";

    @Autowired
    DraftStore store;

    private long id;
    private HouseSession house;

    @BeforeEach
    void begin() {
        id = store.create("", EMPTY).id();
        house = open();
    }

    private HouseSession open() {
        return HouseSession.open(store, Reviewer.standard(), id).orElseThrow();
    }

    @Test
    void eachKeyIsStoredBeforeItIsCalledSaved() {
        house.set("/name", "O");
        house.set("/name", "Orchard");
        assertThat(house.saveState()).isInstanceOf(SaveState.Saved.class);
        assertThat(open().text("/name")).isEqualTo("Orchard");
    }

    @Test
    void theListKnowsTheHouseByItsName() {
        house.set("/name", "Orchard");
        assertThat(store.find(id).orElseThrow().name()).isEqualTo("Orchard");
        house.undo();
        assertThat(store.find(id).orElseThrow().name()).isEmpty();
    }

    @Test
    void keysInOneEntryAreOneStep() {
        for (String typed : List.of("6", "65", "65,", "65,000 Btu/h")) {
            house.set(INPUT, typed);
        }
        house.undo();
        assertThat(house.at("/appliances").isNothing()).isTrue();
        house.redo();
        assertThat(house.text(INPUT)).isEqualTo("65,000 Btu/h");
    }

    @Test
    void keysInAnotherEntryAreAnotherStep() {
        house.set("/name", "A");
        house.set("/site/elevation", "9 ft");
        house.undo();
        assertThat(house.text("/name")).isEqualTo("A");
        assertThat(house.text("/site/elevation")).isEmpty();
    }

    @Test
    void aStepEndedIsNotJoined() {
        house.set("/name", "A");
        house.endStep();
        house.set("/name", "AB");
        house.undo();
        assertThat(house.text("/name")).isEqualTo("A");
    }

    @Test
    void whatIsNoQuantityStaysAsTypedAndTheReviewBeforeItStays() {
        house.set(INPUT, "65,000 Btu/h");
        assertThat(house.review().orElseThrow().connectedLoad().btuh()).isEqualTo(65_000);
        house.endStep();
        house.set(INPUT, "6 Btu/h"); // on the way to another figure: no entry yet
        house.set(INPUT, "65,00 Btu/h");
        assertThat(house.text(INPUT)).isEqualTo("65,00 Btu/h");
        assertThat(house.error(INPUT)).isPresent();
        assertThat(house.isCurrent()).isFalse();
        assertThat(house.review().orElseThrow().connectedLoad().btuh()).isEqualTo(65_000);
        assertThat(open().text(INPUT)).isEqualTo("65,00 Btu/h");
    }

    @Test
    void twoTabsNeverOverwriteOneAnotherInSilence() {
        HouseSession other = open();
        house.set("/name", "Mine");
        other.set("/name", "Theirs");
        assertThat(other.saveState()).isInstanceOf(SaveState.ChangedElsewhere.class);
        assertThat(store.find(id).orElseThrow().json()).contains("Mine");
        assertThat(other.text("/name")).isEqualTo("Theirs");
    }

    @Test
    void whatIsTypedBeforeTheChoiceIsKeptWithIt() {
        HouseSession other = open();
        house.set("/name", "Mine");
        other.set("/site/people", "x");
        other.set("/site/snowDepth", "2 ft");
        other.saveChoices().keepMine();
        assertThat(other.saveState()).isInstanceOf(SaveState.Saved.class);
        assertThat(open().text("/site/snowDepth")).isEqualTo("2 ft");
        other.undo();
        assertThat(other.text("/name"))
                .as("the other tab's text is one undo away")
                .isEqualTo("Mine");
    }

    @Test
    void takingTheirsShowsWhatIsStored() {
        HouseSession other = open();
        house.set("/name", "Mine");
        other.set("/name", "Theirs");
        other.saveChoices().takeTheirs();
        assertThat(other.text("/name")).isEqualTo("Mine");
        assertThat(other.saveState()).isInstanceOf(SaveState.Saved.class);
    }

    @Test
    void aCopyLeavesTheOtherTabsHouseAlone() {
        HouseSession other = open();
        house.set("/name", "Mine");
        other.set("/name", "Theirs");
        long copy = other.saveChoices().keepCopy().orElseThrow();
        assertThat(store.find(copy).orElseThrow().name()).isEqualTo("Theirs (copy)");
        assertThat(store.find(id).orElseThrow().name()).isEqualTo("Mine");
    }

    @Test
    void aTabThatHearsOfAnotherAsksBeforeItTakesAnything() {
        HouseSession other = open();
        house.set("/name", "Mine");
        other.saveChoices().checkForOtherChanges();
        assertThat(other.saveState()).isInstanceOf(SaveState.ChangedElsewhere.class);
        assertThat(other.text("/name")).isEmpty();
    }

    @Test
    void aDeletedHouseCanBeBroughtBackAsItStandsHere() {
        store.delete(id);
        house.set("/name", "Still here");
        assertThat(house.saveState()).isInstanceOf(SaveState.Deleted.class);
        house.saveChoices().bringBack();
        assertThat(open().text("/name")).isEqualTo("Still here");
    }

    @Test
    void halfACharacterIsNotCalledSaved() {
        house.set("/name", "a\ud83d");
        assertThat(house.saveState()).isInstanceOf(SaveState.NotSaved.class);
        house.set("/name", "a\ud83d\udd25");
        assertThat(house.saveState()).isInstanceOf(SaveState.Saved.class);
        assertThat(open().text("/name")).isEqualTo("a\ud83d\udd25");
    }

    @Test
    void aKeyDoesNotAskForFieldsToBeWritten() {
        List<HouseSession.Change> heard = new ArrayList<>();
        house.listen(heard::add);
        house.set("/name", "A");
        house.choose("/code/profile", "nfpa-54-58");
        house.undo();
        assertThat(heard)
                .containsExactly(HouseSession.Change.TYPED, HouseSession.Change.CHANGED, HouseSession.Change.CHANGED);
    }

    @Test
    void clearingTheLastEntryOfAnObjectTakesTheObjectToo() {
        house.set("/site/elevation", "9 ft");
        house.set("/site/elevation", "");
        assertThat(house.at("/site").isNothing()).isTrue();
    }

    @Test
    void whatStoodHereIsOneUndoAwayOnceTheirsIsTaken() {
        HouseSession other = open();
        house.set("/name", "Theirs");
        other.set("/name", "Mine");
        other.set("/site/people", "4");
        other.saveChoices().takeTheirs();
        assertThat(other.text("/name")).isEqualTo("Theirs");
        other.undo();
        assertThat(other.text("/name")).isEqualTo("Mine");
        assertThat(other.text("/site/people")).isEqualTo("4");
        other.redo();
        assertThat(other.text("/name")).isEqualTo("Theirs");
    }

    @Test
    void aVersionThatWaitsForTheChoiceStillWaitsAfterAReload() {
        HouseSession other = open();
        house.set("/name", "Theirs");
        other.set("/name", "Mine");
        HouseSession again = open();
        again.saveChoices().restoreUnsaved(other.draft());
        assertThat(again.saveState()).isInstanceOf(SaveState.ChangedElsewhere.class);
        assertThat(again.text("/name")).isEqualTo("Mine");
        assertThat(store.find(id).orElseThrow().json()).contains("Theirs");
        again.saveChoices().keepMine();
        assertThat(open().text("/name")).isEqualTo("Mine");
    }
}
