package longrun.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import longrun.store.Outcome.Conflict;
import longrun.store.Outcome.Gone;
import longrun.store.Outcome.Saved;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the store promises, on the database file that the program uses. */
class DraftStoreTest {

    private static final Instant MORNING = Instant.parse("2026-09-01T06:30:00.123Z");

    @TempDir
    static Path folder;

    private static final TurnedClock clock = new TurnedClock(MORNING);
    private static OpenStore store;
    private static DraftStore drafts;

    @BeforeAll
    static void open() {
        store = new OpenStore(folder, clock);
        drafts = store.drafts;
    }

    @AfterAll
    static void close() {
        store.close();
    }

    @Test
    void newHouseIsKeptAsTyped() {
        Draft made = drafts.create("Fernbank cottage", "{ \"name\" : \"Fernbank cottage\",\n\t\"b\":1, \"a\":1.0 }\n");

        assertThat(drafts.find(made.id())).contains(made);
        assertThat(made.json()).isEqualTo("{ \"name\" : \"Fernbank cottage\",\n\t\"b\":1, \"a\":1.0 }\n");
        assertThat(made.version()).isEqualTo(1);
        assertThat(made.undos()).isZero();
        assertThat(made.redos()).isZero();
        assertThat(made.changed()).isEqualTo(clock.instant());
    }

