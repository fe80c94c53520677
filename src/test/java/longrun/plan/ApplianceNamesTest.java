package longrun.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import longrun.finding.Finding;
import longrun.holdpoint.PredictedPressure;
import longrun.paper.page.SheetWords;
import longrun.review.Review;
import longrun.review.ReviewParts;
import longrun.review.Reviewer;
import longrun.words.Names;
import org.junit.jupiter.api.Test;

/** Two appliances of a house that would be called alike are told apart wherever one is named. */
class ApplianceNamesTest {

    private static final PlannedHouse TWO_RANGES = PlannedHouse.behind("11 in w.c.", "0.5 in w.c.")
            .section("A", "R", "steel", "20 ft", "'setting':'indoors'")
            .section("B", "A", "steel", "10 ft", "'setting':'indoors'")
            .section("C", "A", "steel", "10 ft", "'setting':'indoors'")
            .section("D", "A", "steel", "10 ft", "'setting':'indoors'")
            .appliance("up", "B", "65000 Btu/h", "'kind':'range'")
            .appliance("down", "C", "65000 Btu/h", "'name':'Range'")
            .appliance("hall", "D", "65000 Btu/h", "'kind':'furnace'");

    private static ApplianceNames names(PlannedHouse house) {
        return ApplianceNames.of(house.plan());
    }

    @Test
    void anApplianceIsCalledByItsNameElseItsKindElseItsId() {
        PlannedHouse house = PlannedHouse.behind("11 in w.c.", "0.5 in w.c.")
                .section("A", "R", "steel", "10 ft")
                .section("B", "R", "steel", "10 ft")
                .section("C", "R", "steel", "10 ft")
                .section("D", "R", "steel", "10 ft")
                .appliance("a", "A", "65000 Btu/h", "'kind':'range','name':'Kitchen range'")
                .appliance("b", "B", "65000 Btu/h", "'kind':'clothes-dryer','name':' '")
                .appliance("c", "C", "65000 Btu/h", "'kind':'other'")
                .appliance("d", "D", "65000 Btu/h");
        assertThat(house.plan().appliances().stream().map(names(house)::called))
                .containsExactly("the Kitchen range", "the clothes dryer", "the appliance c", "the appliance d");
    }

    @Test
    void ofTwoCalledAlikeEachHasItsIdAlsoWhereOneIsWrittenLarger() {
        assertThat(TWO_RANGES.plan().appliances().stream().map(names(TWO_RANGES)::called))
                .containsExactly("the range up", "the Range down", "the furnace");
    }

    @Test
    void findingsQuestionsReadingsAndPapersTellTwoRangesApart() {
        Review review = Reviewer.standard().review(TWO_RANGES.plan(), ReviewParts.PIPING);
        assertThat(review.findings().stream().map(Finding::ask).flatMap(Optional::stream))
                .anyMatch(q -> q.contains("the range up"))
                .anyMatch(q -> q.contains("the Range down"))
                .noneMatch(q -> q.matches("(?i).*\\bthe range(?! up| down).*"));
        assertThat(PredictedPressure.of(review.pressures()).stream().map(PredictedPressure::called))
                .contains("the range up", "the Range down", "the furnace");
        assertThat(Names.of(review, "up")).isEqualTo("the range up");
        assertThat(review.plan().appliances().stream().map(a -> Names.of(review, a)))
                .containsExactly("Range up", "Range down", "Furnace");
    }

    @Test
    void aNameCutToTheRoomOfASheetKeepsWhatTellsItFromAnother() {
        PlannedHouse house = PlannedHouse.behind("11 in w.c.", "0.5 in w.c.")
                .appliance("attic", "A", "180000 Btu/h", "'kind':'on-demand-water-heater'")
                .appliance("cellar", "B", "180000 Btu/h", "'kind':'on-demand-water-heater'")
                .section("A", "R", "steel", "20 ft")
                .section("B", "R", "steel", "20 ft");
        Review review = Reviewer.standard().review(house.plan(), ReviewParts.PIPING);
        assertThat(review.plan().appliances().stream().map(a -> SheetWords.shortened(review, a, 24)))
                .allMatch(n -> n.startsWith("On-demand") && n.contains("\u2026"))
                .anyMatch(n -> n.endsWith(" attic"))
                .anyMatch(n -> n.endsWith(" cellar"));
    }
}
