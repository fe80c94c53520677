package longrun.pressuretest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import longrun.Samples;
import longrun.capacity.CapacityTables;
import longrun.piping.Piping;
import longrun.piping.Side;
import longrun.plan.Plan;
import longrun.pressure.Pressures;
import longrun.quantity.Pressure;
import longrun.quantity.Temperature;
import longrun.sizing.Sizing;
import org.junit.jupiter.api.Test;

/**
 * The test of the pipe: IFGC 406.4 (IRC G2417.4), at least 1.5 times the greatest working pressure and at least 3 psig, 10
 * minutes in a dwelling, a gauge of no more than five times the test; the volume of steel pipe from its bore (0.622 in. for
 * 1/2, schedule 40: 0.0021 ft3 a foot, pipe handbooks); the gas law for the weather.
 */
class TestPlanTest {

    private static List<SideTest> of(String json) {
        Plan plan = Samples.plan(json);
        return TestPlan.of(Pressures.of(Sizing.of(Piping.of(plan), CapacityTables.standard())));
    }

    private static String house(String regulator, String section, String appliance, String more) {
        return """
                {"format": "longrun-plan/1",
                 "regulators": [{"id": "R2", "kind": "second-stage", "fedBy": "tank", "allowedDrop": "0.5 in w.c."%s}],
                 "sections": [{"id": "A", "from": "R2", "legs": ["east 100 ft"], "material": "steel",
                               "installedSize": "1/2"%s}],
                 "appliances": [{"id": "range", "kind": "range", "fedBy": "A", "input": "30000 Btu/h"%s}]%s}
                """.formatted(regulator, section, appliance, more);
    }

    private static final Optional<Pressure> THREE = Optional.of(Pressure.ofPsi(3));
    private static final String ELEVEN = ", \"outlet\": \"11 in w.c.\"";

    @Test
    void aHouseLineIsTestedAtThreePoundsForTenMinutes() {
        SideTest test = of(house(ELEVEN, "", "", "")).get(0);
        assertThat(test.side()).isEqualTo(Side.HOUSE_SIDE);
        assertThat(test.pressure().orElseThrow().psi()).isCloseTo(3, within(1e-9));
        assertThat(test.minutes()).isEqualTo(10);
        assertThat(test.gaugeTop().orElseThrow().psi()).isCloseTo(15, within(1e-9));
    }

    @Test
    void aTwoPoundLineIsTestedAtOneAndAHalfTimesItsLockUp() {
        SideTest test = of(house(", \"outlet\": \"2 psi\"", "", "", "")).get(0);
        assertThat(test.working().orElseThrow().psi()).isCloseTo(2 * Pressures.LOCK_UP_SHARE, within(1e-9));
        assertThat(test.pressure().orElseThrow().psi()).isCloseTo(3.6, within(1e-9));
    }

    @Test
    void whereThePlumbingCodeIsAdoptedItIsTenPoundsForFifteenMinutes() {
        SideTest test = of(house(ELEVEN, "", "", ", \"code\": {\"profile\": \"plumbing-code\"}"))
                .get(0);
        assertThat(test.pressure().orElseThrow().psi()).isEqualTo(10);
        assertThat(test.minutes()).isEqualTo(15);
    }

    @Test
    void aTankLineOfPolyethyleneIsTestedAtFiftyPounds() {
        SideTest tank = of(Samples.text("sample-plan.json")).get(0);
        assertThat(tank.side()).isEqualTo(Side.TANK_SIDE);
        assertThat(tank.pressure().orElseThrow().psi()).isEqualTo(50);
        assertThat(tank.pressureFrom()).contains("held from memory");
    }

    @Test
    void aSettingThatIsNotEnteredLeavesTheTestUnknownAndNamesIt() {
        SideTest test = of(house("", "", "", "")).get(0);
        assertThat(test.pressure()).isEmpty();
        assertThat(test.gaugeTop()).isEmpty();
        assertThat(test.pressureFrom()).contains("R2").contains("never under 3 psi");
    }

    @Test
    void aHundredFeetOfHalfInchSteelHoldTwoTenthsOfACubicFoot() {
        SideTest test = of(house(ELEVEN, "", "", "")).get(0);
        assertThat(test.volumeCuFt().orElseThrow()).isCloseTo(0.211, within(0.0005));
    }

    @Test
    void corrugatedTubingHasNoBoreSoItsVolumeIsNotKnown() {
        String csst = house(ELEVEN, "", "", "").replace("\"steel\"", "\"csst\"").replace("\"1/2\"", "\"19\"");
        SideTest test = of(csst).get(0);
        assertThat(test.volumeCuFt()).isEmpty();
        assertThat(test.withoutVolume()).containsExactly("A");
    }

    @Test
    void anApplianceComesOffUnlessItsLabelTakesTheTest() {
        assertThat(of(house(ELEVEN, "", "", "")).get(0).isolate()).anyMatch(s -> s.contains("not entered"));
        assertThat(of(house(ELEVEN, "", ", \"maxInlet\": \"14 in w.c.\"", ""))
                        .get(0)
                        .isolate())
                .anyMatch(s -> s.contains("disconnected") && s.contains("more than it takes"));
        assertThat(of(house(ELEVEN, "", ", \"maxInlet\": \"3 psi\"", "")).get(0).isolate())
                .anyMatch(s -> s.contains("close its valve"));
    }

