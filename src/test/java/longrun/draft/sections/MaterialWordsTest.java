package longrun.draft.sections;

import static org.assertj.core.api.Assertions.assertThat;

import longrun.plan.choice.Material;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Words for pipe as they are written at a job; common practice. */
class MaterialWordsTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "csst 12 ft|CSST|12 ft",
                "CSST, 12|CSST|12",
                "12' csst|CSST|12'",
                "12 ft of corrugated tubing|CSST|12 ft",
                "black iron 22|STEEL|22",
                "22 ft black pipe|STEEL|22 ft",
                "sch 40 steel up 4, north 6|STEEL|up 4, north 6",
                "up 4, north 6 copper|COPPER|up 4, north 6",
                "type L copper 12 1/2|COPPER|12 1/2",
                "pe 60|PE_PIPE|60",
                "poly: 60 ft|PE_PIPE|60 ft",
                "pe tubing 60|PE_TUBING|60"
            })
    void aMaterialStandsBeforeOrBehindTheLength(String typed, Material material, String rest) {
        MaterialWords words = MaterialWords.of(typed);
        assertThat(words.material()).contains(material);
        assertThat(words.rest()).isEqualTo(rest);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"12 ft", "up 4, north 6, east 10", "peg 4", "csstx 12", "flex 4", "e 10"})
    void whatNamesNoMaterialStaysAsTyped(String typed) {
        assertThat(MaterialWords.of(typed)).isEqualTo(new MaterialWords(java.util.Optional.empty(), typed));
    }

    @Test
    void aCellOfAMaterialHoldsNothingElse() {
        assertThat(MaterialWords.named("Polyethylene pipe")).contains(Material.PE_PIPE);
        assertThat(MaterialWords.named("csst 12")).isEmpty();
    }
}
