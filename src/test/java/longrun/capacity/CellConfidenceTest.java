package longrun.capacity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.Map;
import longrun.origin.Confidence;
import longrun.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How many cells of each table were read in print; a row read in part counts by its left-hand sizes. */
class CellConfidenceTest {

    private static Map<Confidence, Integer> count(String id) {
        CapacityTable t = CapacityTables.standard().find(id).orElseThrow();
        Map<Confidence, Integer> count = new EnumMap<>(Confidence.class);
        for (int r = 0; r < t.rowCount(); r++) {
            for (int c = 0; c < t.sizes().size(); c++) {
                count.merge(t.cell(r, c).confidence(), 1, Integer::sum);
            }
        }
        return count;
    }

    @ParameterizedTest
    @CsvSource({
        "steel-sch40-10psi-1psi-propane,74",
        "steel-sch40-10psi-3psi-propane,68",
        "steel-sch40-2psi-1psi-propane,76",
        "copper-10psi-1psi-propane,39",
        "copper-11inwc-0.5inwc-propane,35",
        "copper-2psi-1psi-propane,42",
        "pe-pipe-11inwc-0.5inwc-propane,58",
        "pe-pipe-2psi-1psi-propane,56",
        "steel-sch40-11inwc-0.5inwc-propane,272"
    })
    void theCellsReadInPrintAreThoseTheTranscriptionCounted(String id, int printed) {
        Map<Confidence, Integer> count = count(id);
        assertThat(count).containsEntry(Confidence.PRINT, printed);
        assertThat(count.keySet()).containsExactlyInAnyOrder(Confidence.PRINT, Confidence.COMPUTED);
    }

    @Test
    void longLowPressureTubingRowsAreHeldFromMemory() {
        assertThat(count("csst-11inwc-0.5inwc-propane"))
                .containsOnly(
                        Map.entry(Confidence.PRINT, 9 * 14),
                        Map.entry(Confidence.SECONDARY, 12),
                        Map.entry(Confidence.MEMORY, 3 * 10 + 5 * 14));
        CapacityTable t =
                CapacityTables.standard().find("csst-11inwc-0.5inwc-propane").orElseThrow();
        int seventy = t.findRow(Length.ofFeet(70)).orElseThrow();
        assertThat(t.cell(seventy, t.findColumn("31").orElseThrow()).confidence())
                .isEqualTo(Confidence.SECONDARY);
        assertThat(t.cell(seventy, t.findColumn("37").orElseThrow()).confidence())
                .isEqualTo(Confidence.MEMORY);
        assertThat(t.cell(t.findRow(Length.ofFeet(60)).orElseThrow(), 0).confidence())
                .isEqualTo(Confidence.PRINT);
    }

    @Test
    void theOtherTubingTables() {
        assertThat(count("csst-2psi-1psi-propane").keySet()).containsExactly(Confidence.PRINT);
        assertThat(count("csst-5psi-3.5psi-propane").keySet()).containsExactly(Confidence.MEMORY);
    }

    @Test
    void polyethyleneTubingHeldFromMemoryEqualsTheEquationSoItIsComputed() {
        assertThat(count("pe-tubing-11inwc-0.5inwc-propane")).containsOnly(Map.entry(Confidence.COMPUTED, 44));
    }
}
