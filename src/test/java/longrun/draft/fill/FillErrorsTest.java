package longrun.draft.fill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import longrun.draft.NotAPlan;
import longrun.plan.json.PlanError;
import longrun.review.FullPlanReader;
import longrun.words.UnitSystem;
import org.junit.jupiter.api.Test;

class FillErrorsTest {

    @Test
    void theLineAfterTheTwentySixthIsNotCalledLikeTheFirst() {
        assertThat(FillErrors.where("BURNS 0 INPUT")).startsWith("line a, ");
        assertThat(FillErrors.where("BURNS 25 INPUT")).startsWith("line z, ");
        assertThat(FillErrors.where("BURNS 26 INPUT")).startsWith("line a2, ");
    }

    @Test
    void aListOfMoreFillsThanAPlanTakesIsRefusedInWordsAndNotCutInSilence() {
        ObjectNode plan = JsonNodeFactory.instance.objectNode();
        plan.put("format", "longrun-plan/1");
        PastFillEntries.paste(plan, "2026-01-12 180\n".repeat(250), UnitSystem.CUSTOMARY);
        assertThat(FullPlanReader.read(plan).errors())
                .anySatisfy(e -> assertThat(e.message()).contains("more than a house has here"));
    }

    @Test
    void gallonsOnADayStillToComeAreAnErrorAndADayWithoutGallonsIsForThePrediction() {
        LocalDate today = LocalDate.of(2026, 12, 1);
        FillDraft draft = FillDraft.empty()
                .typedPast(0, PastFillEntries.Column.DATE, "2026-12-02", UnitSystem.CUSTOMARY)
                .typedPast(0, PastFillEntries.Column.GALLONS, "180", UnitSystem.CUSTOMARY)
                .typedPast(1, PastFillEntries.Column.DATE, "2026-12-20", UnitSystem.CUSTOMARY);
        assertThat(FillErrors.of(draft, List.of(), today))
                .containsOnlyKeys("PAST 0 DATE")
                .hasEntrySatisfying("PAST 0 DATE", e -> assertThat(e).contains("is still to come"));
        assertThat(FillErrors.of(draft, List.of(), LocalDate.of(2026, 12, 2))).isEmpty();
    }

    @Test
    void anErrorOfAPastFillStandsAtItsOwnFieldAndOneWithoutAFieldAtThePlan() {
        FillDraft draft = FillDraft.empty();
        List<PlanError> errors = Stream.of("date", "volume", "note")
                .map(e -> new PlanError("/deliveries/0/" + e, "wrong"))
                .toList();
        assertThat(FillErrors.of(draft, errors, LocalDate.of(2026, 12, 1)))
                .containsOnlyKeys("PAST 0 DATE", "PAST 0 GALLONS", "plan");
    }

    @Test
    void anEmptyListOfTanksIsNoTankAndOnlyTwoTanksAreSeveral() throws NotAPlan {
        String plan = "{\"format\":\"longrun-plan/1\",\"tank\":%s}";
        assertThat(FillFile.read(plan.formatted("[]")).hasTank()).isFalse();
        String tank = "{\"kind\":\"asme\"}";
        assertThat(FillFile.read(plan.formatted("[" + tank + "]")).hasTank()).isTrue();
        assertThat(FillFile.read(plan.replace("\"tank\"", "\"tanks\"").formatted("[" + tank + "]"))
                        .hasTank())
                .isTrue();
        assertThatThrownBy(() -> FillFile.read(plan.formatted("[" + tank + "," + tank + "]")))
                .isInstanceOf(NotAPlan.class)
                .hasMessageContaining("several");
        assertThatThrownBy(() -> FillFile.read(plan.formatted("\"large\"")))
                .isInstanceOf(NotAPlan.class)
                .hasMessageContaining("cannot be read");
    }
}
