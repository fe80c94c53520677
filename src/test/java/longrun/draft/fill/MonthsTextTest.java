package longrun.draft.fill;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Months as people write them. */
class MonthsTextTest {

    @ParameterizedTest
    @CsvSource({
        "Sep to May, 1 2 3 4 5 9 10 11 12, Sep to May",
        "november - feb, 1 2 11 12, Nov to Feb",
        "11-2, 1 2 11 12, Nov to Feb",
        "'Jan, Mar', 1 3, 'Jan, Mar'",
        "all year, 1 2 3 4 5 6 7 8 9 10 11 12, all year",
        "Jul, 7, Jul",
        "'Jun and Sept', 6 9, 'Jun, Sep'"
    })
    void aSpanMayCrossTheYearsEnd(String typed, String months, String written) {
        List<Integer> read = MonthsText.read(typed).orElseThrow();
        assertThat(read)
                .containsExactly(List.of(months.split(" ")).stream()
                        .map(Integer::valueOf)
                        .toArray(Integer[]::new));
        assertThat(MonthsText.written(read)).isEqualTo(written);
    }

    @ParameterizedTest
    @ValueSource(strings = {"winter", "13", "0-4", "Sep to", "to", "", "Ja"})
    void whatIsNoMonthIsNotGuessed(String typed) {
        assertThat(MonthsText.read(typed)).isEmpty();
    }

    @Test
    void whatIsWrittenIsReadBack() {
        for (int mask = 1; mask < 4096; mask++) {
            int bits = mask;
            List<Integer> months = java.util.stream.IntStream.rangeClosed(1, 12)
                    .filter(m -> (bits >> (m - 1) & 1) == 1)
                    .boxed()
                    .toList();
            assertThat(MonthsText.read(MonthsText.written(months))).contains(months);
        }
    }
}
