package longrun.plan.json;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which entries of a plan are answered by yes or no. */
class YesOrNoTest {

    @ParameterizedTest
    @CsvSource({
        "/appliances/0/connection/2/sameRoom, true",
        "/appliances/3/connection/0/accessible, true",
        "/sections/0/capped, true",
        "/sections/0/material, false",
        "/sections/0/legs, false",
        "/appliances/0/input, false",
        "/rooms/0/belowGrade, true",
        "/appliances, false",
        "/nothing/of/a/plan, false",
    })
    void anEntryIsAYesOrANoByItsTypeInThePlan(String pointer, boolean yes) {
        assertThat(YesOrNo.is(pointer)).isEqualTo(yes);
    }
}
