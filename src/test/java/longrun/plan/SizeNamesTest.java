package longrun.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import longrun.plan.choice.Material;
import longrun.quantity.NotAQuantity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sizes of pipe and tube as a person writes them and as the code's tables name them. */
class SizeNamesTest {

    @ParameterizedTest
    @CsvSource(quoteCharacter = '`', textBlock = """
        STEEL, 1/2, 1/2, 1/2 in.
        STEEL, 1-1/4 in., 1-1/4, 1-1/4 in.
        STEEL, 3/4", 3/4, 3/4 in.
        STEEL, 2 in, 2, 2 in.
        CSST, ehd 23, 23, EHD 23
        CSST, EHD23, 23, EHD 23
        CSST, 62, 62, EHD 62
        COPPER, 1/2 nominal, 1/2, 1/2 nominal (5/8 OD)
        COPPER, 5/8 OD, 1/2, 1/2 nominal (5/8 OD)
        COPPER, 1-1/8 od, 1, 1 nominal (1-1/8 OD)
        COPPER, 3/8   Nominal, 3/8, 3/8 nominal (1/2 OD)
        PE_PIPE, 3, 3, 3 in.
        PE_TUBING, 1/2 cts, 1/2 CTS, 1/2 CTS
        PE_TUBING, 1 CTS, 1 CTS, 1 CTS
        """)
    void aSizeIsReadAsItsTableNamesItAndShownAsItsTradeDoes(
            Material material, String written, String size, String shown) {
        assertThat(SizeNames.read(material, written, List.of())).isEqualTo(size);
        assertThat(SizeNames.shown(material, size)).isEqualTo(shown);
        assertThat(SizeNames.standard(material)).contains(size);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
        STEEL     | 5/8         | "5/8" is not a size of steel: write one of 1/2, 3/4, 1
        CSST      | 24          | "24" is not a size of CSST: write one of 13, 15
        COPPER    | 1/2         | "1/2" is named two ways in copper: write "1/2 nominal" or "1/2 OD"
        COPPER    | 1/2 in.     | "1/2 in." is named two ways in copper: write "1/2 nominal" or "1/2 OD"
        COPPER    | 9/8 nominal | "9/8 nominal" is not a copper size: write one of 1/4 nominal, 3/8 nominal
        COPPER    | 9/8 OD      | "9/8 OD" is not a copper size: write one of 1/4 nominal, 3/8 nominal
        PE_TUBING | 3/4 CTS     | "3/4 CTS" is not a size of polyethylene tubing: write one of 1/2 CTS, 1 CTS
        """)
    void anotherSizeIsRefusedWithThoseThereAre(Material material, String written, String words) {
        assertThatThrownBy(() -> SizeNames.read(material, written, List.of()))
                .isInstanceOf(NotAQuantity.class)
                .hasMessageContaining(words);
    }

    @Test
    void aPersonsOwnTableHasFurtherSizes() {
        assertThat(SizeNames.read(Material.CSST, "EHD 27", List.of("27"))).isEqualTo("27");
        assertThatThrownBy(() -> SizeNames.read(Material.CSST, "EHD 27", List.of("29")))
                .isInstanceOf(NotAQuantity.class);
    }

    @Test
    void aLongSizeIsShortened() {
        String forty = "9".repeat(40);
        assertThatThrownBy(() -> SizeNames.read(Material.STEEL, forty, List.of()))
                .hasMessageContaining("\"" + forty + "\" is not a size");
        assertThatThrownBy(() -> SizeNames.read(Material.STEEL, forty + "9", List.of()))
                .hasMessageContaining("\"" + forty + "...\" is not a size");
        assertThatThrownBy(() -> NominalSize.read(forty)).hasMessageContaining("\"" + forty + "\" is not a size");
        assertThatThrownBy(() -> NominalSize.read(forty + "9"))
                .hasMessageContaining("\"" + forty + "...\" is not a size");
    }

    @Test
    void aCopperSizeThatIsNoneHasNoOutsideDiameter() {
        assertThatThrownBy(() -> SizeNames.copperOutsideDiameter("7/16")).isInstanceOf(IllegalArgumentException.class);
    }
}
