package longrun.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import longrun.plan.PlannedHouse;
import longrun.quantity.HeatRate;
import longrun.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Worked examples that others have published, through the whole chain from plan to size. */
class PublishedExamplesTest {

    private static final String NONE = "\"fittingAllowance\":\"none\"";

    /**
     * Single runs of propane at 11 in. w.c. in Schedule 40 (secondary: two appliance manuals; the cells are 2018 IFGC Table
     * 402.4(28) at true length).
     */
    @ParameterizedTest
    @CsvSource({"120, 60, 3/4", "270, 100, 1"})
    void singleRunsOfSteelAreSizedAsTwoManualsPrint(String kBtuh, String feet, String size) {
        assertThat(PlannedHouse.behind("11 in w.c.", "0.5 in w.c.")
                        .with(NONE)
                        .section("A", "R", "steel", feet + " ft")
                        .appliance("a", "A", kBtuh + " kBtu/h")
                        .size(0))
                .isEqualTo(size);
    }

    /** 2018 IFGC Appendix A: the first capacity equal to or above the load; the row equal to or above the length. */
    @ParameterizedTest
    @CsvSource({
        "60 ft,     110000, 1/2, 60",
        "60.1 ft,   110000, 3/4, 70",
        "60.0004 ft, 110000, 1/2, 60",
        "60.0006 ft, 110000, 3/4, 70",
        "18.288 m,  110000, 1/2, 60",
        "60 ft,     110001, 3/4, 60",
        "10 ft,     291000, 1/2, 10",
        "0 ft,      291000, 1/2, 10"
    })
    void anEqualCapacityAndAnEqualLengthPass(String length, String btuh, String size, double row) {
        SectionSize s = PlannedHouse.behind("11 in w.c.", "0.5 in w.c.")
                .with(NONE)
                .section("A", "R", "steel", length)
                .appliance("a", "A", btuh + " Btu/h")
                .size()
                .section(0);
        assertThat(s.size()).contains(size);
        assertThat(s.rowRun()).contains(Length.ofFeet(row));
    }

    /**
     * Canadian gas technician training text, unit 10, example 3 (CSA B149.1 Table B.6 a): copper by OD, 11 in. w.c., 1 in.
     * drop, 30 ft measured and 20 %: 250 and 285 kBtu/h need 7/8 OD, 35 kBtu/h needs 1/2 OD. The row after 36 ft is 40.
     */
    @Test
    void theCanadianCopperExampleComesToTheSameSizes() {
        Sizing sizing = PlannedHouse.behind("11 in w.c.", "1 in w.c.")
                .with("\"fittingAllowance\":\"20 %\"")
                .section("A", "R", "copper", "10 ft")
                .section("B", "A", "copper", "20 ft")
                .section("C", "A", "copper", "15 ft")
                .appliance("heater", "B", "250 kBtu/h")
                .appliance("range", "C", "35 kBtu/h")
                .size();
        assertThat(sizing.stage(0).longestRun().orElseThrow().feet()).isCloseTo(36, within(1e-9));
        assertThat(sizing.section(0).rowRun()).contains(Length.ofFeet(40));
        assertThat(sizing.section(0).sizeOd()).contains("7/8");
        assertThat(sizing.section(1).sizeOd()).contains("7/8");
        assertThat(sizing.section(2).sizeOd()).contains("1/2");
        assertThat(sizing.section(0).table().orElseThrow().id()).isEqualTo("copper-11inwc-1inwc-computed");
        assertThat(sizing.section(0).load()).contains(HeatRate.ofBtuh(285_000));
    }

