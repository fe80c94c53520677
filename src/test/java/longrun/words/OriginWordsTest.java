package longrun.words;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OriginWordsTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            105 degF                             | 105 °F
            4 Btu/(h.degF)                       | 4 Btu/(h.°F)
            propane for hot water, on-demand-only | propane for hot water, on-demand alone
            storage-only                         | storage alone
            current, series                      | current, in series
            hot water, on-demand-only - hot water, series | hot water, on-demand alone - hot water, in series
            two in series                        | two in series
            12 ft                                | 12 ft
            """)
    void unitsAndArrangementsReadAsPeopleSayThem(String kept, String read) {
        assertThat(OriginWords.plain(kept)).isEqualTo(read);
    }

    @Test
    void aTypedListReadsWithoutItsMarks() {
        assertThat(OriginWords.plain("[\"up 4 ft\",\"north 6 ft\"]")).isEqualTo("up 4 ft, north 6 ft");
    }
}
