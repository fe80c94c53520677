package longrun.origin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import longrun.plan.choice.Material;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The one reader of the files of facts; a slip in one is refused by file, line and column. */
class DataFileTest {

    private static final String GOOD = """
            # title: how pipe is bought
            # source: common practice: no print

            material,form,stock_ft
            steel,"length, plain",21
            copper,coil,
            """;

    private static DataRow row(String text) {
        return DataFile.parse("stock.csv", text).rows().get(0);
    }

    @Test
    void headAndRowsAreReadAsTheyStand() {
        DataFile file = DataFile.parse("stock.csv", GOOD);
        assertThat(file.source()).isEqualTo("common practice: no print");
        assertThat(file.headings()).containsExactly("material", "form", "stock_ft");
        DataRow steel = file.rows().get(0);
        assertThat(steel.choice("material", Material.class)).isEqualTo(Material.STEEL);
        assertThat(steel.text("form")).isEqualTo("length, plain");
        assertThat(steel.number("stock_ft")).isEqualTo(21);
        assertThat(file.rows().get(1).findNumber("stock_ft")).isEmpty();
    }

    @Test
    void coldIsANumber() {
        assertThat(row(GOOD.replace("21", "-40.5")).number("stock_ft")).isEqualTo(-40.5);
    }

    @Test
    void aColumnThatIsNotThereIsNamedAtTheHeadings() {
        refused(() -> row(GOOD).text("waste_percent"), "stock.csv:4:1: ", "waste_percent");
    }

    @ParameterizedTest
    @CsvSource({"21 ft", "2l", "1e3", "NaN", "0x15", "'21,5'", "--5"})
    void whatIsNoNumberIsNamedByItsCell(String cell) {
        refused(() -> row(GOOD.replace("21", '"' + cell + '"')).number("stock_ft"), "stock.csv:5:3: stock_ft: ", cell);
    }

    @Test
    void aBlankIsNoNumberAndNothingIsNotAboveNothing() {
        refused(() -> row(GOOD.replace("21", "")).number("stock_ft"), "stock.csv:5:3: ", "missing");
        refused(() -> row(GOOD.replace("21", "0")).positive("stock_ft"), "stock.csv:5:3: ", "'0'");
        refused(() -> row(GOOD.replace("21", "-1")).positive("stock_ft"), "stock.csv:5:3: ", "'-1'");
    }

    @Test
    void aWordThatIsNoChoiceIsNamedWithTheChoices() {
        refused(
                () -> row(GOOD.replace("steel", "lead")).choice("material", Material.class),
                "stock.csv:5:1: material: ",
                "'lead' is none of steel, copper");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "copper|copper,|stock.csv:6:4: ",
                "copper,coil,|copper,coil|stock.csv:6:3: ",
                "material,form|material,|stock.csv:4:2: ",
                "material,form|material,material|stock.csv:4:2: ",
                "copper|\"copper|stock.csv:6:2: "
            })
    void aCrookedRowIsRefusedWhereItGoesWrong(String fault) {
        String[] parts = fault.split("\\|");
        refused(() -> DataFile.parse("stock.csv", GOOD.replace(parts[0], parts[1])), parts[2], "");
    }

    @Test
    void aFileThatIsMissingOrBlankIsNamed() {
        refused(() -> DataFile.read("tanks/none.csv"), "tanks/none.csv:1:1: ", "missing");
        refused(() -> DataFile.parse("stock.csv", "# title: nothing\n"), "stock.csv:1:1: ", "headings");
        refused(() -> DataFile.parse("stock.csv", "a\n1\n").source(), "stock.csv:1:1: ", "source");
    }

    @Test
    void everyFileOfFactsSaysWhatItIsWhereItIsFromAndHowSureItIs() throws Exception {
        Path folder = Path.of(
                DataFile.class.getResource("/longrun/data/tables/index.csv").toURI());
        Path data = folder.getParent().getParent();
        List<String> files;
        try (Stream<Path> all = Files.walk(data)) {
            Function<Path, String> name = p -> data.relativize(p).toString().replace('\\', '/');
            files = all.map(name).filter(n -> n.endsWith(".csv")).sorted().toList();
        }
        assertThat(files).hasSizeGreaterThan(30);
        assertThat(files).allSatisfy(f -> {
            DataFile file = DataFile.read(f);
            assertThat(file.need("title").value()).isNotBlank();
            assertThat(file.source()).isNotBlank();
            assertThat(file.find("confidence").or(() -> file.find("provenance")))
                    .as(f)
                    .isPresent();
            assertThat(file.rows()).as(f).isNotEmpty();
        });
    }

    private static void refused(ThrowingCallable read, String place, String what) {
        assertThatThrownBy(read)
                .isInstanceOf(DataFault.class)
                .hasMessageStartingWith(place)
                .hasMessageContaining(what);
    }
}
