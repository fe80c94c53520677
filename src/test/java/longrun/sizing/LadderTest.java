package longrun.sizing;

import static org.assertj.core.api.Assertions.assertThat;

import longrun.plan.PlannedHouse;
import longrun.quantity.HeatRate;
import longrun.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** One thing changed at a time: which way the answer goes, and how far. */
class LadderTest {

    private static PlannedHouse run(String feet, String btuh) {
        return PlannedHouse.behind("11 in w.c.", "0.5 in w.c.")
                .with("\"fittingAllowance\":\"none\"")
                .section("A", "R", "steel", feet)
                .appliance("a", "A", btuh);
    }

    @Test
    void tenFeetMoreTakesTheNextRow() {
        assertThat(run("50 ft", "115 kBtu/h").size().section(0).capacity()).contains(HeatRate.ofBtuh(122_000));
        assertThat(run("60 ft", "105 kBtu/h").size().section(0).capacity()).contains(HeatRate.ofBtuh(110_000));
        assertThat(run("70 ft", "100 kBtu/h").size().section(0).capacity()).contains(HeatRate.ofBtuh(101_000));
    }

    @Test
    void oneApplianceMoreRaisesEverySectionAboveItAndNoOther() {
        Sizing before = PlannedHouse.behind("11 in w.c.", "0.5 in w.c.")
                .with("\"fittingAllowance\":\"none\"")
                .section("A", "R", "steel", "20 ft")
                .section("B", "A", "steel", "20 ft")
                .section("C", "A", "steel", "20 ft", "\"capped\":true", "\"reserve\":\"none\"")
                .appliance("b", "B", "120 kBtu/h")
                .size();
        Sizing after = PlannedHouse.behind("11 in w.c.", "0.5 in w.c.")
                .with("\"fittingAllowance\":\"none\"")
                .section("A", "R", "steel", "20 ft")
                .section("B", "A", "steel", "20 ft")
                .section("C", "A", "steel", "20 ft")
                .appliance("b", "B", "120 kBtu/h")
                .appliance("c", "C", "120 kBtu/h")
                .size();
        assertThat(before.section(0).size()).contains("1/2");
        assertThat(after.section(0).size()).contains("3/4");
        assertThat(after.section(1).size()).isEqualTo(before.section(1).size());
    }

    @ParameterizedTest
    @CsvSource({"steel, 3/4", "copper, 3/4", "csst, 30", "pe-pipe, 3/4", "pe-tubing, 1 CTS"})
    void theSameRunInEachMaterial(String material, String size) {
        assertThat(PlannedHouse.behind("11 in w.c.", "0.5 in w.c.")
                        .with("\"fittingAllowance\":\"none\"")
                        .section("A", "R", material, "30 ft")
                        .appliance("a", "A", "200 kBtu/h")
                        .size(0))
                .isEqualTo(size);
    }

    @Test
    void aSizeInPlaceIsJudgedAndPushesNothingUpstream() {
        PlannedHouse plan = PlannedHouse.behind("11 in w.c.", "0.5 in w.c.")
                .with("\"fittingAllowance\":\"none\"")
                .section("A", "R", "steel", "20 ft", "\"installedSize\":\"1/2\"")
                .section("B", "A", "steel", "20 ft", "\"installedSize\":\"2\"")
                .appliance("b", "B", "140 kBtu/h");
        Sizing sizing = plan.size();
        assertThat(sizing.section(0).status()).isEqualTo(SectionStatus.UNDERSIZED);
        assertThat(sizing.section(0).neededSize()).contains("3/4");
        assertThat(sizing.section(1).status()).isEqualTo(SectionStatus.ADEQUATE);
        assertThat(sizing.section(1).neededSize()).contains("3/4");
    }

    @Test
    void aChosenSizeThatNoLongerCarriesIsToldNotReplaced() {
        assertThat(choose("1").section(0).status()).isEqualTo(SectionStatus.SIZED);
        assertThat(choose("1").section(0).size()).contains("1");
        assertThat(choose("1").section(0).neededSize()).contains("3/4");
        assertThat(choose("1/2").section(0).status()).isEqualTo(SectionStatus.UNDERSIZED);
        assertThat(choose("1/2").section(0).size()).contains("1/2");
    }

    private static Sizing choose(String size) {
        return PlannedHouse.behind("11 in w.c.", "0.5 in w.c.")
                .with("\"fittingAllowance\":\"none\"")
                .section("A", "R", "steel", "40 ft", "\"chosenSize\":\"" + size + "\"")
                .appliance("a", "A", "199 kBtu/h")
                .size();
    }

