package longrun.checked;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import longrun.checked.published.CaseGroup;
import longrun.checked.published.PublishedCase;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every published case of {@code data/checked}: our figure is as near to the print as its row allows. */
class PublishedCasesTest {

    static Stream<PublishedCase> cases() {
        return CaseGroup.listAll().stream().flatMap(g -> g.cases().stream());
    }

    @ParameterizedTest
    @MethodSource("cases")
    void ourFigureIsAsNearToThePrintAsItsRowAllows(PublishedCase published) {
        CheckedCase checked = CheckedCase.of(published);
        assertThat(checked.holds())
                .as(
                        "%s: published %s, ours %s, apart %s",
                        published.id(), published.published(), checked.ours(), checked.differenceWords())
                .isTrue();
    }

    @Test
    void everyCaseSaysWhyItsToleranceIsWhatItIs() {
        assertThat(cases())
                .allSatisfy(c -> assertThat(c.why()).as(c.id()).isNotBlank())
                .allSatisfy(c -> assertThat(c.publication()).as(c.id()).isNotBlank())
                .hasSizeGreaterThan(40);
    }
}