    @Test
    void aRehearsedHouseIsNotKept() {
        List<ListedHouse> before = drafts.list();

        drafts.rehearse("{\"name\":\"Nobody's\"}", 8);

        assertThat(drafts.list()).isEqualTo(before);
        assertThat(drafts.listDeleted()).extracting(ListedHouse::name).doesNotContain("Nobody's");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{\"sections\":[{\"length\":\"3,7 ft\"}]}",
                "{\"length\":\"about ten paces\",\"length\":\"10 ft\"}",
                "{\"note\":\"caf\u00e9 cafe\u0301 \ud83d\udd25 \u05d1\u05d9\u05ea \\u0000 \\ud800\"}",
                "{\r\n  \"big\": 1.000000000000000000000000000001e+05\r\n}",
                "[]",
                "\"\"",
                "null",
                " 0 "
            })
    void textThatIsNoPlanComesBackCharacterForCharacter(String json) {
        Draft made = drafts.create("odd", "{}");

        assertThat(drafts.save(made.id(), json, 1)).isInstanceOf(Saved.class);

        assertThat(drafts.find(made.id()).orElseThrow().json()).isEqualTo(json);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "  ", "{", "{}{}", "{} x", "{\"a\":}", "[1,]", "plan", "\"half \ud83d\""})
    void textThatIsNotOneJsonValueIsRefusedAndTheDraftStands(String text) {
        Draft made = drafts.create("stands", "{\"a\":1}");

        assertThatIllegalArgumentException().isThrownBy(() -> drafts.create("none", text));
        assertThatIllegalArgumentException().isThrownBy(() -> drafts.save(made.id(), text, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> drafts.saveInSameStep(made.id(), text, 1));

        assertThat(drafts.find(made.id())).contains(made);
    }

    @Test
    void textNestedWithoutEndIsRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> drafts.create("deep", "[".repeat(200_000)));
    }

    @Test
    void draftOfOneMebibyteComesBackCharacterForCharacter() {
        String large = Texts.ofLength(1 << 20, 7);
        Draft made = drafts.create("large", large);
        String flames = "{\"note\":\"" + "\ud83d\udd25".repeat(1 << 18) + "\"}";

        assertThat(drafts.find(made.id()).orElseThrow().json()).isEqualTo(large);
        assertThat(drafts.save(made.id(), flames, 1)).isInstanceOf(Saved.class);
        assertThat(drafts.find(made.id()).orElseThrow().json()).isEqualTo(flames);
        assertThat(saved(drafts.undo(made.id(), 2)).json()).isEqualTo(large);
    }

    static List<String> hostileNames() {
        return List.of(
                "<script>alert('gas')</script>",
                "\"; drop table house; --",
                "O'Fernbank \\ `cottage` \"east\"",
                "\ud83d\udd25 \ud83c\udfe1\u200d\u2764\ufe0f",
                "\u05d1\u05d9\u05ea \u202egnihton\u202c \u0628\u064a\u062a",
                "x".repeat(200),
                "\ud83c\udfe1".repeat(100),
                "\u0130\u0131 e\u0301 \u00e9",
                " two  blanks\tand a tab\n",
                "${user.home} #{1+1} :id ?",
                "");
    }

    @ParameterizedTest
    @MethodSource("hostileNames")
    void nameIsKeptAsTyped(String name) {
        Draft made = drafts.create(name, "{}");
        Draft other = drafts.create("plain", "{}");

        assertThat(drafts.rename(other.id(), name)).isTrue();

        assertThat(drafts.find(made.id()).orElseThrow().name()).isEqualTo(name);
        assertThat(drafts.find(other.id()).orElseThrow().name()).isEqualTo(name);
        assertThat(drafts.list().stream().filter(house -> house.name().equals(name)))
                .hasSize(2);
    }

    @Test
    void saveTellsTheNextVersionAndWhen() {
        Draft made = drafts.create("timed", "{}");
        clock.turn(Duration.ofMinutes(5));

        Draft saved = saved(drafts.save(made.id(), "{\"a\":1}", 1));

        assertThat(saved.version()).isEqualTo(2);
        assertThat(saved.changed()).isEqualTo(clock.instant());
        assertThat(drafts.find(made.id())).contains(saved);
    }

    @Test
    void secondTabIsToldAndNothingIsOverwritten() {
        Draft made = drafts.create("two tabs", "{}");
        drafts.save(made.id(), "{\"tab\":1}", 1);
        Instant stored = clock.instant();
        clock.turn(Duration.ofSeconds(9));

        assertThat(drafts.save(made.id(), "{\"tab\":2}", 1)).isEqualTo(new Conflict(2, stored));
        assertThat(drafts.saveInSameStep(made.id(), "{\"tab\":2}", 1)).isEqualTo(new Conflict(2, stored));
        assertThat(drafts.undo(made.id(), 1)).isEqualTo(new Conflict(2, stored));
        assertThat(drafts.redo(made.id(), 1)).isEqualTo(new Conflict(2, stored));
        assertThat(drafts.save(made.id(), "{\"tab\":2}", 3)).isEqualTo(new Conflict(2, stored));

        assertThat(drafts.find(made.id()).orElseThrow().json()).isEqualTo("{\"tab\":1}");
    }

    @Test
    void secondTabThatPutsItsTextInPlaceLeavesTheFirstOneUndoAway() {
        Draft made = drafts.create("choice", "{}");
        drafts.save(made.id(), "{\"tab\":1}", 1);
        Conflict told = (Conflict) drafts.save(made.id(), "{\"tab\":2}", 1);

        Draft chosen = saved(drafts.save(made.id(), "{\"tab\":2}", told.version()));

        assertThat(saved(drafts.undo(made.id(), chosen.version())).json()).isEqualTo("{\"tab\":1}");
    }

    @Test
    void identicalTextMakesNoStepAndKeepsWhatCanBeRedone() {
        Draft made = drafts.create("same", "{}");
        drafts.save(made.id(), "{\"a\":1}", 1);
        Draft undone = saved(drafts.undo(made.id(), 2));

        assertThat(drafts.save(made.id(), "{}", 3)).isEqualTo(new Saved(undone));
        assertThat(undone.redos()).isEqualTo(1);
    }

    @Test
    void textStoredAlreadyIsSavedThoughTheAnswerWasLost() {
        Draft made = drafts.create("lost answer", "{}");
        Outcome first = drafts.save(made.id(), "{\"a\":1}", 1);

        assertThat(drafts.save(made.id(), "{\"a\":1}", 1)).isEqualTo(first);
    }

    @Test
    void textThatDiffersByOneBlankIsAStep() {
        Draft made = drafts.create("blank", "{}");

        assertThat(saved(drafts.save(made.id(), "{ }", 1)).undos()).isEqualTo(1);
    }

    @Test
    void undoAndRedoAtTheirEndsLeaveTheDraftAsItStands() {
        Draft made = drafts.create("ends", "{}");

        assertThat(drafts.undo(made.id(), 1)).isEqualTo(new Saved(made));
        assertThat(drafts.redo(made.id(), 1)).isEqualTo(new Saved(made));
    }

    @Test
    void newSaveAfterAnUndoCutsWhatWasUndone() {
        Draft made = drafts.create("cut", "{}");
        drafts.save(made.id(), "{\"a\":1}", 1);
        drafts.save(made.id(), "{\"a\":2}", 2);
        drafts.undo(made.id(), 3);
        Draft undone = saved(drafts.undo(made.id(), 4));
        assertThat(undone.redos()).isEqualTo(2);

        Draft saved = saved(drafts.save(made.id(), "{\"b\":1}", undone.version()));

        assertThat(saved.redos()).isZero();
        assertThat(saved.undos()).isEqualTo(1);
        assertThat(saved(drafts.redo(made.id(), saved.version())).json()).isEqualTo("{\"b\":1}");
        assertThat(saved(drafts.undo(made.id(), saved.version())).json()).isEqualTo("{}");
    }

    @Test
    void furtherKeysInOneFieldAreUndoneTogether() {
        Draft made = drafts.create("keys", "{}");
        drafts.save(made.id(), "{\"a\":\"4\"}", 1);
        drafts.saveInSameStep(made.id(), "{\"a\":\"4 f\"}", 2);
        Draft typed = saved(drafts.saveInSameStep(made.id(), "{\"a\":\"4 ft\"}", 3));

        assertThat(drafts.find(made.id())).contains(typed);
        assertThat(typed.version()).isEqualTo(4);
        assertThat(typed.undos()).isEqualTo(1);
        assertThat(saved(drafts.undo(made.id(), 4)).json()).isEqualTo("{}");
        assertThat(saved(drafts.redo(made.id(), 5)).json()).isEqualTo("{\"a\":\"4 ft\"}");
    }

    @Test
    void keysTypedAndTakenBackLeaveNoStep() {
        Draft made = drafts.create("taken back", "{}");
        drafts.save(made.id(), "{\"a\":\"4\"}", 1);

        Draft back = saved(drafts.saveInSameStep(made.id(), "{}", 2));

        assertThat(back.version()).isEqualTo(3);
        assertThat(back.undos()).isZero();
        assertThat(back.redos()).isZero();
        assertThat(drafts.find(made.id())).contains(back);
    }

    @Test
    void furtherKeysNeverReplaceTheFirstTextNorOneThatWasUndoneTo() {
        Draft made = drafts.create("first", "{}");

        Draft typed = saved(drafts.saveInSameStep(made.id(), "{\"a\":1}", 1));
        assertThat(typed.undos()).isEqualTo(1);
        drafts.save(made.id(), "{\"a\":2}", 2);
        drafts.undo(made.id(), 3);
        Draft after = saved(drafts.saveInSameStep(made.id(), "{\"a\":3}", 4));

        assertThat(after.undos()).isEqualTo(2);
        assertThat(saved(drafts.undo(made.id(), 5)).json()).isEqualTo("{\"a\":1}");
    }

    @Test
    void houseChangedLastIsListedFirst() {
        Draft first = drafts.create("listed first", "{}");
        clock.turn(Duration.ofSeconds(1));
        Draft second = drafts.create("listed second", "{}");
        assertThat(drafts.list()).startsWith(new ListedHouse(second.id(), "listed second", 1, clock.instant()));
        clock.turn(Duration.ofSeconds(1));

        drafts.save(first.id(), "{\"a\":1}", 1);

        assertThat(drafts.list().subList(0, 2)).extracting(ListedHouse::id).containsExactly(first.id(), second.id());
        assertThat(drafts.list().get(0).version()).isEqualTo(2);
    }

    @Test
    void renameLeavesTextVersionAndSteps() {
        Draft made = drafts.create("old name", "{}");
        Draft saved = saved(drafts.save(made.id(), "{\"a\":1}", 1));

        assertThat(drafts.rename(made.id(), "new name")).isTrue();

        Draft renamed = drafts.find(made.id()).orElseThrow();
        assertThat(renamed.name()).isEqualTo("new name");
        assertThat(renamed).usingRecursiveComparison().ignoringFields("name").isEqualTo(saved);
    }

    @Test
    void deletedHouseIsGoneUntilTheDeletionIsUndone() {
        Draft made = drafts.create("deleted", "{}");
        Draft saved = saved(drafts.save(made.id(), "{\"a\":1}", 1));

        assertThat(drafts.delete(made.id())).isTrue();

        assertThat(drafts.find(made.id())).isEmpty();
        assertThat(drafts.list()).extracting(ListedHouse::id).doesNotContain(made.id());
        assertThat(drafts.listDeleted()).extracting(ListedHouse::id).contains(made.id());
        assertThat(drafts.save(made.id(), "{\"a\":2}", 2)).isEqualTo(new Gone());
        assertThat(drafts.undo(made.id(), 2)).isEqualTo(new Gone());
        assertThat(drafts.rename(made.id(), "other")).isFalse();
        assertThat(drafts.delete(made.id())).isFalse();

        assertThat(drafts.undelete(made.id())).isTrue();
        assertThat(drafts.undelete(made.id())).isFalse();
        assertThat(drafts.find(made.id())).contains(saved);
        assertThat(saved(drafts.undo(made.id(), 2)).json()).isEqualTo("{}");
    }

    @Test
    void houseThatNeverWasIsGone() {
        assertThat(drafts.find(-1)).isEmpty();
        assertThat(drafts.save(-1, "{}", 1)).isEqualTo(new Gone());
        assertThat(drafts.redo(-1, 1)).isEqualTo(new Gone());
        assertThat(drafts.undelete(-1)).isFalse();
    }

    @Test
    void nameWithHalfACharacterIsRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> drafts.create("\ud83d", "{}"));
    }

    private static Draft saved(Outcome outcome) {
        assertThat(outcome).isInstanceOf(Saved.class);
        return ((Saved) outcome).draft();
    }
}
