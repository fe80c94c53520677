package longrun.capacity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.IntStream;
import longrun.origin.Confidence;
import longrun.plan.choice.Material;
import longrun.quantity.HeatRate;
import longrun.quantity.Length;
import longrun.quantity.Pressure;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tables the code's equation makes where none is published: 2018 IFGC 402.4. */
class ComputedTablesTest {

    private static final CapacityTables TABLES = CapacityTables.standard();
    private static final Pressure TEN_PSI = Pressure.ofPsi(10);
    private static final Pressure ONE_PSI = Pressure.ofPsi(1);

    private static CapacityTable table(Material material, Pressure inlet, Pressure drop) {
        return TABLES.forStage(material, inlet, drop).orElseThrow();
    }

    private static double at(CapacityTable t, double feet, String size) {
        return t.btuh(
                t.findRow(Length.ofFeet(feet)).orElseThrow(), t.findColumn(size).orElseThrow());
    }

    @ParameterizedTest
    @CsvSource({
        "COPPER,11,1,copper-11inwc-1inwc-computed",
        "STEEL,138.5,27.7,steel-sch40-5psi-1psi-computed",
        "PE_PIPE,277,27.7,pe-pipe-10psi-1psi-computed",
        "PE_TUBING,277,27.7,pe-tubing-10psi-1psi-computed",
        "STEEL,7.5,0.25,steel-sch40-7.5inwc-0.25inwc-computed",
        "STEEL,55.4,13.85,steel-sch40-2psi-0.5psi-computed"
    })
    void aComputedTableIsNamedByMaterialAndPressures(Material m, double inlet, double drop, String id) {
        CapacityTable t = table(m, Pressure.ofInWc(inlet), Pressure.ofInWc(drop));
        assertThat(t.id()).isEqualTo(id);
        assertThat(t.computed()).isTrue();
        for (int r = 0; r < t.rowCount(); r++) {
            for (int c = 0; c < t.sizes().size(); c++) {
                assertThat(t.cell(r, c).confidence()).isEqualTo(Confidence.COMPUTED);
            }
        }
    }

    @Test
    void rowsStandWhereThePlanFormatFixesThem() {
        CapacityTable t = table(Material.COPPER, Pressure.ofInWc(11), Pressure.ofInWc(1));
        assertThat(IntStream.range(0, t.rowCount()).mapToDouble(t::rowFt))
                .containsExactly(
                        10.0, 20.0, 30.0, 40.0, 50.0, 60.0, 70.0, 80.0, 90.0, 100.0, 125.0, 150.0, 175.0, 200.0, 250.0,
                        300.0, 350.0, 400.0, 450.0, 500.0, 550.0, 600.0, 650.0, 700.0, 750.0, 800.0, 850.0, 900.0,
                        950.0, 1000.0, 1100.0, 1200.0, 1300.0, 1400.0, 1500.0, 1600.0, 1700.0, 1800.0, 1900.0, 2000.0);
    }

    @Test
    void sizesAndBoresAreThoseOfTheMaterialsPublishedTables() {
        CapacityTable published = TABLES.find("copper-2psi-1psi-propane").orElseThrow();
        CapacityTable t = table(Material.COPPER, Pressure.ofInWc(11), Pressure.ofInWc(1));
        assertThat(t.sizes()).isEqualTo(published.sizes());
        assertThat(t.bore(2)).isEqualTo(published.bore(2));
        assertThat(t.outsideDiameter(2)).contains("5/8");
    }

    @Test
    void aPublishedTableGoesBeforeTheEquation() {
        assertThat(table(Material.STEEL, TEN_PSI, ONE_PSI).id()).isEqualTo("steel-sch40-10psi-1psi-propane");
        assertThat(table(Material.STEEL, TEN_PSI, ONE_PSI).computed()).isFalse();
    }

