package longrun.capacity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import longrun.origin.Confidence;
import longrun.plan.choice.Material;
import longrun.plan.choice.Tube;
import longrun.quantity.Bore;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Equivalent lengths: 2018 IRC Appendix A Table A.2.2, page 847. */
class FittingLengthsTest {

    private static double feet(Turn turn, Material material, String size) {
        return FittingLengths.length(turn, material, size).feet();
    }

    @ParameterizedTest
    @CsvSource({"1/2,1.55,0.73,3.10", "3/4,2.06,0.96,4.12", "1,2.62,1.22,5.24", "2,5.17,2.41,10.3", "4,10.1,4.70,20.2"})
    void steelTakesThePrintedScrewedValues(String size, double elbow, double elbow45, double tee) {
        assertThat(feet(Turn.ELBOW_90, Material.STEEL, size)).isEqualTo(elbow);
        assertThat(feet(Turn.ELBOW_45, Material.STEEL, size)).isEqualTo(elbow45);
        assertThat(feet(Turn.TEE_BRANCH, Material.STEEL, size)).isEqualTo(tee);
        assertThat(feet(Turn.BEND, Material.STEEL, size)).isEqualTo(elbow);
        assertThat(FittingLengths.confidence(Material.STEEL)).isEqualTo(Confidence.PRINT);
    }

    @Test
    void thePrintedValuesFollowTheTablesOwnRelation() {
        CapacityTable steel =
                CapacityTables.standard().find("steel-sch40-2psi-1psi-propane").orElseThrow();
        for (int c = 0; c < steel.sizes().size(); c++) {
            for (Turn turn : new Turn[] {Turn.ELBOW_90, Turn.ELBOW_45, Turn.TEE_BRANCH}) {
                double printed = feet(turn, Material.STEEL, steel.sizes().get(c));
                double relation =
                        FittingLengths.ofBore(turn, steel.bore(c).orElseThrow()).feet();
                assertThat(relation).isCloseTo(printed, within(0.012 * printed));
            }
        }
    }

    @Test
    void otherBoresTakeTheRelation() {
        assertThat(feet(Turn.ELBOW_90, Material.COPPER, "3/4")).isCloseTo(1.8625, within(1e-9));
        assertThat(feet(Turn.BEND, Material.COPPER, "1/2")).isCloseTo(0.307416667, within(1e-8));
        assertThat(feet(Turn.TEE_BRANCH, Material.PE_PIPE, "1/2")).isCloseTo(3.3, within(1e-9));
        assertThat(feet(Turn.BEND, Material.PE_TUBING, "1 CTS")).isCloseTo(0.54075, within(1e-9));
        assertThat(FittingLengths.confidence(Material.COPPER)).isEqualTo(Confidence.COMPUTED);
    }

    @Test
    void corrugatedTubingAndUnknownSizesAreRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> feet(Turn.BEND, Material.CSST, "25"));
        assertThatIllegalArgumentException().isThrownBy(() -> feet(Turn.BEND, Material.COPPER, "7"));
        assertThatIllegalArgumentException().isThrownBy(() -> feet(Turn.ELBOW_90, Material.STEEL, "5/8"));
        assertThat(FittingLengths.bore(Material.CSST, "25")).isEmpty();
    }

    /** 2018 IFGC Appendix A Table A.5.2, page 162. */
    @Test
    void copperTablesAreByTheTypeKBore() {
        CapacityTable copper =
                CapacityTables.standard().find("copper-2psi-1psi-propane").orElseThrow();
        for (int c = 0; c < copper.sizes().size(); c++) {
            assertThat(CopperBores.bore(Tube.K, copper.sizes().get(c))).isEqualTo(copper.bore(c));
            assertThat(CopperBores.bore(Tube.L, copper.sizes().get(c))
                            .orElseThrow()
                            .inches())
                    .isGreaterThan(copper.bore(c).orElseThrow().inches());
        }
        assertThat(CopperBores.bore(Tube.ACR, "3/8")).contains(Bore.ofInches(0.311));
        assertThat(CopperBores.bore(Tube.ACR, "7/8")).contains(Bore.ofInches(0.785));
        assertThat(CopperBores.bore(Tube.M, "1/2")).isEmpty();
    }
}
