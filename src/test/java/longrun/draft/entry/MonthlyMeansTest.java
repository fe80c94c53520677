package longrun.draft.entry;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import longrun.draft.fill.FillDraft;
import longrun.draft.fill.FillErrors;
import longrun.words.UnitSystem;
import org.junit.jupiter.api.Test;

/**
 * A month's mean, in a house and in how long a fill lasts. The warmest month of any weather station on earth is near
 * 108 degF (memory), so 130 degF is no month's mean.
 */
class MonthlyMeansTest {

    private static final List<String> TWELVE = Collections.nCopies(12, "40 degF");

    private static List<String> with(String july) {
        List<String> out = new ArrayList<>(TWELVE);
        out.set(6, july);
        return out;
    }

    @Test
    void aMonthAsHotAsBoilingWaterIsNoClimateAndWaitsUntilItIsMended() {
        DraftEdit house = DraftEdit.begin();
        MonthlyMeans.OF_HOUSE.write(house, with("212 degF"));
        assertThat(house.at(MonthlyMeans.AT).isNothing()).as("no year from it").isTrue();
        assertThat(MonthlyMeans.OF_HOUSE.texts(house.whole())).isEqualTo(with("212 degF"));
        assertThat(MonthlyMeans.wrong("212 degF"))
                .hasValueSatisfying(w -> assertThat(w).contains("write it in"));
        assertThat(MonthlyMeans.wrong("131 degF")).isPresent();
        assertThat(MonthlyMeans.wrong("130 degF")).isEmpty();
        MonthlyMeans.OF_HOUSE.write(house, 6, "70 degF");
        assertThat(house.at(MonthlyMeans.AT).size()).isEqualTo(12);
        assertThat(MonthlyMeans.OF_HOUSE.texts(house.whole())).isEqualTo(with("70 degF"));
    }

    @Test
    void ofTwoListsTheOneThatIsAnsweredByIsShown() {
        for (MonthlyMeans means : List.of(MonthlyMeans.OF_HOUSE, new MonthlyMeans("/fill/months"))) {
            DraftEdit draft = DraftEdit.begin();
            means.write(draft, with("warm"));
            draft.put(MonthlyMeans.AT, TWELVE);
            assertThat(means.texts(draft.whole())).isEqualTo(TWELVE);
        }
    }

    @Test
    void howLongAFillLastsHoldsAMonthToTheSameLimit() {
        FillDraft draft = FillDraft.demo(LocalDate.of(2026, 10, 1)).typedMonth(6, "212", UnitSystem.CUSTOMARY);
        assertThat(draft.months().get(6)).isEqualTo("212 degF");
        assertThat(FillErrors.of(draft, List.of(), LocalDate.of(2026, 10, 1)))
                .containsEntry("MONTH 6", MonthlyMeans.wrong("212 degF").orElseThrow());
        assertThat(draft.whole().at(MonthlyMeans.AT).isNothing()).isTrue();
        assertThat(draft.typedMonth(6, "70", UnitSystem.CUSTOMARY)
                        .whole()
                        .at(MonthlyMeans.AT)
                        .size())
                .isEqualTo(12);
    }
}