    @Test
    void aShutInGasFallsWithItsAbsoluteTemperature() {
        // (3 + 14.7) x 500 / 520 - 14.7
        Pressure cold = TestReading.expected(Pressure.ofPsi(3), Temperature.ofDegF(60), Temperature.ofDegF(40));
        assertThat(cold.psi()).isCloseTo(2.3192, within(0.0001));
        // Charles's other end: doubled absolute temperature doubles absolute pressure
        Pressure hot = TestReading.expected(Pressure.ofPsi(0), Temperature.ofDegF(-230), Temperature.ofDegF(0));
        assertThat(hot.psi()).isCloseTo(14.7, within(1e-9));
    }

    private static TestReading read(String first, String firstTemp, String last, String lastTemp) {
        String readings = """
                , "readings": [
                  {"at": "R2", "what": "test", "pressure": "%s", "minutes": 0%s},
                  {"at": "R2", "what": "test", "pressure": "%s", "minutes": 10%s}]
                """.formatted(first, temp(firstTemp), last, temp(lastTemp));
        return of(house(ELEVEN, "", "", readings)).get(0).readings().get(0);
    }

    private static String temp(String t) {
        return t.isEmpty() ? "" : ", \"temp\": \"" + t + "\"";
    }

    @Test
    void aFallThatTheColdExplainsIsNoLeak() {
        TestReading r = read("3 psi", "60 degF", "2.3 psi", "40 degF");
        assertThat(r.isLeaking()).isFalse();
        assertThat(r.words(10, THREE)).contains("No loss that this gauge could show");
    }

    @Test
    void aWarmAfternoonHidesNoLeak() {
        TestReading r = read("3 psi", "50 degF", "3 psi", "70 degF");
        assertThat(r.lostPsi().orElseThrow()).isCloseTo((17.7 * 530 / 510) - 14.7 - 3, within(1e-9));
        assertThat(r.isLeaking()).isTrue();
        assertThat(r.words(10, THREE)).contains("never a flame");
    }

    @Test
    void withoutTemperaturesNothingIsSaidOfTheWeatherAndAFallStaysALeak() {
        TestReading r = read("3 psi", "", "2.5 psi", "60 degF");
        assertThat(r.expected()).isEmpty();
        assertThat(r.isLeaking()).isTrue();
        assertThat(r.words(10, THREE)).contains("not entered").contains("look for the leak");
    }

    @Test
    void aTestThatBeganTooLowIsNone() {
        TestReading low = read("1 psi", "60 degF", "1 psi", "60 degF");
        assertThat(low.words(10, THREE)).contains("began at 1.0 psi").contains("this is no test");
        assertThat(low.words(10, Optional.empty())).contains("not known yet");
        assertThat(read("3 psi", "60 degF", "3 psi", "60 degF").words(10, THREE))
                .doesNotContain("no test");
    }

    @Test
    void aTestMadeAgainIsReadByItselfAndMoreThanTheWeatherExplainsIsNoPass() {
        String again = """
                , "readings": [
                  {"at": "R2", "what": "test", "pressure": "3 psi", "temp": "60 degF", "date": "2026-09-01"},
                  {"at": "R2", "what": "test", "pressure": "1 psi", "temp": "60 degF", "date": "2026-09-01"},
                  {"at": "R2", "what": "test", "pressure": "5 psi", "temp": "60 degF", "date": "2026-09-02"},
                  {"at": "R2", "what": "test", "pressure": "4 psi", "temp": "60 degF", "date": "2026-09-02"}]
                """;
        for (String readings : List.of(
                again,
                again.replaceAll(", \"date\": \"[^\"]*\"", "").replace("\"5 psi\"", "\"5 psi\", \"minutes\": 0"))) {
            TestReading newest =
                    of(house(ELEVEN, "", "", readings)).get(0).readings().get(0);
            assertThat(newest.first().psi()).isEqualTo(5);
            assertThat(newest.isLeaking()).isTrue();
        }
        assertThat(read("3 psi", "60 degF", "4 psi", "60 degF").words(10, THREE))
                .contains("look at the readings")
                .doesNotContain("No loss");
    }

    @Test
    void aTestThatStoodTooShortIsSaidToBeSo() {
        TestReading r = read("3 psi", "60 degF", "3 psi", "60 degF");
        assertThat(r.words(10, THREE)).doesNotContain("minutes");
        assertThat(r.words(15, THREE)).contains("Only 10 minutes").contains("15 are wanted");
    }

    @Test
    void aLineAboveTwoPoundsIsPurgedOutdoorsAlone() {
        Purge two = Purge.of(of(house(", \"outlet\": \"2 psi\"", "", "", "")).get(0));
        Purge eleven = Purge.of(of(house(ELEVEN, "", "", "")).get(0));
        Purge unknown = Purge.of(of(house("", "", "", "")).get(0));
        assertThat(two.outdoorsOnly()).isTrue(); // it stands at 2.4 psi with nothing firing: the safer reading
        assertThat(eleven.outdoorsOnly()).isFalse();
        assertThat(unknown.outdoorsOnly()).isTrue();
        assertThat(eleven.steps()).anyMatch(s -> s.contains("10 ft") && s.contains("25 ft"));
    }
}
