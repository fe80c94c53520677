package longrun.pressure;

import static longrun.pressure.ChainByHandTest.HOUSE;
import static longrun.pressure.ChainByHandTest.pressures;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import longrun.plan.PlannedHouse;
import longrun.quantity.Pressure;
import org.junit.jupiter.api.Test;

/** The settings that serve every label behind a regulator, and what a hose adds to them. */
class SettingWindowTest {

    @Test
    void theWindowOfARegulatorCountsTheRegulatorBehindIt() {
        SettingWindow w = pressures(HOUSE).window(1);
        // L asks for 1 psi and sees 49.844 in. of 2 psi, 55.4 in. (ChainByHandTest): 27.7 + 5.556
        assertThat(w.lowest().orElseThrow().inWc()).isCloseTo(33.256, within(0.005));
        assertThat(w.lowestFor()).contains("L");
        assertThat(w.highest()).isEmpty();
        assertThat(w.admits(Pressure.ofPsi(2))).isFalse();
    }

    @Test
    void aWindowAdmitsItsEndsAndNothingBeyond() {
        Pressure low = Pressure.ofInWc(10.5);
        Pressure high = Pressure.ofInWc(11.5);
        SettingWindow w = new SettingWindow(
                Optional.of(low), Optional.of("heater"), Optional.of(high), Optional.of("heater"), true);
        assertThat(w.admits(low)).isTrue();
        assertThat(w.admits(high)).isTrue();
        assertThat(w.admits(Pressure.ofInWc(10.49))).isFalse();
        assertThat(w.admits(Pressure.ofInWc(11.51))).isFalse();
        SettingWindow open =
                new SettingWindow(Optional.empty(), Optional.empty(), Optional.of(high), Optional.of("heater"), false);
        assertThat(open.admits(low)).isFalse();
        assertThat(open.isEmpty()).isFalse();
        SettingWindow point = new SettingWindow(
                Optional.of(low), Optional.of("heater"), Optional.of(low), Optional.of("range"), true);
        assertThat(point.isEmpty()).isFalse();
        assertThat(point.admits(low)).isTrue();
    }

    @Test
    void ofTwoThatAskTheSameTheFirstIsNamed() {
        String alike = "'minInlet':'9.5 in w.c.','maxInlet':'13 in w.c.','connection':[{'part':'rigid-pipe'}]";
        SettingWindow w = pressures(PlannedHouse.behind("11 in w.c.", "0.5 in w.c.")
                        .section("A", "R", "steel", "10 ft")
                        .section("B", "A", "steel", "10 ft")
                        .section("C", "A", "steel", "10 ft")
                        .appliance("left", "B", "100000 Btu/h", alike)
                        .appliance("right", "C", "100000 Btu/h", alike)
                        .text())
                .window(0);
        assertThat(w.lowestFor()).contains("left");
        assertThat(w.highestFor()).contains("left");
    }

    @Test
    void withoutAConnectorThatIsKnownTheWholeRatedDropIsTaken() {
        String hose = "{\"part\":\"flexible-connector\",\"capacity\":\"250000 Btu/h\",\"capacityGas\":\"natural\"}";
        for (String part : List.of(
                "{\"part\":\"sediment-trap\"}",
                "{\"part\":\"rigid-pipe\",\"seen\":false}",
                "{\"part\":\"flexible-connector\",\"capacity\":\"0 Btu/h\"}")) {
            assertThat(pressures(HOUSE.replace(hose, part)).outlet(0).connector())
                    .as(part)
                    .isEqualTo(new ConnectorDrop(Pressure.ofInWc(0.5), true));
        }
    }
}
