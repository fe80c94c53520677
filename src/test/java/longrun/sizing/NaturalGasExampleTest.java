package longrun.sizing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Collectors;
import longrun.Samples;
import longrun.plan.PlannedHouse;
import longrun.quantity.Length;
import org.junit.jupiter.api.Test;

/**
 * 2018 IFGC Appendix A.6.1: natural gas of 1,000 Btu/ft3 at 0.5 in. w.c. drop, Schedule 40 steel, loads of 35, 75, 35 and
 * 100 cfh, all from the one 60 ft row: outlet A 1/2, B 3/4; the sections of 110 and 135 cfh 3/4; that of 245 cfh 1 in. The
 * table, 2018 IFGC Table 402.4(2), is loaded as a person's own, for the program's tables are for propane alone.
 */
class NaturalGasExampleTest {

    @Test
    void theCodesOwnExampleComesToTheSameSizes() {
        PlannedHouse house = PlannedHouse.behind("7 in w.c.", "0.5 in w.c.")
                .with("\"fittingAllowance\":\"none\"")
                .with(
                        "\"tubingTables\":[{\"name\":\"natural\",\"material\":\"steel\",\"inlet\":\"7 in w.c.\",\"drop\":\"0.5 in w.c.\",\"csv\":\""
                                + csv() + "\"}]");
        String own = "\"table\":\"natural\"";
        Sizing sizing = house.section("S245", "R", "steel", "20 ft", own)
                .section("S110", "S245", "steel", "10 ft", own)
                .section("A", "S110", "steel", "30 ft", own)
                .section("B", "S110", "steel", "10 ft", own)
                .section("S135", "S245", "steel", "10 ft", own)
                .section("C", "S135", "steel", "10 ft", own)
                .section("D", "S135", "steel", "10 ft", own)
                .appliance("a", "A", "35 kBtu/h")
                .appliance("b", "B", "75 kBtu/h")
                .appliance("c", "C", "35 kBtu/h")
                .appliance("d", "D", "100 kBtu/h")
                .size();
        String[] expected = {"1", "3/4", "1/2", "3/4", "3/4", "1/2", "3/4"};
        for (int i = 0; i < expected.length; i++) {
            assertThat(sizing.section(i).size()).as("section " + i).contains(expected[i]);
            assertThat(sizing.section(i).rowRun()).contains(Length.ofFeet(60));
            assertThat(sizing.section(i).table().orElseThrow().id()).isEqualTo("own:natural");
        }
    }

    /** The rows to 500 ft, which the print has. */
    private static String csv() {
        return Samples.text("capacity/steel-sch40-lt2psi-0.5inwc-natural.csv")
                .lines()
                .filter(l -> !l.startsWith("#"))
                .limit(20)
                .collect(Collectors.joining("\\n"));
    }
}
