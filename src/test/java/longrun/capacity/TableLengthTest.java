package longrun.capacity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import longrun.plan.choice.Material;
import longrun.quantity.HeatRate;
import longrun.quantity.Length;
import longrun.quantity.Pressure;
import org.junit.jupiter.api.Test;

/** Lengths read back from 2018 IRC Table G2413.4(16), CSST at 11 in. w.c. and 0.5 in. w.c. drop. */
class TableLengthTest {

    private final CapacityTable table = CapacityTables.standard()
            .published(Material.CSST, Pressure.ofInWc(11), Pressure.ofInWc(0.5))
            .orElseThrow();

    private OptionalDouble feet(String ehd, double btuh) {
        return feet(table.findColumn(ehd).orElseThrow(), btuh);
    }

    private OptionalDouble feet(int column, double btuh) {
        return TableLength.find(table, column, HeatRate.ofBtuh(btuh)).stream()
                .mapToDouble(Length::feet)
                .findFirst();
    }

    @Test
    void everyPrintedCapacityGivesBackItsRowOrTheShorterOfEquals() {
        for (int c = 0; c < table.sizes().size(); c++) {
            for (int r = 0; r < table.rowCount(); r++) {
                double cell = table.btuh(r, c);
                int shortest = r;
                while (shortest > 0 && table.btuh(shortest - 1, c) == cell) {
                    shortest--;
                }
                assertThat(feet(c, cell)).isEqualTo(OptionalDouble.of(table.rowFt(shortest)));
            }
        }
    }

    @Test
    void equalRowsGiveTheShorter() {
        // EHD 13 carries 8 thousand at 250 and at 300 ft
        assertThat(feet("13", 8_000)).isEqualTo(OptionalDouble.of(250));
    }

    @Test
    void betweenTwoRowsTheLengthLiesOnTheLogLogLine() {
        // EHD 30: 256 at 40 ft, 227 at 50 ft. For 245: 40 x (50/40)^(ln(256/245)/ln(256/227)) = 40 x 1.25^0.36535
        assertThat(feet("30", 245_000).orElseThrow()).isCloseTo(43.398, within(0.001));
    }

    @Test
    void aLoadUnderTheLastRowTakesTheLastRow() {
        assertThat(feet("30", 50_000)).isEqualTo(OptionalDouble.of(300));
        assertThat(feet("62", 1)).isEqualTo(OptionalDouble.of(300));
    }

    @Test
    void aLoadOverTheFirstRowIsNotKnown() {
        assertThat(feet("13", 72_000)).isEqualTo(OptionalDouble.of(5));
        assertThat(feet("13", 72_001)).isEmpty();
    }
}
