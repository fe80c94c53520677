package longrun.capacity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import longrun.plan.choice.Material;
import longrun.quantity.Length;
import longrun.quantity.Pressure;
import org.junit.jupiter.api.Test;

/**
 * 2018 IFGC Table 402.4(28), Schedule 40 steel, 11 in. w.c.: the print lacks the labels 70 ft and 90 ft but not their
 * values, so from the label 80 ft on its values belong to shorter lengths.
 */
class AsPrintedTableTest {

    private static final CapacityTables TABLES = CapacityTables.standard();
    private static final CapacityTable CORRECTED =
            TABLES.find("steel-sch40-11inwc-0.5inwc-propane").orElseThrow();
    private static final CapacityTable PRINTED = TABLES.asPrinted(CORRECTED).orElseThrow();

    @Test
    void everyPrintedValueStandsInTheCorrectedTableAtItsTrueLength() {
        int cells = 0;
        for (int r = 0; r < PRINTED.rowCount(); r++) {
            for (int c = 0; c < PRINTED.sizes().size(); c++) {
                double printed = PRINTED.btuh(r, c);
                if (!Double.isNaN(printed)) {
                    // the labels are wrong, the order of the rows is not
                    assertThat(CORRECTED.btuh(r, c)).isEqualTo(printed);
                    cells++;
                }
            }
        }
        assertThat(cells).isEqualTo(272);
    }

    /** Flow goes as length to the power -0.541, so a label 1.5 times too long overstates by 1.5^0.541 = 1.245. */
    @Test
    void shiftedRowsOverstateBySixToTwentyFivePercent() {
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        for (int r = 6; r < PRINTED.rowCount(); r++) {
            double over = Math.pow(PRINTED.rowFt(r) / CORRECTED.rowFt(r), 0.541);
            least = Math.min(least, over);
            most = Math.max(most, over);
            int same = CORRECTED.findRow(Length.ofFeet(PRINTED.rowFt(r))).orElseThrow();
            assertThat(CORRECTED.rowFt(same)).isEqualTo(PRINTED.rowFt(r));
            for (int c = 0; c < PRINTED.sizes().size(); c++) {
                double printed = PRINTED.btuh(r, c);
                if (!Double.isNaN(printed)) {
                    double bore = CORRECTED.bore(c).orElseThrow().inches();
                    double equation = FlowForm.btuh(bore, PRINTED.inlet(), PRINTED.drop(), PRINTED.rowFt(r));
                    double lastDigit = Math.max(1000, Math.pow(10, Math.floor(Math.log10(printed)) - 2));
                    assertThat(printed).isCloseTo(over * equation, within(0.51 * lastDigit));
                    assertThat(printed).isGreaterThan(CORRECTED.btuh(same, c));
                }
            }
        }
        assertThat(least).isBetween(1.055, 1.065);
        assertThat(most).isBetween(1.245, 1.255);
    }

    @Test
    void rowsToSixtyFeetAreRightInPrint() {
        for (int r = 0; r < 6; r++) {
            assertThat(PRINTED.rowFt(r)).isEqualTo(CORRECTED.rowFt(r));
        }
        assertThat(PRINTED.rowFt(6)).isEqualTo(80);
        assertThat(CORRECTED.rowFt(6)).isEqualTo(70);
    }

    @Test
    void theTableAsPrintedNeverSizes() {
        assertThat(PRINTED.use()).isEqualTo(CapacityTable.Use.AS_PRINTED);
        for (CapacityTable t : TABLES.all()) {
            for (Material m : Material.values()) {
                for (boolean memory : new boolean[] {false, true}) {
                    assertThat(TABLES.published(m, t.inlet(), t.drop(), memory)).isNotEqualTo(Optional.of(PRINTED));
                    assertThat(TABLES.forStage(m, t.inlet(), t.drop(), memory)).isNotEqualTo(Optional.of(PRINTED));
                }
            }
        }
        assertThat(TABLES.forStage(Material.STEEL, Pressure.ofInWc(11), Pressure.ofInWc(0.5)))
                .contains(CORRECTED);
    }
}