    @Test
    void corrugatedTubingHasNoBoreSoNothingIsComputedForIt() {
        assertThat(TABLES.forStage(Material.CSST, Pressure.ofInWc(11), Pressure.ofInWc(1)))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"11,0", "11,-1", "11,11", "11,12", "-11,-12"})
    void aDropOfNothingOrOfTheWholeInletPressureHasNoTable(double inlet, double drop) {
        assertThat(TABLES.forStage(Material.STEEL, Pressure.ofInWc(inlet), Pressure.ofInWc(drop)))
                .isEmpty();
    }

    @Test
    void polyethyleneAtTenPsiNeverExceedsTheMakersChart() {
        CapacityTable pipe = table(Material.PE_PIPE, TEN_PSI, ONE_PSI);
        CapacityTable tubing = table(Material.PE_TUBING, TEN_PSI, ONE_PSI);
        MakerChart chart = MakerChart.load();
        for (CapacityTable t : new CapacityTable[] {pipe, tubing}) {
            for (int r = 0; r < t.rowCount(); r++) {
                for (int c = 0; c < t.sizes().size(); c++) {
                    double equation = PrintRounding.btuh(
                            FlowForm.btuh(t.bore(c).orElseThrow().inches(), TEN_PSI, ONE_PSI, t.rowFt(r)));
                    double maker = chart.btuh(t.material(), t.sizes().get(c), t.rowFt(r))
                            .orElse(equation);
                    assertThat(t.btuh(r, c)).isEqualTo(Math.min(equation, maker));
                }
            }
        }
        // 1/2 CTS: the chart's 374 at 100 ft is under the equation's 397; at 10 ft the equation's 1,380 is under 1,406
        assertThat(at(tubing, 100, "1/2 CTS")).isEqualTo(374_000);
        assertThat(at(tubing, 10, "1/2 CTS")).isEqualTo(1_380_000);
        assertThat(at(pipe, 50, "1/2")).isEqualTo(1_630_000);
    }

    @Test
    void theMakersChartIsReadAtTheNextLongerRowAndBeyondItsEndByItsLast() {
        MakerChart chart = MakerChart.load();
        assertThat(chart.btuh(Material.PE_TUBING, "1/2 CTS", 101)).hasValue(329_000);
        assertThat(chart.btuh(Material.PE_TUBING, "1/2 CTS", 401)).hasValue(169_000);
        assertThat(chart.btuh(Material.PE_PIPE, "3/4", 10)).hasValue(8_940_000);
        assertThat(chart.btuh(Material.PE_PIPE, "1/2", 10)).isEmpty();
        assertThat(chart.btuh(Material.PE_PIPE, "3", 10)).isEmpty();
    }

    @Test
    void makersChartCapsEveryInletUpToTenPsiWithADropUpToOnePsi() {
        assertThat(at(table(Material.PE_TUBING, TEN_PSI, Pressure.ofPsi(0.9999)), 100, "1/2 CTS"))
                .isEqualTo(374_000);
        assertThat(at(table(Material.PE_TUBING, Pressure.ofPsi(68.95 / 6.894757), ONE_PSI), 100, "1/2 CTS"))
                .isEqualTo(374_000);
        assertThat(at(table(Material.PE_TUBING, TEN_PSI, Pressure.ofPsi(0.9)), 2000, "1/2 CTS"))
                .isLessThanOrEqualTo(169_000);
        assertThat(at(table(Material.PE_TUBING, TEN_PSI, ONE_PSI), 450, "1/2 CTS"))
                .as("beyond the chart's last row, 400 ft, never more than that row")
                .isEqualTo(169_000);
    }

    /** The chart was made for 10 psi and 1 psi; above either it says nothing. */
    @Test
    void aboveTheMakersPressureOrDropTheEquationStandsAlone() {
        assertThat(MakerChart.caps(TEN_PSI, ONE_PSI)).isTrue();
        assertThat(MakerChart.caps(Pressure.ofPsi(11), ONE_PSI)).isFalse();
        assertThat(MakerChart.caps(TEN_PSI, Pressure.ofPsi(1.1))).isFalse();
        CapacityTable over = table(Material.PE_TUBING, Pressure.ofPsi(12), ONE_PSI);
        assertThat(at(over, 100, "1/2 CTS"))
                .isEqualTo(PrintRounding.btuh(FlowForm.btuh(
                        over.bore(over.findColumn("1/2 CTS").orElseThrow())
                                .orElseThrow()
                                .inches(),
                        Pressure.ofPsi(12),
                        ONE_PSI,
                        100)));
    }

    @Test
    void aTableHeldDownByTheMakersChartSaysSoAndNoOther() {
        assertThat(table(Material.PE_TUBING, TEN_PSI, ONE_PSI).notes())
                .last()
                .asString()
                .contains("maker's chart");
        assertThat(table(Material.PE_TUBING, Pressure.ofPsi(12), ONE_PSI).notes())
                .noneMatch(n -> n.contains("maker's chart"));
        assertThat(table(Material.COPPER, TEN_PSI, Pressure.ofPsi(2)).notes())
                .noneMatch(n -> n.contains("maker's chart"));
    }

    @Test
    void aFigureTooSmallToPrintIsNoCapacity() {
        assertThat(PrintRounding.rounded(HeatRate.ofBtuh(9_400))).isEmpty();
        assertThat(PrintRounding.rounded(HeatRate.ofBtuh(123_499))).contains(HeatRate.ofBtuh(123_000));
    }

    @Test
    void theSameTableComesBackHoweverManyWereAskedForBetween() {
        Pressure inlet = Pressure.ofInWc(11);
        CapacityTable before = table(Material.COPPER, inlet, Pressure.ofInWc(0.7));
        for (int i = 1; i <= 200; i++) {
            table(Material.COPPER, inlet, Pressure.ofInWc(1 + i / 100.0));
        }
        CapacityTable after = table(Material.COPPER, inlet, Pressure.ofInWc(0.7));
        assertThat(after.id()).isEqualTo(before.id());
        for (int r = 0; r < before.rowCount(); r++) {
            for (int c = 0; c < before.sizes().size(); c++) {
                assertThat(after.btuh(r, c)).isEqualTo(Double.valueOf(before.btuh(r, c)));
            }
        }
    }

    @ParameterizedTest
    @CsvSource({
        "9499,NaN",
        "9500,10000",
        "99499,99000",
        "99500,100000",
        "123499,123000",
        "123500,124000",
        "999499,999000",
        "999500,1000000",
        "1234999,1230000",
        "1235000,1240000",
        "11650000,11700000",
        "0,NaN",
        "NaN,NaN"
    })
    void capacitiesAreRoundedAsPrinted(double btuh, Double rounded) {
        assertThat(PrintRounding.btuh(btuh)).isEqualTo(rounded);
    }

    /** Only plastic has such a chart, and only at the pressures it is printed for. */
    @Test
    void aTableHeldDownByAMakersChartSaysSoAndNoOther() {
        assertThat(table(Material.PE_TUBING, TEN_PSI, ONE_PSI).notes()).anyMatch(n -> n.contains("maker's chart"));
        assertThat(table(Material.COPPER, Pressure.ofInWc(11), Pressure.ofInWc(1))
                        .notes())
                .noneMatch(n -> n.contains("maker's chart"));
        assertThat(table(Material.STEEL, TEN_PSI, ONE_PSI).notes()).noneMatch(n -> n.contains("maker's chart"));
    }
}
