package longrun.capacity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import longrun.origin.DataFile;
import longrun.origin.DataRow;
import longrun.quantity.Bore;
import longrun.quantity.HeatRate;
import longrun.quantity.Length;
import longrun.quantity.Pressure;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Validation of the code's sizing equations, 2018 IFGC 402.4 and Appendix A.4. */
class FlowEquationTest {

    private static final Pressure LOW = Pressure.ofInWc(11);
    private static final Pressure HALF_INCH = Pressure.ofInWc(0.5);

    /** Canadian gas technician training text, unit 10, example 3 (CSA B149.1 Table B.6 a). */
    @ParameterizedTest
    @CsvSource({"0.745,343", "0.402,68"})
    void theDiameterFormGivesTheCanadianCopperFigures(double typeKBoreIn, int thousandBtuh) {
        GasProperties propane = GasProperties.PROPANE;
        GasProperties gas = new GasProperties(propane.cr(), propane.y(), 2500);
        Pressure drop = Pressure.ofInWc(1);
        double byDiameter = FlowForm.byDiameter(gas, typeKBoreIn, LOW, drop, 36) / 1000;
        assertThat(Math.round(byDiameter)).isEqualTo(thousandBtuh);
        double byFlow = FlowForm.btuh(gas, typeKBoreIn, LOW, drop, 36) / 1000;
        assertThat(byFlow).isCloseTo(thousandBtuh, within(0.01 * thousandBtuh));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.622, 0.824, 1.049, 1.380, 1.610, 2.067, 2.469, 3.068, 4.026})
    void theDiameterFormGivesHalfToOnePercentMore(double boreIn) {
        double byDiameter = FlowForm.byDiameter(GasProperties.PROPANE, boreIn, LOW, HALF_INCH, 60);
        double byFlow = FlowForm.btuh(boreIn, LOW, HALF_INCH, 60);
        assertThat(byDiameter / byFlow).isBetween(1.005, 1.010);
    }

    /**
     * Cells whose equation lies within 0.003 percent of a rounding tie and that the table rounds down: Cr unrounded,
     * 0.60942, lies at or below each tie.
     */
    private static final List<String> ROUNDING_TIES = List.of(
            "0.5 in w.c.: 70 ft 4.026: 8050, 8060.0",
            "0.5 in w.c.: 450 ft 1.380: 177, 178.0",
            "0.5 in w.c.: 550 ft 2.067: 459, 460.0",
            "0.5 in w.c.: 1100 ft 4.026: 1810, 1820.0");

    /** 2018 IFGC Table 402.4(2), and the 0.3 in. drop by the same equation; cubic feet per hour. */
    @Test
    void naturalGasTablesAreTheEquation() throws IOException {
        List<String> differ = new ArrayList<>(naturalDiffering(0.5));
        differ.addAll(naturalDiffering(0.3));
        assertThat(differ).containsExactlyElementsOf(ROUNDING_TIES);
    }

    private static List<String> naturalDiffering(double dropInWc) throws IOException {
        DataFile file = natural("steel-sch40-lt2psi-" + dropInWc + "inwc-natural.csv");
        String[] bores = file.need("inside_diameter_in").value().split(" ");
        List<String> differ = new ArrayList<>();
        int seen = 0;
        for (DataRow row : file.rows()) {
            double feet = row.positive("length_ft");
            for (int c = 0; c < bores.length; c++) {
                double btuh = FlowForm.btuh(
                        GasProperties.NATURAL, Double.parseDouble(bores[c]), LOW, Pressure.ofInWc(dropInWc), feet);
                String equation = Double.toString(PrintRounding.btuh(btuh) / 1000);
                String cell = row.text(file.headings().get(c + 1));
                seen++;
                if (!(cell.isEmpty() ? "NaN" : cell + ".0").equals(equation)) {
                    differ.add(String.format(
                            Locale.ROOT, "%s in w.c.: %.0f ft %s: %s, %s", dropInWc, feet, bores[c], cell, equation));
                }
            }
        }
        assertThat(seen).isEqualTo(40 * 9);
        return differ;
    }

    private static DataFile natural(String name) throws IOException {
        try (InputStream in = FlowEquationTest.class.getResourceAsStream(name)) {
            byte[] bytes = Objects.requireNonNull(in, name).readAllBytes();
            return DataFile.parse(name, new String(bytes, StandardCharsets.UTF_8));
        }
    }

    @ParameterizedTest
    @CsvSource({"0.397,0.018", "0.4,0.2", "1.49,0.5", "1.5,0.5", "2,1", "10,3", "10,0.001"})
    void theDropOfACapacityIsTheDropItWasMadeFor(double inletPsi, double dropPsi) {
        Pressure inlet = Pressure.ofPsi(inletPsi);
        double btuh = FlowForm.btuh(1.049, inlet, Pressure.ofPsi(dropPsi), 85);
        assertThat(FlowForm.dropPsi(1.049, inlet, btuh, 85)).isCloseTo(dropPsi, within(1e-12));
    }

    @Test
    void theHighPressureEquationBeginsAtOneAndAHalfPsi() {
        assertThat(FlowEquation.isHigh(Pressure.ofPsi(1.4999))).isFalse();
        assertThat(FlowEquation.isHigh(Pressure.ofPsi(1.5))).isTrue();
        assertThat(FlowEquation.isHigh(Pressure.ofInWc(41.55))).isTrue();
    }

    @Test
    void noLoadLosesNothingAndTooGreatALoadCannotBe() {
        assertThat(FlowForm.dropPsi(0.622, LOW, 0, 50)).isZero();
        assertThat(FlowForm.dropPsi(0.622, LOW, 50_000_000, 50)).isNaN();
        assertThat(FlowForm.dropPsi(0.622, Pressure.ofPsi(2), 1e9, 50)).isNaN();
        assertThat(FlowForm.dropPsi(0, LOW, 1000, 50)).isNaN();
        assertThat(FlowForm.dropPsi(0.622, LOW, -1, 50)).isNaN();
    }

    /** All the gas of the pressure may be used up, and no more. */
    @Test
    void whatTakesTheWholePressureIsTheMostThatCanFlow() {
        double most = FlowForm.btuh(0.622, LOW, LOW, 50);
        assertThat(FlowForm.dropPsi(0.622, LOW, most * 0.999999, 50)).isCloseTo(LOW.psi(), within(1e-5));
        assertThat(FlowForm.dropPsi(0.622, LOW, most * 1.000001, 50)).isNaN();
    }

    @Test
    void alongNoLengthNothingIsLostAndWithoutPressureNothingFlows() {
        Bore bore = Bore.ofInches(0.622);
        HeatRate load = HeatRate.ofBtuh(50_000);
        assertThat(FlowEquation.drop(bore, LOW, load, Length.ZERO)).contains(Pressure.ZERO);
        assertThat(FlowEquation.drop(bore, LOW, load, Length.ofFeet(50)))
                .isEqualTo(FlowEquation.drop(bore, LOW, LOW, load, Length.ofFeet(50)))
                .isNotEmpty();
        assertThat(FlowEquation.drop(bore, LOW, Pressure.ZERO, HeatRate.ZERO, Length.ofFeet(50)))
                .isEmpty();
    }

    @Test
    void noBoreNoLengthNoDropGiveNoCapacity() {
        assertThat(FlowForm.btuh(0, LOW, HALF_INCH, 50)).isNaN();
        assertThat(FlowForm.btuh(0.622, LOW, HALF_INCH, 0)).isNaN();
        assertThat(FlowForm.btuh(0.622, LOW, Pressure.ofPsi(0), 50)).isNaN();
        assertThat(FlowForm.btuh(0.622, LOW, Pressure.ofInWc(12), 50)).isNaN();
    }
}
