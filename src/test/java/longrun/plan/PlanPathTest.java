package longrun.plan;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Places in a plan, written as JSON pointers (RFC 6901). */
class PlanPathTest {

    @ParameterizedTest
    @CsvSource({
        "/sections/2/legs, sections, 2, legs, /sections/2",
        "/sections/2/legs/0, sections, 2, legs, /sections/2",
        "/appliances/0/connection/1/size, appliances, 0, size, /appliances/0",
        "/site/monthlyMeanTemp/11, site, -1, monthlyMeanTemp, ''",
        "/prices/steel 1~12, prices, -1, steel 1/2, ''",
        "/tank, tank, -1, tank, ''",
        "'', '', -1, '', ''"
    })
    void anEntryIsToldByItsPartItsThingAndItsName(String pointer, String part, int index, String entry, String thing) {
        PlanPath at = PlanPath.of(pointer);
        assertThat(at.isIn(part)).isTrue();
        assertThat(at.findIndex().orElse(-1)).isEqualTo(index);
        assertThat(at.entry()).isEqualTo(entry);
        assertThat(at.thing()).isEqualTo(thing);
    }

    /** RFC 6901 section 4: ~01 is ~1, not a slash. */
    @Test
    void aTildeIsReadAfterASlash() {
        assertThat(PlanPath.of("/m~01n").step(0)).isEqualTo("m~1n");
        assertThat(PlanPath.of("/a~1b").step(0)).isEqualTo("a/b");
        assertThat(PlanPath.of("/").steps()).containsExactly("");
    }

    @Test
    void aNumberTooLongForAListIsAName() {
        assertThat(PlanPath.of("/sections/99999999999").findIndex()).isEmpty();
        assertThat(PlanPath.of("/sections/1e3").findIndex()).isEmpty();
    }
}