    @Test
    void aMissingInputMakesOnlyWhatFeedsItUnknown() {
        Sizing sizing = PlannedHouse.behind("11 in w.c.", "0.5 in w.c.")
                .with("\"fittingAllowance\":\"none\"")
                .section("A", "R", "steel", "10 ft")
                .section("B", "A", "steel", "10 ft")
                .section("C", "A", "steel", "40 ft", "\"capped\":true")
                .appliance("b", "B", "100 kBtu/h")
                .size();
        assertThat(sizing.section(0).status()).isEqualTo(SectionStatus.UNKNOWN);
        assertThat(sizing.section(1).size()).contains("1/2");
        assertThat(sizing.section(1).rowRun())
                .contains(Length.ofFeet(50)); // the farthest outlet sets the row, future ones included
        assertThat(sizing.section(2).status()).isEqualTo(SectionStatus.UNKNOWN);
    }

    @ParameterizedTest
    @ValueSource(strings = {"\"legs\":null", "\"material\":null"})
    void aMissingLengthOrMaterialMakesItsWholeStageUnknown(String entry) {
        String plan =
                "{\"format\":\"longrun-plan/1\",\"regulators\":[{\"id\":\"R\",\"outlet\":\"11 in w.c.\",\"allowedDrop\":\"0.5 in w.c.\"}],"
                        + "\"sections\":[{\"id\":\"A\",\"from\":\"R\",\"material\":\"steel\",\"legs\":[\"4 ft\"]},"
                        + "{\"id\":\"B\",\"from\":\"A\",\"material\":\"steel\",\"legs\":[\"4 ft\"]}],"
                        + "\"appliances\":[{\"id\":\"b\",\"fedBy\":\"B\",\"input\":\"20 kBtu/h\"}]}";
        String lacking = plan.replaceFirst(
                entry.startsWith("\"legs") ? "\"legs\":\\[\"4 ft\"\\]\\},\\{" : "\"material\":\"steel\",",
                entry.startsWith("\"legs") ? "\"legs\":null},{" : "\"material\":null,");
        Sizing sizing = Sizing.of(
                longrun.piping.Piping.of(longrun.Samples.plan(lacking)), longrun.capacity.CapacityTables.standard());
        assertThat(sizing.section(0).status()).isEqualTo(SectionStatus.UNKNOWN);
        assertThat(sizing.section(1).status()).isEqualTo(SectionStatus.UNKNOWN);
        assertThat(sizing.stage(0).known()).isFalse();
    }

    @Test
    void tubingAtFivePsiIsRefusedUntilTurnedOn() {
        PlannedHouse plan = PlannedHouse.behind("5 psi", "3.5 psi")
                .section("A", "R", "csst", "30 ft")
                .appliance("a", "A", "390 kBtu/h");
        assertThat(plan.size().section(0).noSize()).contains(NoSizeReason.MEMORY_TABLE);
        assertThat(plan.with("\"useMemoryTables\":true").size().section(0).size())
                .contains("13");
    }

    @Test
    void aRunLongerThanTheTableOrALoadOverItsLargestHasNoSize() {
        assertThat(run("2,000.1 ft", "20 kBtu/h").size().section(0).noSize())
                .contains(NoSizeReason.RUN_LONGER_THAN_TABLE);
        assertThat(run("10 ft", "39,001 kBtu/h").size().section(0).noSize()).contains(NoSizeReason.LOAD_OVER_LARGEST);
        assertThat(run("10 ft", "39,000 kBtu/h").size().section(0).size()).contains("4");
    }

    @Test
    void aShareOfTheLoadNeedsItsReasonAndNeverStarvesTheLargestAppliance() {
        PlannedHouse plan = PlannedHouse.behind("11 in w.c.", "0.5 in w.c.")
                .section("A", "R", "steel", "20 ft")
                .section("B", "A", "steel", "20 ft")
                .section("C", "A", "steel", "20 ft")
                .appliance("b", "B", "100 kBtu/h")
                .appliance("c", "C", "100 kBtu/h");
        assertThat(plan.size().section(0).load()).contains(HeatRate.ofBtuh(200_000));
        plan.with("\"diversity\":{\"share\":\"40 %\"}");
        assertThat(plan.size().section(0).load()).contains(HeatRate.ofBtuh(200_000));
    }

    @Test
    void aShareWithItsReasonIsUsed() {
        PlannedHouse plan = PlannedHouse.behind("11 in w.c.", "0.5 in w.c.")
                .with("\"diversity\":{\"share\":\"80 %\",\"reason\":\"the grill is never lit with the heater\"}")
                .section("A", "R", "steel", "20 ft")
                .section("B", "A", "steel", "20 ft")
                .section("C", "A", "steel", "20 ft")
                .appliance("b", "B", "100 kBtu/h")
                .appliance("c", "C", "100 kBtu/h");
        assertThat(plan.size().section(0).load()).contains(HeatRate.ofBtuh(160_000));
        assertThat(plan.size().section(1).load()).contains(HeatRate.ofBtuh(100_000));
    }
}
