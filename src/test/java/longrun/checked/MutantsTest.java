package longrun.checked;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import longrun.checked.mutant.MutationScore;
import longrun.checked.mutant.SurvivingMutant;
import longrun.checked.report.Report;
import org.junit.jupiter.api.Test;

/** What is told of mutants adds up: none that was left goes without its reason. */
class MutantsTest {

    @Test
    void everyMutantLeftStandsInTheListWithItsReason() {
        assertThat(MutationScore.listAll()).isNotEmpty().allSatisfy(s -> {
            assertThat(s.listSurvivors().stream()
                            .mapToInt(SurvivingMutant::count)
                            .sum())
                    .as(s.room())
                    .isEqualTo(s.survivors());
            assertThat(s.killed()).isLessThanOrEqualTo(s.made());
        });
        assertThat(SurvivingMutant.listAll()).allMatch(m -> m.why().length() > 20);
        assertThat(SurvivingMutant.listAll())
                .extracting(SurvivingMutant::room)
                .isSubsetOf(MutationScore.listAll().stream()
                        .map(MutationScore::room)
                        .toList());
    }

    @Test
    void ofEachPackageMeasuredAtLeastEightyFivePercentAreNoticed() {
        assertThat(MutationScore.listAll()).allMatch(s -> s.percent() >= 85);
    }

    @Test
    void theReportTellsEachPackageAndEachMutantLeft() {
        assertThat(Report.live().parts())
                .filteredOn(p -> p.id().equals("mutants"))
                .singleElement()
                .satisfies(p -> assertThat(p.tables())
                        .extracting(t -> t.rows().size())
                        .isEqualTo(List.of(
                                MutationScore.listAll().size(),
                                SurvivingMutant.listAll().size())));
    }
}
