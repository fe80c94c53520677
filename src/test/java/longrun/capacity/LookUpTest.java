package longrun.capacity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalInt;
import longrun.plan.choice.Material;
import longrun.quantity.HeatRate;
import longrun.quantity.Length;
import longrun.quantity.Pressure;
import org.junit.jupiter.api.Test;

/** Reading a table as 2018 IFGC Appendix A tells: the equal or next longer row, never between two. */
class LookUpTest {

    private static final CapacityTables TABLES = CapacityTables.standard();
    private static final CapacityTable CSST =
            TABLES.find("csst-11inwc-0.5inwc-propane").orElseThrow();

    private static double rowFor(double feet) {
        OptionalInt row = CSST.findRow(Length.ofFeet(feet));
        return row.isEmpty() ? -1 : CSST.rowFt(row.getAsInt());
    }

    @Test
    void equalLengthTakesItsRowAndALongerOneTheNext() {
        assertThat(rowFor(30)).isEqualTo(30);
        assertThat(rowFor(30.0004)).isEqualTo(30);
        assertThat(rowFor(30.001)).isEqualTo(40);
        assertThat(rowFor(0)).isEqualTo(5);
        assertThat(rowFor(300)).isEqualTo(300);
        assertThat(rowFor(300.01)).isEqualTo(-1);
    }

    @Test
    void sixtyFeetMeasuredInMetresIsSixtyFeet() {
        assertThat(rowFor(18.288 / 0.3048)).isEqualTo(60);
    }

    @Test
    void thirtyFeetOfEhdThirtyCarryTwoHundredNinetySevenThousand() {
        int row = CSST.findRow(Length.ofFeet(30)).orElseThrow();
        assertThat(CSST.btuh(row, CSST.findColumn("30").orElseThrow())).isEqualTo(297_000);
        assertThat(CSST.btuh(row, CSST.findColumn("25").orElseThrow())).isEqualTo(177_000);
        assertThat(CSST.btuh(row, CSST.findColumn("18").orElseThrow())).isEqualTo(74_000);
        assertThat(CSST.findColumn("32")).isEmpty();
    }

    /** 2018 IFGC Table 402.4(28): 1/2 in. over 50 ft carries 122,000 Btu/h; equal passes. */
    @Test
    void aLoadEqualToTheCellIsCarriedAndOneMoreIsNot() {
        CapacityTable t = CapacityTables.standard()
                .find("steel-sch40-11inwc-0.5inwc-propane")
                .orElseThrow();
        int row = t.findRow(Length.ofFeet(50)).orElseThrow();
        assertThat(t.capacity(row, 0)).contains(HeatRate.ofBtuh(122_000));
        assertThat(t.carries(row, 0, HeatRate.ofBtuh(122_000))).isTrue();
        assertThat(t.carries(row, 0, HeatRate.ofBtuh(122_001))).isFalse();
        assertThat(CapacityTables.standard().asPrinted(t).orElseThrow().id())
                .isEqualTo("steel-sch40-11inwc-0.5inwc-propane-asprinted");
        assertThat(PrintRounding.btuh(1_000_000)).isEqualTo(1_000_000);
        assertThat(Turn.ELBOW_90.steelColumn()).isEqualTo("elbow_90_screwed");
    }

    @Test
    void aBlankIsNoCapacity() {
        CapacityTable copper = TABLES.find("copper-11inwc-0.5inwc-propane").orElseThrow();
        int row = copper.findRow(Length.ofFeet(200)).orElseThrow();
        assertThat(copper.capacity(row, 0)).isEmpty();
        assertThat(copper.carries(row, 0, HeatRate.ZERO)).isFalse();
    }

    @Test
    void pressuresWrittenInAnotherUnitFindTheSameTable() {
        assertThat(TABLES.published(Material.STEEL, Pressure.ofPsi(11 / 27.7), Pressure.ofPsi(0.5 / 27.7)))
                .isPresent();
        assertThat(TABLES.published(Material.STEEL, Pressure.ofInWc(55.4), Pressure.ofInWc(27.7)))
                .map(CapacityTable::id)
                .contains("steel-sch40-2psi-1psi-propane");
    }

    /** 2.738 kPa is 11.0003 in. w.c., 0.1244 kPa 0.4998 in. w.c. and 68.95 kPa 10.0004 psi at 6.894757 kPa a psi. */
    @Test
    void tableIsReadWithinAThousandthOfItsPressures() {
        assertThat(TABLES.published(
                        Material.STEEL, Pressure.ofPsi(2.738 / 6.894757), Pressure.ofPsi(0.1244 / 6.894757)))
                .map(CapacityTable::id)
                .contains("steel-sch40-11inwc-0.5inwc-propane");
        assertThat(TABLES.published(Material.STEEL, Pressure.ofPsi(68.95 / 6.894757), Pressure.ofPsi(6.895 / 6.894757)))
                .map(CapacityTable::id)
                .contains("steel-sch40-10psi-1psi-propane");
        assertThat(TABLES.published(Material.STEEL, Pressure.ofInWc(11.011), Pressure.ofInWc(0.5)))
                .isPresent();
        assertThat(TABLES.published(Material.STEEL, Pressure.ofInWc(11.012), Pressure.ofInWc(0.5)))
                .isEmpty();
        assertThat(TABLES.published(Material.STEEL, Pressure.ofInWc(11), Pressure.ofInWc(0.501)))
                .isEmpty();
    }

    @Test
    void theFivePsiTubingTableHeldFromMemoryMustBeTurnedOn() {
        Pressure inlet = Pressure.ofPsi(5);
        Pressure drop = Pressure.ofPsi(3.5);
        assertThat(TABLES.published(Material.CSST, inlet, drop)).isEmpty();
        assertThat(TABLES.forStage(Material.CSST, inlet, drop)).isEmpty();
        assertThat(TABLES.published(Material.CSST, inlet, drop, true))
                .map(CapacityTable::id)
                .contains("csst-5psi-3.5psi-propane");
        assertThat(TABLES.forStage(Material.CSST, inlet, drop, true)).isPresent();
    }

    @Test
    void theTablesAreReadOnceAndHaveTheNamesOfTheirFiles() {
        assertThat(CapacityTables.standard()).isSameAs(TABLES);
        assertThat(TABLES.all()).hasSize(14).doesNotHaveDuplicates();
        for (CapacityTable t : TABLES.all()) {
            assertThat(TABLES.find(t.id())).contains(t);
            assertThat(t.source()).contains("Code").contains("Table");
            assertThat(t.notes()).anyMatch(n -> n.startsWith("provenance: "));
        }
        assertThat(TABLES.find("steel")).isEmpty();
    }
}
