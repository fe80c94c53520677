package longrun.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import longrun.Samples;
import longrun.drawing.route.Schematic;
import longrun.plan.Plan;
import longrun.review.Review;
import longrun.review.ReviewParts;
import longrun.review.Reviewer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Unicode Standard Annex 9: FSI U+2068 sets a text apart by its own direction, PDI U+2069 ends it. */
class IsolatedNameTest {

    private static final String STOVE = "\u05EA\u05E0\u05D5\u05E8"; // a stove, in Hebrew letters
    private static final String SET_APART = "\u2068" + STOVE + "\u2069";

    private static Plan named(String name) {
        return Samples.plan("{\"format\":\"longrun-plan/1\",\"regulators\":[{\"id\":\"R1\",\"fedBy\":\"tank\"}],"
                + "\"sections\":[{\"id\":\"A\",\"from\":\"R1\",\"legs\":[\"10 ft\"]}],"
                + "\"appliances\":[{\"id\":\"a\",\"kind\":\"range\",\"fedBy\":\"A\",\"name\":\"" + name + "\"}]}");
    }

    @ParameterizedTest
    @ValueSource(strings = {"Range", "Gr\u00FCner Herd", "\u7089", "1/2", ""})
    void nameFromLeftToRightStaysAsItIs(String name) {
        assertThat(IsolatedName.of(name)).isEqualTo(name);
    }

    @Test
    void nameFromRightToLeftIsSetApart() {
        assertThat(IsolatedName.of(STOVE)).isEqualTo(SET_APART);
        assertThat(IsolatedName.of("\u0641\u0631\u0646 2")).isEqualTo("\u2068\u0641\u0631\u0646 2\u2069");
    }

    /** An override turns 12 into 21, a mark that ends the setting apart lets it out of its name. */
    @ParameterizedTest
    @ValueSource(strings = {"A\u202E12", "A\u206912", "A\u202D12\u202C", "\u2067A12", "\u200FA12", "A\u061C12"})
    void marksThatTurnTheWordsBehindANameAreLeftOut(String name) {
        assertThat(IsolatedName.of(name)).isEqualTo("\u2068A12\u2069");
    }

    @Test
    void applianceIsSetApartWithinASentence() {
        Review review = Reviewer.standard().review(named(STOVE), ReviewParts.PIPING);
        assertThat(Names.of(review, "a")).isEqualTo(SET_APART);
        assertThat(Names.of(review, review.plan().appliances().get(0))).isEqualTo(SET_APART);
    }

    @Test
    void applianceIsSetApartInTheDrawing() {
        String drawn = Schematic.svg(Reviewer.standard().review(named(STOVE), ReviewParts.PIPING), Optional.empty());
        assertThat(drawn).contains(SET_APART);
        assertThat(drawn.replace(SET_APART, "")).doesNotContain(STOVE);
    }
}
