package longrun.pressure;

import static org.assertj.core.api.Assertions.assertThat;

import longrun.plan.PlannedHouse;
import org.junit.jupiter.api.Test;

/** Readings beside the prediction, give or take what a gauge shows (common practice). */
class GaugeCheckTest {

    private static GaugeCheck check(String at, String what, String pressure) {
        String json = ChainByHandTest.HOUSE.replace(
                "\"sections\":",
                "\"readings\":[{\"at\":\"" + at + "\",\"what\":\"" + what + "\",\"pressure\":\"" + pressure
                        + "\"}],\"sections\":");
        return GaugeCheck.of(ChainByHandTest.pressures(json)).get(0);
    }

    @Test
    void lockUpLiesBetweenSettingAndItsShare() {
        // 11 in. set, 115 % is 12.65
        assertThat(check("L", "lock-up", "11 in w.c.").words()).isEqualTo("agrees");
        assertThat(check("L", "lock-up", "12.8 in w.c.").words()).isEqualTo("agrees");
        assertThat(check("L", "lock-up", "12.9 in w.c.").words())
                .isEqualTo("differs: look at the setting of L and whether its seat closes");
        assertThat(check("L", "static", "10.7 in w.c.").words()).isEqualTo("differs: look at the setting of L");
    }

    @Test
    void flowingAtTheRegulatorLiesBetweenSettingAndDroop() {
        // set 11, falls 0.5
        assertThat(check("L", "flowing-all", "10.4 in w.c.").words()).isEqualTo("agrees");
        assertThat(check("L", "flowing-all", "10.2 in w.c.").words())
                .isEqualTo("differs: look at the setting of L, its inlet pressure and its capacity");
        assertThat(check("L", "flowing-all", "11.3 in w.c.").words())
                .isEqualTo("differs: look at the setting of L, and whether everything was firing");
    }

    @Test
    void flowingAtTheApplianceLiesBetweenPipeAndInlet() {
        // 10.74 at the pipe's end, 9.91 at the inlet
        assertThat(check("heater", "flowing-all", "9.8 in w.c.").words()).isEqualTo("agrees");
        assertThat(check("heater", "flowing-alone", "10.2 in w.c.").words()).isEqualTo("agrees");
        assertThat(check("heater", "flowing-all", "8.6 in w.c.").words())
                .isEqualTo(
                        "differs: look at the shutoff, the connector, the pipe sizes on the way and the setting of L");
    }

    @Test
    void aReadingDoesNotJudgeItself() {
        // the default droop of 2 in. x 200/400 is 1 in.; a reading of 9 differs though it takes the default's place
        String json = ChainByHandTest.HOUSE
                .replace("\"droopAtCapacity\":\"1 in w.c.\",", "")
                .replace(
                        "\"sections\":",
                        "\"readings\":[{\"at\":\"L\",\"what\":\"flowing-all\",\"pressure\":\"9 in w.c.\"}],\"sections\":");
        assertThat(GaugeCheck.of(ChainByHandTest.pressures(json)).get(0).verdict())
                .isEqualTo(GaugeCheck.Verdict.DIFFERS);
    }

    @Test
    void whatIsNotPredictedIsNotJudged() {
        String json = ChainByHandTest.HOUSE
                .replace("\"input\":\"200000 Btu/h\",", "")
                .replace(
                        "\"sections\":",
                        "\"readings\":[{\"at\":\"heater\",\"what\":\"flowing-all\",\"pressure\":\"9 in w.c.\"},"
                                + "{\"at\":\"L\",\"what\":\"test\",\"pressure\":\"9 in w.c.\"}],\"sections\":");
        assertThat(GaugeCheck.of(ChainByHandTest.pressures(json)))
                .singleElement()
                .satisfies(c -> assertThat(c.verdict()).isEqualTo(GaugeCheck.Verdict.NOT_PREDICTED));
    }

    private static GaugeCheck.Verdict verdict(String house, String at, String what, String pressure) {
        String json = house.replace(
                "\"sections\":",
                "\"readings\":[{\"at\":\"" + at + "\",\"what\":\"" + what + "\",\"pressure\":\"" + pressure
                        + "\"}],\"sections\":");
        return GaugeCheck.of(ChainByHandTest.pressures(json)).get(0).verdict();
    }

    @Test
    void aFifthOfAnInchIsTheGaugesAndNoMore() {
        assertThat(verdict(ChainByHandTest.HOUSE, "L", "static", "10.8 in w.c."))
                .isEqualTo(GaugeCheck.Verdict.AGREES);
        assertThat(verdict(ChainByHandTest.HOUSE, "L", "static", "10.79 in w.c."))
                .isEqualTo(GaugeCheck.Verdict.DIFFERS);
        assertThat(verdict(ChainByHandTest.HOUSE, "L", "flowing-all", "11.2 in w.c."))
                .isEqualTo(GaugeCheck.Verdict.AGREES);
        assertThat(verdict(ChainByHandTest.HOUSE, "L", "flowing-all", "11.21 in w.c."))
                .isEqualTo(GaugeCheck.Verdict.DIFFERS);
    }

