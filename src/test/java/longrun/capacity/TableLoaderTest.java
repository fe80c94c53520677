package longrun.capacity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import longrun.origin.Confidence;
import longrun.origin.DataFault;
import longrun.origin.DataFile;
import longrun.plan.choice.Material;
import longrun.quantity.Bore;
import longrun.quantity.Pressure;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A wrong table is refused when it is read, by file:row:column. */
class TableLoaderTest {

    private static final String GOOD = """
            # title: Schedule 40 steel pipe
            # material: steel
            # source: a code, Table 1
            # edition: 2018
            # inlet pressure: 11.0 in w.c.
            # pressure drop: 0.5 in w.c.
            # units: thousand Btu per hour; length in feet
            # confidence: print rows 10-20 columns 1/2
            # confidence: computed rest
            # inside_diameter_in: 0.622 0.824
            length_ft,1/2,3/4
            10,291,608
            20,200,
            """;

    private static CapacityTable read(String text) {
        return TableReader.read("t", DataFile.parse("t.csv", text), CapacityTable.Use.SIZING);
    }

    @Test
    void aRightTableIsRead() {
        CapacityTable t = read(GOOD);
        assertThat(t.btuh(0, 1)).isEqualTo(608_000);
        assertThat(t.capacity(1, 1)).isEmpty();
        assertThat(t.cell(1, 0).confidence()).isEqualTo(Confidence.PRINT);
        assertThat(t.cell(1, 1).confidence()).isEqualTo(Confidence.COMPUTED);
        assertThat(t.material()).isEqualTo(Material.STEEL);
        assertThat(t.inlet()).isEqualTo(Pressure.ofInWc(11));
        assertThat(t.drop()).isEqualTo(Pressure.ofInWc(0.5));
        assertThat(t.bore(1)).contains(Bore.ofInches(0.824));
        assertThat(t.title()).isEqualTo("Schedule 40 steel pipe");
        assertThat(t.edition()).isEqualTo("2018");
        assertThat(t).hasToString("t");
    }

    @Test
    void aPressureIsReadInTheUnitItIsPrintedIn() {
        CapacityTable t = read(GOOD.replace("11.0 in w.c.", "10.0 psi").replace("0.5 in w.c.", "1.0 psi"));
        assertThat(t.inlet()).isEqualTo(Pressure.ofPsi(10));
        assertThat(t.drop()).isEqualTo(Pressure.ofPsi(1));
        assertThatThrownBy(() -> read(GOOD.replace("0.5 in w.c.", "0.0 in w.c.")))
                .hasMessage("t.csv:6:1: '0.0' is not above nothing");
    }

    @Test
    void whatTheHeadSaysOfATableIsKeptAsItsNotes() {
        String more = "# title: Schedule 40 steel pipe\n# note: screwed joints\n# warning: not for buried pipe\n";
        assertThat(read(GOOD.replace("# title: Schedule 40 steel pipe\n", more)).notes())
                .containsExactly("screwed joints", "warning: not for buried pipe");
        assertThat(read(GOOD).notes()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "10,291,608|10,291,6O8|t.csv:12:3: ",
                "10,291,608|10,-291,608|t.csv:12:2: ",
                "10,291,608|10,0,608|t.csv:12:2: ",
                "10,291,608|10,1e3,608|t.csv:12:2: ",
                "10,291,608|10,291|t.csv:12:3: ",
                "10,291,608|10,291,608,1|t.csv:12:4: ",
                "20,200,|10,200,|t.csv:13:1: ",
                "20,200,|x,200,|t.csv:13:1: ",
                "length_ft,1/2,3/4|feet,1/2,3/4|t.csv:11:1: ",
                "length_ft,1/2,3/4|length_ft,1/2,|t.csv:11:3: ",
                "0.622 0.824|0.622|t.csv:10:2: ",
                "0.622 0.824|0.622 zero|t.csv:10:2: ",
                "11.0 in w.c.|eleven|t.csv:5:1: ",
                "material: steel|material: lead|t.csv:2:1: ",
                "computed rest|guessed rest|t.csv:9:1: ",
                "computed rest|computed rows 10|t.csv:13:3: ",
                "columns 1/2|columns 9|t.csv:8:1: "
            })
    void aFaultIsNamedByFileRowAndColumn(String right, String wrong, String place) {
        assertThat(GOOD).contains(right);
        assertThatThrownBy(() -> read(GOOD.replace(right, wrong)))
                .isInstanceOf(DataFault.class)
                .hasMessageStartingWith(place);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "title",
                "material",
                "source",
                "edition",
                "inlet pressure",
                "pressure drop",
                "units",
                "confidence",
                "inside_diameter_in"
            })
    void aMissingHeadLineIsNamed(String key) {
        String without = GOOD.replaceAll("(?m)^# " + key + ":.*\n", "");
        assertThatThrownBy(() -> read(without))
                .isInstanceOf(DataFault.class)
                .hasMessageStartingWith("t.csv:1:1: ")
                .hasMessageContaining(key);
    }

    @Test
    void aMissingFileOrAnEmptyOneIsNamed() {
        assertThatThrownBy(() -> DataFile.read("tables/none.csv")).hasMessageStartingWith("tables/none.csv:1:1: ");
        assertThatThrownBy(() -> read("")).hasMessageStartingWith("t.csv:1:1: ");
        String noRows = GOOD.substring(0, GOOD.indexOf("10,291"));
        assertThatThrownBy(() -> read(noRows)).hasMessageContaining("no rows");
    }
}
