package longrun.checked;

import static org.assertj.core.api.Assertions.assertThat;

import longrun.capacity.CapacityTable;
import longrun.checked.table.EquationCheck;
import longrun.checked.table.SecondReading;
import org.junit.jupiter.api.Test;

/** Each capacity table against the code's equation and against a second keying of the print. */
class TableChecksTest {

    @Test
    void everyCellReadInPrintIsTheCodesEquationOrHasItsReason() {
        assertThat(EquationCheck.listAll())
                .allSatisfy(c -> assertThat(c.holds())
                        .as("%s: %s", c.table().id(), c.differing())
                        .isTrue())
                .extracting(c -> c.table().id())
                .hasSize(10);
        assertThat(EquationCheck.listAll().stream()
                        .mapToInt(c -> c.differing().size())
                        .sum())
                .isEqualTo(19);
    }

    @Test
    void keyedTwiceTheTablesAreTheSameButForOneMisprint() {
        assertThat(SecondReading.listAll())
                .hasSize(11)
                .allSatisfy(s -> assertThat(s.holds())
                        .as("%s: %s", s.table().id(), s.differing())
                        .isTrue());
        assertThat(SecondReading.listAll().stream()
                        .mapToInt(SecondReading::cells)
                        .sum())
                .isEqualTo(756);
        assertThat(SecondReading.listAll().stream().flatMap(s -> s.differing().stream()))
                .singleElement()
                .satisfies(cell -> assertThat(cell.table().orElseThrow())
                        .isLessThan(cell.other().orElseThrow()));
        assertThat(SecondReading.listKeyedOnce())
                .extracting(CapacityTable::id)
                .containsExactlyInAnyOrder(
                        "steel-sch40-11inwc-0.5inwc-propane",
                        "csst-5psi-3.5psi-propane",
                        "pe-tubing-11inwc-0.5inwc-propane");
    }
}
