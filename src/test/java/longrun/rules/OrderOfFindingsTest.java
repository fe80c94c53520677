package longrun.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import longrun.finding.Finding;
import org.junit.jupiter.api.Test;

/** Findings stand in the order of the plan, and what one entry answers is asked once. */
class OrderOfFindingsTest {

    private static List<Finding> findings(String edits) {
        return Rules.check(Edits.house("whole-house.json", edits)).findings();
    }

    @Test
    void findingsFollowThePlanFromTheCodeToTheUse() {
        String edits = "/use/hotWater/storage/setTemp = \"110 degF\" & /tank/toBuilding = \"9 ft\""
                + " & /appliances/1/gas = \"natural\" & /appliances/0/gas = \"natural\" & /rooms/0/volume = \"900 ft3\""
                + " & /sections/7/supportEvery = \"20 ft\" & /sections/2/tube = \"M\""
                + " & /regulators/3/shutoffBefore = false & /regulators/1/ventToOpening = \"2 ft\""
                + " & /site/mainShutoff/outdoors = false & /code gone";
        assertThat(findings(edits))
                .extracting(f -> f.rule() + " " + f.at())
                .containsExactly(
                        "entry-missing plan",
                        "shutoff-main site",
                        "regulator-vent-opening R2",
                        "line-regulator-shutoff R4",
                        "pipe-copper-type A",
                        "pipe-support L1",
                        "air-for-combustion utility",
                        "gas-type heater",
                        "gas-type range",
                        "tank-to-building tank",
                        "storage-lukewarm hot-water");
    }

    @Test
    void whatOneEntryAnswersIsAskedWhereThatEntryIs() {
        assertThat(findings("/appliances/0/input gone"))
                .filteredOn(f -> f.field().equals("/appliances/0/input"))
                .singleElement()
                .satisfies(f -> assertThat(f.at()).isEqualTo("heater"));
        assertThat(findings("/regulators/1/outlet gone")) // a burner's line pressure hangs on it too
                .filteredOn(f -> f.field().equals("/regulators/1/outlet"))
                .singleElement()
                .satisfies(f -> assertThat(f.at()).isEqualTo("R2"));
    }
}
