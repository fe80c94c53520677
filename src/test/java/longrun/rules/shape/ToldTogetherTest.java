package longrun.rules.shape;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import longrun.Samples;
import longrun.finding.Citation;
import longrun.finding.Finding;
import longrun.finding.FindingBuilder;
import longrun.finding.RuleName;
import longrun.finding.Severity;
import longrun.rules.Rules;
import org.junit.jupiter.api.Test;

/** One thing that is so of several sections or appliances is told once, in a sentence about them all. */
class ToldTogetherTest {

    private static List<Finding> of(String about, String plan) {
        return Rules.check(House.of(Samples.plan(plan))).findings().stream()
                .filter(f -> f.rule().equals(about) || f.field().endsWith(about))
                .toList();
    }

    private static String sections(String... each) {
        return "{\"format\":\"longrun-plan/1\",\"sections\":[" + String.join(",", each) + "]}";
    }

    @Test
    void oneSectionIsSpokenOfAsOneAndTwoAsTwo() {
        String one =
                "{\"id\":\"A\",\"setting\":\"underground\",\"material\":\"steel\",\"coated\":false,\"depth\":\"2 ft\"}";
        String other = one.replace("\"A\"", "\"AB\"");
        assertThat(of("pipe-coating", sections(one)))
                .singleElement()
                .satisfies(f -> assertThat(f.found()).startsWith("Section A is bare steel"));
        assertThat(of("pipe-coating", sections(one, other))).hasSize(2); // each has its own entry that mends it
        String open = one.replace(",\"coated\":false", "");
        assertThat(of("pipe-coating", sections(open, open.replace("\"A\"", "\"AB\""))))
                .singleElement()
                .satisfies(f -> {
                    assertThat(f.found()).contains("the buried steel of sections A and AB");
                    assertThat(f.ask().orElseThrow()).contains("of sections A and AB");
                });
    }

    @Test
    void moreThanThreeAreNamedByTheFirstThree() {
        assertThat(of("/setting", sections("{\"id\":\"D\"}", "{\"id\":\"C\"}", "{\"id\":\"B\"}", "{\"id\":\"A\"}")))
                .singleElement()
                .satisfies(f -> {
                    assertThat(f.found()).startsWith("Whether sections A, B, C and 1 more are outdoors");
                    assertThat(f.ask().orElseThrow()).startsWith("Where are sections A, B, C and 1 more:");
                    assertThat(f.field()).isEqualTo("/sections/3/setting");
                });
    }

    @Test
    void whatIsSaidOfOnePlaceNamesItOnly() {
        Place place = new Place("A", "/sections/0", "section A");
        assertThat(place.named("{who} {is|are} here")).isEqualTo("section A is here");
        assertThat(place.together("sections A and B").named("where {is|are} {who}, and {do they|they do} lie"))
                .isEqualTo("where are sections A and B, and they do lie");
    }

    @Test
    void aSentenceThatNamesItsPlaceIsKnownAsSuch() {
        Place place = new Place("A", "/sections/0", "section A");
        assertThat(place.found(note(), "{who} is here").atEntry("/x").named()).isTrue();
        assertThat(place.found(note(), "nothing is here").atEntry("/x").named()).isFalse();
    }

    private static FindingBuilder note() {
        return FindingBuilder.finding(RuleName.ENTRY_MISSING, Severity.NOTE, "A", Citation.commonPractice())
                .required("so")
                .remedy("Enter it.");
    }
}
