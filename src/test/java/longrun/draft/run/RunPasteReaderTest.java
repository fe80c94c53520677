package longrun.draft.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import longrun.words.UnitSystem;
import org.junit.jupiter.api.Test;

/** What a list from a spreadsheet is understood as. */
class RunPasteReaderTest {

    private final RunPasteReader reader = new RunPasteReader(UnitSystem.CUSTOMARY);

    @Test
    void headingNamesColumnsAndUnits() {
        var u = reader.read(
                "Line\tFeeds\tLength (m)\tInput, MBH\tFrom\nA\tbranch\t6.7\t\tregulator\nB\tfurnace\t3\t60\tA\n", 2);
        assertThat(u.lines()).hasSize(2);
        assertThat(u.lines().get(0).length()).isEqualTo("6.7 m");
        assertThat(u.lines().get(1).input()).isEqualTo("60 MBH");
        assertThat(u.lines().get(1).from()).contains("C");
        assertThat(u.lines().get(0).from()).contains(PressureStart.FIRST_REGULATOR);
        assertThat(u.columns()).contains("column 3 as length in m", "column 4 as input in MBH");
    }

    @Test
    void withoutHeadingTheFirstFiguresAreTheLength() {
        var u = reader.read("to the furnace\t31\t60,000\nto the grill\t5' 6\"\t40,000", 0);
        assertThat(u.lines()).extracting(PastedLine::length).containsExactly("31 ft", "5' 6\"");
        assertThat(u.lines()).extracting(PastedLine::input).containsExactly("60,000 Btu/h", "40,000 Btu/h");
        assertThat(u.lines()).allMatch(l -> l.problems().isEmpty());
    }

    @Test
    void doubledQuotationMarksOfASpreadsheetAreInches() {
        var u = reader.read("to the grill\t\"5' 6\"\"\"\t40000", 0);
        assertThat(u.lines().get(0).length()).isEqualTo("5' 6\"");
    }

    @Test
    void anAmbiguousUnitIsAProblemAtEachCellAndNeverGuessed() {
        var u = reader.read("Feeds\tLength, ft\tInput, MBtu/h\nfurnace\t31\t60", 0);
        assertThat(u.lines().get(0).input()).isEqualTo("60 MBtu/h");
        assertThat(u.lines().get(0).problems())
                .singleElement()
                .asString()
                .contains("thousand")
                .contains("million");
    }

    @Test
    void anEntryThatIsNoLengthIsKeptAsWritten() {
        var u = reader.read("dryer\t12 x\t22000\nrange\t18\t65000", 0);
        assertThat(u.lines().get(0).length()).isEqualTo("12 x");
        assertThat(u.lines().get(0).problems()).hasSize(1);
    }

    @Test
    void inputsInThousandsOrInBtuAreHeatRates() {
        var u = reader.read("Feeds\tLength, ft\tInput (BTU)\nfurnace\t31\t60,000\nheater\t20\t199k", 0);
        assertThat(u.lines()).extracting(PastedLine::input).containsExactly("60,000 Btu/h", "199 kBtu/h");
        assertThat(u.lines()).allMatch(l -> l.problems().isEmpty());
    }

    @Test
    void aColumnOfMaterialsMakesAMixedRun() {
        var u = reader.read(
                "Feeds\tMaterial\tLength, ft\tInput, MBH\nmanifold\tblack iron\t8\t\nfurnace\tCSST\t31\t60\n"
                        + "heater\tpex\t20\t199",
                0);
        assertThat(u.lines())
                .extracting(PastedLine::pipe)
                .containsExactly(Optional.of(Pipe.STEEL), Optional.of(Pipe.CSST), Optional.empty());
        assertThat(u.lines().get(2).problems()).singleElement().asString().contains("pex is not a material");
        assertThat(u.columns()).contains("column 2 as material");
    }

    @Test
    void aMaterialMayStandWithItsLength() {
        var u = reader.read("to the furnace\tcsst 31\t60,000\nto the grill\t12 ft copper\t40,000", 0);
        assertThat(u.lines()).extracting(PastedLine::length).containsExactly("31 ft", "12 ft");
        assertThat(u.lines())
                .extracting(PastedLine::pipe)
                .containsExactly(Optional.of(Pipe.CSST), Optional.of(Pipe.COPPER));
    }
}
