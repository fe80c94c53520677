package longrun.pressure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import longrun.Samples;
import longrun.capacity.CapacityTables;
import longrun.piping.Piping;
import longrun.pressure.RegulatorPressure.Reached;
import longrun.quantity.Pressure;
import longrun.sizing.Sizing;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/**
 * A chain of three regulators with one heater of 200,000 Btu/h, reckoned by hand with the code's flow formula (2018 IFGC
 * 402.4): Q = 200,000 / 2,488 = 80.386 ft3/h.
 */
class ChainByHandTest {

    static final String HOUSE = """
            {"format":"longrun-plan/1","fittingAllowance":"none",
             "regulators":[
              {"id":"R1","kind":"first-stage","fedBy":"tank","outlet":"10 psi","allowedDrop":"1 psi","capacity":"1000000 Btu/h"},
              {"id":"R2","kind":"two-psi","fedBy":"Y","outlet":"2 psi","allowedDrop":"1 psi","capacity":"500000 Btu/h","minInlet":"5 psi"},
              {"id":"L","kind":"line","fedBy":"T","outlet":"11 in w.c.","allowedDrop":"0.5 in w.c.","capacity":"400000 Btu/h",
               "droopAtCapacity":"1 in w.c.","lockUp":"115 %","minInlet":"1 psi"}],
             "sections":[
              {"id":"Y","from":"R1","material":"steel","legs":["north 100 ft"]},
              {"id":"T","from":"R2","material":"steel","legs":["up 8 ft","east 42 ft"]},
              {"id":"B","from":"L","material":"steel","legs":["east 30 ft","down 10 ft"]}],
             "appliances":[
              {"id":"heater","kind":"boiler","input":"200000 Btu/h","gas":"propane","fedBy":"B","minInlet":"9.5 in w.c.","maxInlet":"13 in w.c.",
               "connection":[{"part":"shutoff"},{"part":"flexible-connector","capacity":"250000 Btu/h","capacityGas":"natural"}]}]}
            """;

    private static final Offset<Double> BY_HAND = within(0.0005);

    static Pressures pressures(String json) {
        return Pressures.of(Sizing.of(Piping.of(Samples.plan(json)), CapacityTables.standard()));
    }

    private static double psi(double inWc) {
        return Pressure.ofInWc(inWc).psi();
    }

    @Test
    void tenPsiToTwoPsiToElevenInches() {
        Pressures p = pressures(HOUSE);
        // Y, steel 1/2, bore 0.622: 0.622^2.623 = 0.28781. Squares lost in 100 ft:
        //   1.2462 x 100 / 0.9910 x (80.386 / (2,237 x 0.28781))^(1/0.541) = 2.6871 psi2
        // from 10 psi: sqrt(24.73^2 - 2.6871) - 14.73 = 9.9456 psi
        assertThat(psi(p.section(0).end().orElseThrow().inWc())).isCloseTo(9.9456, BY_HAND);
        // R1 droops a fifth of 10 psi at 1,000,000, so 0.4 psi at 200,000: from 9.6 psi
        //   sqrt(24.33^2 - 2.6871) - 14.73 = 9.5447 psi, which R2 sees
        assertThat(psi(p.regulator(1).inlet().orElseThrow().inWc())).isCloseTo(9.5447, BY_HAND);
        assertThat(p.regulator(1).reached()).isEqualTo(Reached.YES);
        // T, steel 1/2, 50 ft: half the squares, 1.3435. From 2 psi: sqrt(16.73^2 - 1.3435) - 14.73 = 1.9598 psi
        assertThat(psi(p.section(1).end().orElseThrow().inWc())).isCloseTo(1.9598, BY_HAND);
        assertThat(p.section(1).drop().orElseThrow().inWc()).isCloseTo((2 - 1.9598) * 27.7, within(0.002));
        // R2 droops a fifth of 2 psi x 200/500 = 0.16 psi: sqrt(16.57^2 - 1.3435) - 14.73 = 1.7994 psi, L sees 49.84
        // in.
        assertThat(p.regulator(2).inlet().orElseThrow().inWc()).isCloseTo(49.844, within(0.005));
        // B, steel 3/4, bore 0.824: 0.824^2.623 = 0.60183; 40 ft:
        //   1.2462 x 40 x (80.386 / (2,313 x 0.60183))^(1/0.541) = 0.2561 in. w.c.
        assertThat(p.sizing().section(2).size()).contains("3/4");
        assertThat(p.section(2).drop().orElseThrow().inWc()).isCloseTo(0.2561, BY_HAND);
        assertThat(p.outlet(0).pressure().orElseThrow().inWc()).isCloseTo(10.7439, BY_HAND);
        assertThat(p.outlet(0).pressureAlone().orElseThrow().inWc()).isCloseTo(10.7439, BY_HAND);
    }

