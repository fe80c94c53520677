package longrun.rules;

import static org.assertj.core.api.Assertions.assertThat;

import longrun.piping.Network;
import longrun.piping.Piping;
import longrun.piping.Side;
import longrun.plan.Regulator;
import longrun.rules.shape.House;
import org.junit.jupiter.api.Test;

/** What hangs on what. The point of delivery is the outlet of the last regulator that is no line regulator. */
class NetworkTest {

    private final Network network = Edits.house("whole-house.json", "").network();

    @Test
    void stageBeforeTheLastRegulatorIsOnTheTankSide() {
        assertThat(network.sideOf("R1")).isEqualTo(Side.TANK_SIDE);
        assertThat(network.sideOf("Y1")).isEqualTo(Side.TANK_SIDE);
    }

    @Test
    void stageOfALineRegulatorAndTheOneBeforeItAreOnTheHouseSide() {
        assertThat(network.sideOf("R3")).isEqualTo(Side.HOUSE_SIDE);
        assertThat(network.sideOf("L1")).isEqualTo(Side.HOUSE_SIDE);
        assertThat(network.sideOf("R4")).isEqualTo(Side.HOUSE_SIDE);
        assertThat(network.sideOf("B")).isEqualTo(Side.HOUSE_SIDE);
    }

    @Test
    void sideIsUnknownWhereARegulatorFurtherOnHasNoKind() {
        Network unknown = Edits.house("whole-house.json", "/regulators/1/kind gone & /regulators/2/kind gone")
                .network();
        assertThat(unknown.sideOf("R1")).isEqualTo(Side.UNKNOWN);
        assertThat(unknown.sideOf("R2")).isEqualTo(Side.UNKNOWN);
    }

    @Test
    void reserveOfAnEndCountsAtTheRegulatorAsItDoesInThePipe() {
        for (String capped : new String[] {"true", "false"}) {
            String end = "/appliances/4 gone & /sections/10/capped = " + capped;
            House house = Edits.house("whole-house.json", end + " & /sections/10/reserve = \"40000 Btu/h\"");
            Piping piping = house.pressures().sizing().piping();
            double pipe = piping.load(piping.stages().get(0)).known().btuh();
            assertThat(house.network().servedBy("R1").known().btuh()).as(capped).isEqualTo(pipe);
            assertThat(Edits.house("whole-house.json", end)
                            .network()
                            .servedBy("R1")
                            .missing())
                    .as(capped)
                    .contains("/sections/10/reserve");
        }
    }

    @Test
    void regulatorServesEveryStageAfterIt() {
        assertThat(network.servedBy("R1").known().btuh()).isEqualTo(180000 + 65000 + 35000 + 30000 + 80000 + 60000);
        assertThat(network.servedBy("R3").known().btuh()).isEqualTo(140000);
        assertThat(network.servedBy("R1").appliances()).isEqualTo(5);
        assertThat(network.servedBy("R1").missing()).isEmpty();
    }

    @Test
    void missingInputIsNamed() {
        Network lacking =
                Edits.house("whole-house.json", "/appliances/4/input gone").network();
        assertThat(lacking.servedBy("R1").missing()).contains("/appliances/4/input");
        assertThat(lacking.servedBy("R2").missing()).isEmpty();
    }

    @Test
    void applianceThatHangsNowhereLeavesEveryLoadOpen() {
        Network lacking = Edits.house(
                        "whole-house.json",
                        "/appliances/4/fedBy gone & /sections/10/capped = true" + " & /sections/10/reserve = \"none\"")
                .network();
        assertThat(lacking.servedBy("R2").missing()).contains("/appliances/4/fedBy");
    }

    @Test
    void regulatorAheadIsTheOneWhosePipeEndsThere() {
        assertThat(network.findRegulatorAhead("R4").map(Regulator::id)).contains("R3");
        assertThat(network.findRegulatorAhead("L3").map(Regulator::id)).contains("R4");
        assertThat(network.findRegulatorAhead("R1")).isEmpty();
    }
}
