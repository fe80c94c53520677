package longrun.rules.regulator;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import longrun.finding.Finding;
import longrun.rules.Edits;
import longrun.rules.shape.House;
import longrun.rules.shape.Precedence;
import org.junit.jupiter.api.Test;

/** What is told of a regulator's published capacity; the sample house serves 140,000 Btu/h through its line regulator. */
class RegulatorCapacityTest {

    private static List<Finding> told(int regulator, String edit) {
        House house = Edits.house("whole-house.json", edit);
        return new RegulatorCapacity()
                .judge(house).stream()
                        .filter(v -> v.state().pointer().equals("/regulators/" + regulator))
                        .flatMap(v -> v.finding().stream())
                        .toList();
    }

    private static String found(int regulator, String edit) {
        return told(regulator, edit).get(0).found();
    }

    private static String question(int regulator, String edit) {
        return told(regulator, edit).get(0).ask().orElseThrow();
    }

    @Test
    void capacityTooSmallIsToldWithItsInletTheLoadAndTheInletItWillSee() {
        String small = "/regulators/3/capacity = \"139000 Btu/h\"";
        assertThat(found(3, small))
                .isEqualTo(
                        "The line regulator R4 has a capacity of 139000 Btu/h at an inlet of 1 psi and serves 140,000"
                                + " Btu/h at the 1.8 psi (49.95 in. w.c.) it will see");
        assertThat(found(3, small + " & /regulators/2/outlet gone & /regulators/3/capacityAtInlet gone"))
                .isEqualTo("The line regulator R4 has a capacity of 139000 Btu/h and serves 140,000 Btu/h");
    }

    @Test
    void lessThanAFifthToSpareIsToldWithTheCapacityThatLeavesIt() {
        Finding little = told(3, "/regulators/3/capacity = \"150000 Btu/h\"").get(0);
        assertThat(little.found()).endsWith(": 10,000 Btu/h to spare");
        assertThat(little.remedy()).isEqualTo("Fit a regulator of at least 175,000 Btu/h.");
    }

    @Test
    void capacityNotEnteredIsAskedAtTheInletItWillSeeAndTheLoad() {
        assertThat(question(3, "/regulators/3/capacity gone"))
                .isEqualTo(
                        "What does the line regulator R4 pass at the 1.8 psi (49.95 in. w.c.) it will see, with 140,000"
                                + " Btu/h to serve?");
        assertThat(question(3, "/regulators/3/capacity gone & /appliances/3/input gone"))
                .isEqualTo("What does the line regulator R4 pass at its inlet pressure?");
        assertThat(question(3, "/regulators/3/capacity gone & /regulators/2/outlet gone"))
                .isEqualTo("What does the line regulator R4 pass at its inlet pressure, with 140,000 Btu/h to serve?");
    }

    @Test
    void inletOfTheRatingIsAskedWithTheInletItWillSee() {
        String missing = "The inlet pressure at which the line regulator R4 passes 200000 Btu/h is not entered";
        assertThat(found(3, "/regulators/3/capacityAtInlet gone"))
                .isEqualTo(missing + "; with everything firing it will see 1.8 psi (49.95 in. w.c.)");
        assertThat(found(3, "/regulators/3/capacityAtInlet gone & /regulators/2/outlet gone"))
                .isEqualTo(missing);
        assertThat(found(3, "/regulators/3/capacityAtInlet gone & /sections/7/assumed = true"))
                .isEqualTo(missing);
    }

    @Test
    void ratingAtAHigherInletIsAskedAnewAtTheInletItWillSee() {
        assertThat(found(3, "/regulators/3/capacityAtInlet = \"2 psi\""))
                .isEqualTo(
                        "The capacity of the line regulator R4 is given at an inlet of 2 psi, and with everything firing"
                                + " it will see 1.8 psi (49.95 in. w.c.)");
        assertThat(question(3, "/regulators/3/capacityAtInlet = \"2 psi\""))
                .isEqualTo("What does the line regulator R4 pass at an inlet of 1.8 psi (49.95 in. w.c.)?");
    }

    @Test
    void whatHangsOnNothingIsAskedOfNoRatingPlate() {
        String open = "/appliances/2/fedBy gone & /sections/5/capped = true & /sections/5/reserve = \"none\"";
        assertThat(found(1, open)).endsWith(" so far: what feeds another part of the house is not entered");
        assertThat(question(1, open))
                .isEqualTo("Does the second-stage regulator R2 serve more than is entered behind it?");
        assertThat(found(1, "/appliances/2/input gone")).endsWith(" so far: something it serves has no input entered");
    }

    @Test
    void capacityIsJudgedWithTheSizes() {
        assertThat(new RegulatorCapacity().precedence()).isEqualTo(Precedence.SIZE);
    }
}