    @Test
    void droopAndConnectorComeOffAndLockUpGoesOn() {
        OutletPressure o = pressures(HOUSE).outlet(0);
        // L falls 1 in. at 400,000: 0.5 in. at 200,000: 10.7439 - 0.5
        assertThat(o.pressureDrooped().orElseThrow().inWc()).isCloseTo(10.2439, BY_HAND);
        // a hose of 250,000 (natural gas, unconverted): 0.5 x 0.8^1.85 = 0.3309
        assertThat(o.connector().drop().inWc()).isCloseTo(0.3309, BY_HAND);
        assertThat(o.connector().assumed()).isFalse();
        assertThat(o.pressureAtInlet().orElseThrow().inWc()).isCloseTo(9.9130, BY_HAND);
        assertThat(o.pressureIdle().orElseThrow().inWc()).isCloseTo(12.65, BY_HAND);
        assertThat(o.status()).isEqualTo(InletStatus.ENOUGH);
        // 10 ft down: propane gains 0.073 in.; apart from the others
        assertThat(o.staticLoss().orElseThrow().inWc()).isCloseTo(-0.073, within(1e-9));
    }

    @Test
    void theSettingWindowIsWhatTheLabelLeavesOpen() {
        SettingWindow w = pressures(HOUSE).window(2);
        // lowest 9.5 + 0.2561 + 0.5 + 0.3309; highest 13 / 1.15
        assertThat(w.lowest().orElseThrow().inWc()).isCloseTo(10.5870, BY_HAND);
        assertThat(w.highest().orElseThrow().inWc()).isCloseTo(11.3043, BY_HAND);
        assertThat(w.isEmpty()).isFalse();
        assertThat(w.complete()).isTrue();
    }

    @Test
    void twoAppliancesThatNoSettingServesQuarrel() {
        String two = HOUSE.replace(
                        "{\"id\":\"B\",",
                        "{\"id\":\"C\",\"from\":\"L\",\"material\":\"steel\",\"legs\":[\"5 ft\"]},{\"id\":\"B\",")
                .replace(
                        "\"appliances\":[",
                        "\"appliances\":[{\"id\":\"light\",\"kind\":\"light\",\"input\":\"2000 Btu/h\",\"fedBy\":\"C\",\"minInlet\":\"4 in"
                                + " w.c.\",\"maxInlet\":\"12 in w.c.\"},");
        SettingWindow w = pressures(two).window(2);
        // heater: 9.5 + 0.2561 + 1 x 202/400 + 0.3309 = 10.592; light: 12 / 1.15 = 10.435
        assertThat(w.lowest().orElseThrow().inWc()).isCloseTo(10.592, BY_HAND);
        assertThat(w.lowestFor()).contains("heater");
        assertThat(w.highest().orElseThrow().inWc()).isCloseTo(10.4348, BY_HAND);
        assertThat(w.highestFor()).contains("light");
        assertThat(w.isEmpty()).isTrue();
    }

    @Test
    void lockUpWrittenAsWhatItAddsIsTheSame() {
        OutletPressure o = pressures(HOUSE.replace("115 %", "15 %")).outlet(0);
        assertThat(o.pressureIdle().orElseThrow().inWc()).isCloseTo(12.65, BY_HAND);
    }

    @Test
    void velocityIsTheGasAtThePressureOfTheSectionsEnd() {
        // B: 80.386 / 3,600 ft3/s x 14.73 / (14.73 + 10.7439 / 27.7) / (pi / 4 x (0.824 / 12)^2) = 5.875 ft/s
        assertThat(pressures(HOUSE).section(2).velocityFtPerS().orElseThrow()).isCloseTo(5.875, within(0.002));
    }

    @Test
    void withoutFiguresTheDefaultsHold() {
        Pressures p = pressures(HOUSE.replace("\"capacity\":\"400000 Btu/h\",", "")
                .replace("\"droopAtCapacity\":\"1 in w.c.\",\"lockUp\":\"115 %\",", "")
                .replace(",\"capacity\":\"250000 Btu/h\",\"capacityGas\":\"natural\"", ""));
        // the whole 2 in. droop, the whole 0.5 in. of the hose, lock-up at 120 %
        assertThat(p.regulator(2).droop().orElseThrow().atLoad().orElseThrow().inWc())
                .isEqualTo(2);
        assertThat(p.outlet(0).connector()).isEqualTo(new ConnectorDrop(Pressure.ofInWc(0.5), true));
        assertThat(p.outlet(0).pressureAtInlet().orElseThrow().inWc()).isCloseTo(8.2439, BY_HAND);
        assertThat(p.outlet(0).pressureIdle().orElseThrow().inWc()).isCloseTo(13.2, BY_HAND);
        assertThat(p.outlet(0).status()).isEqualTo(InletStatus.LOW);
    }

