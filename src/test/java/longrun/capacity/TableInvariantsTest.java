package longrun.capacity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import longrun.plan.choice.Material;
import longrun.quantity.Pressure;
import org.junit.jupiter.api.Test;

/** What holds of every capacity table, published or computed: longer carries no more, larger carries more. */
class TableInvariantsTest {

    private static final List<String> RISES_WITH_LENGTH = List.of();

    /** Small figures that two neighbouring sizes share after rounding. */
    private static final List<String> EQUAL_SIZES = List.of();

    private static List<CapacityTable> tables() {
        CapacityTables standard = CapacityTables.standard();
        List<CapacityTable> tables = new ArrayList<>(standard.all());
        for (Material m : Material.values()) {
            for (double[] p :
                    new double[][] {{11, 1}, {11, 0.5}, {10, 0.3}, {2 * 27.7, 27.7}, {277, 27.7}, {138.5, 27.7}}) {
                standard.forStage(m, Pressure.ofInWc(p[0]), Pressure.ofInWc(p[1]))
                        .filter(CapacityTable::computed)
                        .ifPresent(tables::add);
            }
        }
        return tables;
    }

    private static String cell(CapacityTable t, int r, int c) {
        return String.format(
                Locale.ROOT, "%s %.0f ft %s", t.id(), t.rowFt(r), t.sizes().get(c));
    }

    private static double orNothing(double btuh) {
        return Double.isNaN(btuh) ? 0 : btuh;
    }

    @Test
    void noCapacityRisesWithLength() {
        List<String> broken = new ArrayList<>();
        for (CapacityTable t : tables()) {
            for (int r = 1; r < t.rowCount(); r++) {
                assertThat(t.rowFt(r)).isGreaterThan(t.rowFt(r - 1));
                for (int c = 0; c < t.sizes().size(); c++) {
                    if (orNothing(t.btuh(r, c)) > orNothing(t.btuh(r - 1, c))) {
                        broken.add(cell(t, r, c));
                    }
                }
            }
        }
        assertThat(broken).containsExactlyElementsOf(RISES_WITH_LENGTH);
    }

    @Test
    void everyLargerSizeCarriesMore() {
        List<String> broken = new ArrayList<>();
        for (CapacityTable t : tables()) {
            for (int r = 0; r < t.rowCount(); r++) {
                for (int c = 1; c < t.sizes().size(); c++) {
                    boolean seen = !Double.isNaN(t.btuh(r, c));
                    boolean bothSeen = seen && !Double.isNaN(t.btuh(r, c - 1));
                    if (bothSeen && t.btuh(r, c) <= t.btuh(r, c - 1)) {
                        broken.add(cell(t, r, c));
                    }
                    boolean cutOffInPrint = t.use() == CapacityTable.Use.AS_PRINTED && t.rowFt(r) == 1300;
                    assertThat(seen || Double.isNaN(t.btuh(r, c - 1)) || cutOffInPrint)
                            .as("a blank right of a figure: " + cell(t, r, c))
                            .isTrue();
                }
            }
        }
        assertThat(broken).containsExactlyElementsOf(EQUAL_SIZES);
    }

    @Test
    void largerBoreAndLargerEhdStandFurtherRight() {
        for (CapacityTable t : tables()) {
            for (int c = 1; c < t.sizes().size(); c++) {
                if (t.material() == Material.CSST) {
                    assertThat(Integer.parseInt(t.sizes().get(c)))
                            .isGreaterThan(Integer.parseInt(t.sizes().get(c - 1)));
                    assertThat(t.bore(c)).isEmpty();
                } else {
                    assertThat(t.bore(c).orElseThrow().inches())
                            .isGreaterThan(t.bore(c - 1).orElseThrow().inches());
                }
            }
        }
    }

    @Test
    void copperIsKnownByItsOutsideDiameterToo() {
        for (CapacityTable t : tables()) {
            OptionalInt half = t.findColumn("1/2");
            if (t.material() == Material.COPPER) {
                assertThat(t.outsideDiameter(half.orElseThrow())).contains("5/8");
                assertThat(t.outsideDiameter(t.findColumn("3/4").orElseThrow())).contains("7/8");
            } else if (half.isPresent()) {
                assertThat(t.outsideDiameter(half.getAsInt())).isEmpty();
            }
        }
    }
}
