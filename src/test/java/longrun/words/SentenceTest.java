package longrun.words;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Units stand without signs in a plan; people are told them as they write them. */
class SentenceTest {

    @ParameterizedTest
    @CsvSource({
        "at 8 degF gas stops,At 8 \u00B0F gas stops.",
        "How warm is it kept in degF?,How warm is it kept in \u00B0F?",
        "write 20 degC or 68 degF,Write 20 \u00B0C or 68 \u00B0F.",
        "an opening of 100 in2,An opening of 100 sq in.",
        "0.5 in w.c. after it,0.5 in. w.c. after it.",
        "50 ft3 of room,50 cu ft of room."
    })
    void unitsAreSaidAsPeopleWriteThem(String written, String said) {
        assertThat(Sentence.of(written)).isEqualTo(said);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            propane boils at -46 degF at 1450 ft   | Propane boils at -46 \u00B0F at 1,450 ft.
            of 65000 Btu/h                         | Of 65,000 Btu/h.
            1,200 gal and 12.3456 psi              | 1,200 gal and 12.3456 psi.
            the fuel gas code, 2018 in force       | The fuel gas code, 2018 in force.
            """)
    void thousandsStandInGroupsWhereAUnitIsBehindThem(String written, String said) {
        assertThat(Sentence.of(written)).isEqualTo(said);
    }
}
