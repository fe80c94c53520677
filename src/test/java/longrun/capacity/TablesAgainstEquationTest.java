package longrun.capacity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import longrun.origin.Confidence;
import longrun.plan.choice.Material;
import longrun.quantity.Length;
import longrun.quantity.Pressure;
import org.junit.jupiter.api.Test;

/**
 * Validation: every cell with a bore of the 2018 IFGC tables 402.4(25) to (31) and (35) to (37) against the code's
 * equation in flow form, 2018 IFGC 402.4.
 */
class TablesAgainstEquationTest {

    /**
     * The table is one step of its last digit under the equation: 18 cells of the 2 and 10 psi tables, which 2,487.965
     * Btu/ft3 (or Cr unrounded, but for one) would reproduce, and an exact rounding tie, PE 3 in. at 60 ft (6,055).
     */
    private static final List<String> ONE_STEP = List.of(
            "steel-sch40-2psi-1psi-propane 60 ft 2-1/2 in 37700000 equation 37800000",
            "steel-sch40-2psi-1psi-propane 80 ft 1-1/4 in 7020000 equation 7030000",
            "steel-sch40-2psi-1psi-propane 80 ft 4 in 116000000 equation 117000000",
            "steel-sch40-2psi-1psi-propane 950 ft 2 in 5310000 equation 5320000",
            "steel-sch40-10psi-1psi-propane 30 ft 1 in 7220000 equation 7230000",
            "steel-sch40-10psi-1psi-propane 50 ft 2-1/2 in 51700000 equation 51800000",
            "steel-sch40-10psi-1psi-propane 250 ft 1/2 in 582000 equation 583000",
            "steel-sch40-10psi-1psi-propane 600 ft 2 in 8460000 equation 8470000",
            "steel-sch40-10psi-3psi-propane 450 ft 1-1/2 in 9090000 equation 9100000",
            "steel-sch40-10psi-3psi-propane 1400 ft 1-1/4 in 3280000 equation 3290000",
            "copper-2psi-1psi-propane 10 ft 1 in 9170000 equation 9180000",
            "copper-2psi-1psi-propane 50 ft 3/8 in 356000 equation 357000",
            "copper-2psi-1psi-propane 400 ft 5/8 in 411000 equation 412000",
            "copper-2psi-1psi-propane 750 ft 3/4 in 415000 equation 416000",
            "copper-10psi-1psi-propane 10 ft 3/4 in 5330000 equation 5340000",
            "pe-pipe-11inwc-0.5inwc-propane 60 ft 3 in 6050000 equation 6060000",
            "pe-pipe-2psi-1psi-propane 175 ft 1/2 in 664000 equation 665000",
            "pe-pipe-2psi-1psi-propane 700 ft 3/4 in 628000 equation 629000",
            "pe-pipe-2psi-1psi-propane 1200 ft 1/2 in 234000 equation 235000");

    @Test
    void everyCellWithABoreIsTheCodesEquation() {
        List<String> differ = new ArrayList<>();
        int cells = 0;
        for (CapacityTable t : CapacityTables.standard().all()) {
            if (t.material() == Material.CSST || t.use() == CapacityTable.Use.AS_PRINTED) {
                continue;
            }
            for (int r = 0; r < t.rowCount(); r++) {
                for (int c = 0; c < t.sizes().size(); c++) {
                    double bore = t.bore(c).orElseThrow().inches();
                    double equation = PrintRounding.btuh(FlowForm.btuh(bore, t.inlet(), t.drop(), t.rowFt(r)));
                    cells++;
                    if (Double.compare(equation, t.btuh(r, c)) != 0) {
                        differ.add(String.format(
                                Locale.ROOT,
                                "%s %.0f ft %s in %.0f equation %.0f",
                                t.id(),
                                t.rowFt(r),
                                t.sizes().get(c),
                                t.btuh(r, c),
                                equation));
                    }
                }
            }
        }
        assertThat(cells).isGreaterThan(3000);
        assertThat(differ).containsExactlyElementsOf(ONE_STEP);
    }

    @Test
    void halfInchPolyethylenePipeAtTenPsiAndFiftyFeetCarriesSixteenHundredThirtyThousand() {
        CapacityTable t = CapacityTables.standard()
                .forStage(Material.PE_PIPE, Pressure.ofPsi(10), Pressure.ofPsi(1))
                .orElseThrow();
        assertThat(t.id()).isEqualTo("pe-pipe-10psi-1psi-computed");
        int row = t.findRow(Length.ofFeet(50)).orElseThrow();
        assertThat(t.btuh(row, t.findColumn("1/2").orElseThrow())).isEqualTo(1_630_000);
        assertThat(t.cell(row, 0).confidence()).isEqualTo(Confidence.COMPUTED);
    }
}
