package longrun.draft;

import static org.assertj.core.api.Assertions.assertThat;

import longrun.draft.entry.DraftValue;
import org.junit.jupiter.api.Test;

/** What one step of undo changed is told by its place, its thing and its name. */
class StepChangesTest {

    private static StepChanges step(String before, String after) {
        return StepChanges.between(DraftValue.parse(before), DraftValue.parse(after))
                .orElseThrow();
    }

    @Test
    void anInputTakenBackIsToldWithItsAppliance() {
        StepChanges step = step("""
                {"appliances":[{"id":"f","kind":"furnace","input":"80000 Btu/h"}]}""", """
                {"appliances":[{"id":"f","kind":"furnace"}]}""");
        assertThat(step.where()).isEqualTo("Appliances, furnace, input");
        assertThat(step.first()).isEqualTo("/appliances/0/input");
        assertThat(step.isIn(PlaceKind.APPLIANCES)).isTrue();
        assertThat(step.isIn(PlaceKind.TANK)).isFalse();
    }

    @Test
    void aSectionTakenAwayIsToldByItsNameThoughOthersMoveUp() {
        StepChanges step = step("""
                {"sections":[{"id":"A"},{"id":"B"},{"id":"C"}]}""", """
                {"sections":[{"id":"A"},{"id":"C"}]}""");
        assertThat(step.pointers()).containsExactly("/sections/1");
        assertThat(step.where()).isEqualTo("Pipe route, section B");
    }

    @Test
    void legsAreOneEntryHoweverManyOfThemChanged() {
        StepChanges step = step("""
                {"sections":[{"id":"A","legs":["up 3 ft","north 4 ft"]}]}""", """
                {"sections":[{"id":"A","legs":["up 3 ft"]}]}""");
        assertThat(step.pointers()).containsExactly("/sections/0/legs");
    }

    @Test
    void nothingIsToldWhereNothingChanged() {
        DraftValue same = DraftValue.parse("{\"name\":\"House\"}");
        assertThat(StepChanges.between(same, same)).isEmpty();
    }
}