    @Test
    void rigidPipeLosesNothing() {
        Pressures p = pressures(HOUSE.replace(
                "{\"part\":\"flexible-connector\",\"capacity\":\"250000 Btu/h\",\"capacityGas\":\"natural\"}",
                "{\"part\":\"rigid-pipe\",\"length\":\"2 ft\"}"));
        assertThat(p.outlet(0).connector()).isEqualTo(new ConnectorDrop(Pressure.ZERO, false));
    }

    @Test
    void aReadingAtTheRegulatorTakesThePlaceOfTheDefaultDroop() {
        String read = HOUSE.replace("\"droopAtCapacity\":\"1 in w.c.\",", "")
                .replace(
                        "\"sections\":",
                        "\"readings\":[{\"at\":\"L\",\"what\":\"flowing-all\",\"pressure\":\"10.4 in w.c.\"}],\"sections\":");
        Droop droop = pressures(read).regulator(2).droop().orElseThrow();
        assertThat(droop.source()).isEqualTo(Droop.Source.MEASURED);
        assertThat(droop.atLoad().orElseThrow().inWc()).isCloseTo(0.6, within(1e-9));
    }

    @Test
    void aRegulatorUnderItsLeastInletMakesEverythingBehindItLow() {
        Pressures p = pressures(HOUSE.replace("\"minInlet\":\"5 psi\"", "\"minInlet\":\"9.6 psi\""));
        assertThat(p.regulator(1).reached()).isEqualTo(Reached.NO);
        assertThat(p.regulator(2).reached()).isEqualTo(Reached.NO);
        assertThat(p.outlet(0).status()).isEqualTo(InletStatus.LOW);
        assertThat(InletPressureLow.of(p).get(0).found())
                .isEqualTo("Regulator R2 before the boiler sees 9.54 psi (264.39 in. w.c.) with everything firing");
    }

    @Test
    void aLeastInletNotEnteredIsJudgedAsReached() {
        Pressures p = pressures(HOUSE.replace(",\"minInlet\":\"5 psi\"", ""));
        assertThat(p.outlet(0).status()).isEqualTo(InletStatus.ENOUGH);
        assertThat(InletPressureLow.of(p)).singleElement().satisfies(f -> {
            assertThat(f.at()).isEqualTo("R2");
            assertThat(f.severity().written()).isEqualTo("note");
            assertThat(f.field()).isEqualTo("/regulators/1/minInlet");
        });
    }

    @Test
    void aMissingInputLeavesThePressureUnknown() {
        OutletPressure o =
                pressures(HOUSE.replace("\"input\":\"200000 Btu/h\",", "")).outlet(0);
        assertThat(o.pressure()).isEmpty();
        assertThat(o.pressureAtInlet()).isEmpty();
        assertThat(o.status()).isEqualTo(InletStatus.UNKNOWN);
    }

    @Test
    void theStatusFollowsItsPrecedence() {
        assertThat(status("9.91 in w.c.", "12.65 in w.c.")).isEqualTo(InletStatus.ENOUGH);
        assertThat(status("9.92 in w.c.", "12 in w.c.")).isEqualTo(InletStatus.LOW);
        assertThat(status("9.5 in w.c.", "12.6 in w.c.")).isEqualTo(InletStatus.HIGH);
        assertThat(pressures(HOUSE.replace(
                                "\"minInlet\":\"9.5 in w.c.\",\"maxInlet\":\"13 in w.c.\",",
                                "\"maxInlet\":\"12 in w.c.\","))
                        .outlet(0)
                        .status())
                .isEqualTo(InletStatus.HIGH);
        assertThat(pressures(HOUSE.replace("\"maxInlet\":\"13 in w.c.\",", ""))
                        .outlet(0)
                        .status())
                .isEqualTo(InletStatus.UNKNOWN);
    }

    private static InletStatus status(String least, String greatest) {
        return pressures(HOUSE.replace("9.5 in w.c.", least).replace("13 in w.c.", greatest))
                .outlet(0)
                .status();
    }
}