    @Test
    void fromOneAndAHalfPoundsAGaugeMayBeATwentiethOff() {
        // 2 psi less 5 % is 1.9 psi; 1.5 psi less 5 % is 1.425 psi
        assertThat(verdict(ChainByHandTest.HOUSE, "R2", "static", "1.91 psi")).isEqualTo(GaugeCheck.Verdict.AGREES);
        assertThat(verdict(ChainByHandTest.HOUSE, "R2", "static", "1.89 psi")).isEqualTo(GaugeCheck.Verdict.DIFFERS);
        String lower = ChainByHandTest.HOUSE.replace("\"outlet\":\"2 psi\"", "\"outlet\":\"1.5 psi\"");
        assertThat(verdict(lower, "R2", "static", "1.43 psi")).isEqualTo(GaugeCheck.Verdict.AGREES);
        assertThat(verdict(lower, "R2", "static", "1.42 psi")).isEqualTo(GaugeCheck.Verdict.DIFFERS);
    }

    @Test
    void atAnApplianceTheGaugeShowsTheLockUpOfItsRegulator() {
        assertThat(check("heater", "lock-up", "12.8 in w.c.").verdict()).isEqualTo(GaugeCheck.Verdict.AGREES);
        assertThat(check("heater", "static", "12.9 in w.c.").words())
                .isEqualTo("differs: look at the setting of L and whether its seat closes");
        assertThat(check("heater", "static", "10.7 in w.c.").words()).isEqualTo("differs: look at the setting of L");
    }

    /**
     * B's 3/4 in. loses 0.0064025 in. w.c. a foot at 200,000 (ChainByHandTest) and 1.4^(1/0.541) = 1.8627 times that at
     * 280,000. All firing: 34 ft and 5 ft lose 0.4055 + 0.0320, so 10.5625 in. at the pipe's end and, less 0.7 in. of
     * the regulator and 0.3309 in. of the hose, 9.5316 in. at the inlet. The heater alone: 10.7503 and 9.7194 in.
     */
    @Test
    void withOneApplianceFiringLessIsLostThanWithAll() {
        String two = ChainByHandTest.HOUSE
                .replace(
                        "\"legs\":[\"east 30 ft\",\"down 10 ft\"]}",
                        "\"legs\":[\"34 ft\"]},{\"id\":\"H\",\"from\":\"B\",\"material\":\"steel\",\"installedSize\":\"3/4\",\"legs\":[\"5 ft\"]},"
                                + "{\"id\":\"D\",\"from\":\"B\",\"material\":\"steel\",\"legs\":[\"5 ft\"]}")
                .replace("\"fedBy\":\"B\"", "\"fedBy\":\"H\"")
                .replace(
                        "\"appliances\":[",
                        "\"appliances\":[{\"id\":\"dryer\",\"input\":\"80000 Btu/h\",\"fedBy\":\"D\"},");
        assertThat(verdict(two, "heater", "flowing-all", "9.4 in w.c.")).isEqualTo(GaugeCheck.Verdict.AGREES);
        assertThat(verdict(two, "heater", "flowing-alone", "9.4 in w.c.")).isEqualTo(GaugeCheck.Verdict.DIFFERS);
        assertThat(verdict(two, "heater", "flowing-alone", "10.85 in w.c.")).isEqualTo(GaugeCheck.Verdict.AGREES);
        assertThat(verdict(two, "heater", "flowing-all", "10.85 in w.c.")).isEqualTo(GaugeCheck.Verdict.DIFFERS);
        assertThat(check("heater", "flowing-all", "11 in w.c.").words())
                .isEqualTo("differs: look at the setting of L, and whether everything was firing");
        assertThat(check("heater", "flowing-alone", "11 in w.c.").words())
                .isEqualTo("differs: look at the setting of L, and whether the appliance was at full fire");
    }

    @Test
    void withoutASettingOrAPipeNothingIsPredicted() {
        String unset = ChainByHandTest.HOUSE.replace("\"outlet\":\"11 in w.c.\",", "");
        assertThat(verdict(unset, "L", "static", "11 in w.c.")).isEqualTo(GaugeCheck.Verdict.NOT_PREDICTED);
        String loose = ChainByHandTest.HOUSE.replace("\"fedBy\":\"B\",", "");
        assertThat(verdict(loose, "heater", "static", "11 in w.c.")).isEqualTo(GaugeCheck.Verdict.NOT_PREDICTED);
        // the pipe itself has no setting to hold a gauge against
        assertThat(verdict(ChainByHandTest.HOUSE, "B", "static", "11 in w.c."))
                .isEqualTo(GaugeCheck.Verdict.NOT_PREDICTED);
    }

    @Test
    void aReadingBehindTheFirstRegulatorIsPredictedLikeAnyOther() {
        String house = PlannedHouse.behind("11 in w.c.", "0.5 in w.c.")
                .section("A", "R", "steel", "10 ft")
                .appliance("heater", "A", "50000 Btu/h")
                .with("'readings':[]")
                .add("readings", "'at':'heater','what':'static','pressure':'11 in w.c.'")
                .text();
        assertThat(GaugeCheck.of(ChainByHandTest.pressures(house)).get(0).verdict())
                .isEqualTo(GaugeCheck.Verdict.AGREES);
    }
}
