package longrun.pressure;

import static org.assertj.core.api.Assertions.assertThat;

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
}