    /** The run drawn by hand: 22 ft, then 12 ft to 199,000 Btu/h and 18 ft to 65,000 Btu/h, legs not described. */
    @Test
    void undescribedTurnsAddAFifthAndATeeItsBranchAtTheLargerBore() {
        Sizing sizing = PlannedHouse.behind("11 in w.c.", "0.5 in w.c.")
                .section("A", "R", "steel", "22 ft")
                .section("B", "A", "steel", "12 ft")
                .section("C", "A", "steel", "18 ft")
                .appliance("heater", "B", "199,000 Btu/h", "\"connection\":[]")
                .appliance("range", "C", "65,000 Btu/h", "\"connection\":[]")
                .size();
        // 22 + 18 + 20 % of 40 + 5.24 (2018 IRC Appendix A Table A.2.2, tee, 1 in.)
        assertThat(sizing.stage(0).longestRun().orElseThrow().feet()).isCloseTo(53.24, within(1e-9));
        assertThat(sizing.section(0).size()).contains("1");
        assertThat(sizing.section(1).size()).contains("3/4");
        assertThat(sizing.section(2).size()).contains("1/2");
        assertThat(sizing.allowanceItems(0).stream()
                        .mapToDouble(i -> i.length().feet())
                        .sum())
                .isCloseTo(13.24, within(1e-9));
    }

    /** The house drawn by hand: elbows, a tee's run and branch, a shutoff; 47.0 ft measured and 12.46 ft for fittings. */
    @Test
    void turnsAreCountedAlongTheLegs() {
        Sizing sizing = PlannedHouse.behind("11 in w.c.", "0.5 in w.c.")
                .section("A", "R", "steel", "up 4 ft;north 6 ft;east 10 ft")
                .section("B", "A", "steel", "north 8 ft;down 3 ft")
                .section("C", "A", "steel", "east 12 ft")
                .section("D", "C", "steel", "north 10 ft;down 5 ft")
                .section("E", "C", "steel", "east 8 ft;down 5 ft")
                .appliance(
                        "heater",
                        "B",
                        "199,000 Btu/h",
                        "\"connection\":[{\"part\":\"shutoff\"},{\"part\":\"sediment-trap\"}]")
                .appliance(
                        "range",
                        "D",
                        "65,000 Btu/h",
                        "\"connection\":[{\"part\":\"shutoff\"},{\"part\":\"flexible-connector\"}]")
                .appliance(
                        "furnace",
                        "E",
                        "60,000 Btu/h",
                        "\"connection\":[{\"part\":\"shutoff\"},{\"part\":\"sediment-trap\"}]")
                .size();
        // A 2 elbows at 1 in. 5.24; C straight through 0; D branch at 3/4 4.12, elbow 1.55, shutoff 1.55
        assertThat(sizing.stage(0).longestRun().orElseThrow().feet()).isCloseTo(47 + 12.46, within(1e-9));
        assertThat(sizing.stage(0).longestRunTo().orElseThrow().id()).isEqualTo("range");
        String[] expected = {"1", "3/4", "3/4", "1/2", "1/2"};
        for (int i = 0; i < expected.length; i++) {
            assertThat(sizing.section(i).size()).contains(expected[i]);
        }
    }

    /** 2018 IRC Table G2413.4(16), footnote: four bends and two end fittings are inside the table, then 1.3 ft each. */
    @ParameterizedTest
    @CsvSource({
        "up 4 ft;north 4 ft;up 4 ft;east 4 ft;up 4 ft, 20.0",
        "up 4 ft;north 4 ft;up 4 ft;east 4 ft;up 4 ft;north 4 ft, 25.3",
        "up 4 ft;north 4 ft;up 4 ft;east 4 ft;up 4 ft;north 4 ft;up 4 ft, 30.6"
    })
    void fourBendsOfTubingAreFree(String legs, double run) {
        assertThat(PlannedHouse.behind("11 in w.c.", "0.5 in w.c.")
                        .section("A", "R", "csst", legs)
                        .appliance("a", "A", "30 kBtu/h", "\"connection\":[]")
                        .size()
                        .stage(0)
                        .longestRun()
                        .orElseThrow()
                        .feet())
                .isCloseTo(run, within(1e-9));
    }
}
