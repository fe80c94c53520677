package longrun.pressure;

import static longrun.pressure.ChainByHandTest.pressures;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import longrun.plan.PlannedHouse;
import longrun.pressure.RegulatorPressure.Reached;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** What holds of a pressure on its way from the tank, however a house is entered. */
class AlongTheWayTest {

    private static final Offset<Double> BY_HAND = within(0.0005);

    private static PlannedHouse behind(String outlet, String drop) {
        return PlannedHouse.behind(outlet, drop).with("'fittingAllowance':'none'");
    }

    /** The chain of {@link ChainByHandTest}, its regulators and sections entered in another order. */
    private static PlannedHouse mixed(String leastOfTwoPsi) {
        return PlannedHouse.empty()
                .with("'fittingAllowance':'none'")
                .regulator(
                        "R2",
                        "two-psi",
                        "Y",
                        "2 psi",
                        "1 psi",
                        "'capacity':'500000 Btu/h','minInlet':'" + leastOfTwoPsi + "'")
                .regulator(
                        "L",
                        "line",
                        "T",
                        "11 in w.c.",
                        "0.5 in w.c.",
                        "'capacity':'400000 Btu/h','droopAtCapacity':'1 in w.c.','lockUp':'115 %','minInlet':'1 psi'")
                .regulator("R1", "first-stage", "tank", "10 psi", "1 psi", "'capacity':'1000000 Btu/h'")
                .section("T", "R2", "steel", "up 8 ft;east 42 ft")
                .section("B", "L", "steel", "east 30 ft;down 10 ft")
                .section("Y", "R1", "steel", "north 100 ft")
                .appliance(
                        "heater",
                        "B",
                        "200000 Btu/h",
                        "'kind':'boiler','minInlet':'9.5 in w.c.','maxInlet':'13 in w.c.',"
                                + "'connection':[{'part':'shutoff'},{'part':'flexible-connector','capacity':'250000 Btu/h'}]");
    }

    @Test
    void theOrderOfEntriesChangesNoPressure() {
        Pressures p = pressures(mixed("5 psi").text());
        // by hand in ChainByHandTest
        assertThat(p.regulator(0).inlet().orElseThrow().psi()).isCloseTo(9.5447, BY_HAND);
        assertThat(p.regulator(1).inlet().orElseThrow().inWc()).isCloseTo(49.844, within(0.005));
        assertThat(p.regulator(1).inletText()).contains("1.8 psi (49.84 in. w.c.)");
        assertThat(p.outlet(0).pressureAtInlet().orElseThrow().inWc()).isCloseTo(9.9130, BY_HAND);
        assertThat(p.outlet(0).status()).isEqualTo(InletStatus.ENOUGH);
    }

    @Test
    void theFirstRegulatorThatIsStarvedIsNamedInAnyOrder() {
        Pressures p = pressures(mixed("9.6 psi").text());
        assertThat(p.regulator(0).reached()).isEqualTo(Reached.NO);
        assertThat(p.regulator(1).reached()).isEqualTo(Reached.NO);
        assertThat(InletPressureLow.of(p).get(0).found()).startsWith("Regulator R2 before the boiler sees 9.54 psi");
        assertThat(InletPressureLow.of(p).get(0).field()).isEqualTo("/regulators/2/outlet");
    }

    @Test
    void oneApplianceAloneIsEverythingFiringWhereThereIsNoOther() {
        for (String[] stage : new String[][] {{"10 psi", "1 psi"}, {"2 psi", "1 psi"}, {"11 in w.c.", "0.5 in w.c."}}) {
            Pressures p = pressures(behind(stage[0], stage[1])
                    .section("A", "R", "steel", "30 ft")
                    .section("B", "A", stage[0].equals("10 psi") ? "copper" : "csst", "20 ft")
                    .section("C", "B", "steel", "30 ft")
                    .appliance("heater", "C", "200000 Btu/h")
                    .text());
            OutletPressure o = p.outlet(0);
            assertThat(o.pressureAlone().orElseThrow().inWc())
                    .as(stage[0])
                    .isCloseTo(o.pressure().orElseThrow().inWc(), within(1e-9))
                    .isLessThan(p.section(0).end().orElseThrow().inWc());
        }
    }

    @Test
    void aloneAnApplianceGetsMoreThanBesideAnother() {
        Pressures p = pressures(behind("10 psi", "1 psi")
                .section("Y", "R", "steel", "100 ft")
                .section("H", "Y", "steel", "50 ft")
                .section("G", "Y", "steel", "10 ft")
                .appliance("heater", "H", "200000 Btu/h")
                .appliance("generator", "G", "200000 Btu/h")
                .text());
        // 1/2 in. loses 2.6871 psi2 in 100 ft at 200,000 (ChainByHandTest), so 4.0307 in 150 ft:
        //   sqrt(24.73^2 - 4.0307) - 14.73 = 9.9184 psi
        assertThat(p.outlet(0).pressureAlone().orElseThrow().psi()).isCloseTo(9.9184, BY_HAND);
        // with both, Y loses 2^(1/0.541) times as much: sqrt(24.73^2 - 9.6757 - 1.3435) - 14.73 = 9.7762 psi
        assertThat(p.outlet(0).pressure().orElseThrow().psi()).isCloseTo(9.7762, BY_HAND);
    }

    @Test
    void whatRisesFromTheFirstSectionIsCountedToTheLast() {
        Pressures p = pressures(behind("11 in w.c.", "0.5 in w.c.")
                .section("A", "R", "steel", "up 8 ft")
                .section("B", "A", "steel", "up 4 ft")
                .appliance("heater", "B", "50000 Btu/h")
                .text());
        // 12 ft x 0.0073 in. w.c.
        assertThat(p.outlet(0).staticLoss().orElseThrow().inWc()).isCloseTo(0.0876, within(1e-9));
    }

    @Test
    void aRegulatorThatLocksUpAtItsSettingAddsNothing() {
        Pressures p = pressures(ChainByHandTest.HOUSE.replace("115 %", "100 %"));
        assertThat(p.outlet(0).pressureIdle().orElseThrow().inWc()).isCloseTo(11, within(1e-9));
    }

    private static PlannedHouse usedUp() {
        return behind("11 in w.c.", "0.5 in w.c.")
                .section("A", "R", "steel", "200 ft", "'installedSize':'1/2'")
                .section("B", "A", "steel", "20 ft")
                .appliance("heater", "B", "2000000 Btu/h", "'kind':'boiler'");
    }

    @Test
    void wherePressureIsUsedUpNothingArrivesAndNoFigureIsMade() {
        Pressures p = pressures(usedUp().text());
        assertThat(p.section(0).end().orElseThrow().inWc()).isZero();
        assertThat(p.section(0).velocityFtPerS()).isEmpty();
        assertThat(p.section(1).drop()).isEmpty();
        assertThat(p.outlet(0).pressureAtInlet().orElseThrow().inWc()).isZero();
        assertThat(p.outlet(0).status()).isEqualTo(InletStatus.LOW);
        assertThat(InletPressureLow.of(p)).first().satisfies(f -> {
            assertThat(f.required()).isEqualTo("some pressure at the inlet; the label's least is not entered");
            assertThat(f.remedy()).isEqualTo("Use larger pipe, a larger connector or a regulator that falls less.");
        });
    }

    @Test
    void aRegulatorThatNothingReachesHasNoWindowBeforeItAndStarvesWhatIsBehind() {
        PlannedHouse house = usedUp().section("C", "A", "steel", "20 ft")
                .regulator("L", "line", "C", "9 in w.c.", "0.5 in w.c.")
                .section("D", "L", "steel", "10 ft")
                .appliance("grill", "D", "30000 Btu/h", "'kind':'outdoor-grill','minInlet':'8 in w.c.'");
        Pressures p = pressures(house.text());
        assertThat(p.regulator(1).reached()).isEqualTo(Reached.NO);
        assertThat(p.window(0).lowest()).isEmpty();
        assertThat(p.window(0).complete()).isFalse();
        assertThat(InletPressureLow.of(p))
                .filteredOn(f -> f.at().equals("grill"))
                .singleElement()
                .satisfies(f ->
                        assertThat(f.required()).isEqualTo("at least 9 in. w.c. at the inlet of L, its own setting"));
        Pressures labelled =
                pressures(house.set("/appliances/0/minInlet", "8 in w.c.").text());
        assertThat(labelled.window(0).lowest()).isEmpty();
        Pressures unset = pressures(house.without("/regulators/1/outlet").text());
        assertThat(unset.regulator(1).reached()).isEqualTo(Reached.NO);
        assertThat(unset.outlet(1).pressureAlone()).isEmpty();
        assertThat(InletPressureLow.of(unset))
                .filteredOn(f -> f.at().equals("grill"))
                .singleElement()
                .satisfies(f -> assertThat(f.required()).isEqualTo("some pressure at the inlet of L"));
    }

    /** Common practice held from memory: 2 in. w.c., from 1.5 psi a fifth of the setting; the whole of it unless scaled. */
    @Test
    void aRegulatorOfOneAndAHalfPoundsFallsAFifthOfItsSetting() {
        assertThat(fall("1.5 psi", "'capacity':'0 Btu/h'")).isCloseTo(0.3 * 27.7, within(1e-9));
        assertThat(fall("1.5 psi", "'capacity':'400000 Btu/h'")).isCloseTo(0.3 * 27.7 / 4, within(1e-9));
        assertThat(fall("1.49 psi", "")).isEqualTo(2);
    }

    private static double fall(String outlet, String capacity) {
        PlannedHouse house = PlannedHouse.empty()
                .regulator("R", "second-stage", "tank", outlet, "0.5 in w.c.", capacity)
                .section("A", "R", "steel", "10 ft")
                .appliance("heater", "A", "100000 Btu/h");
        return pressures(house.text())
                .regulator(0)
                .droop()
                .orElseThrow()
                .atLoad()
                .orElseThrow()
                .inWc();
    }

    @Test
    void aloneBehindASectionNotKnownNothingIsKnown() {
        Pressures p = pressures(behind("11 in w.c.", "0.5 in w.c.")
                .section("A", "R", "steel", "10 ft")
                .section("B", "A", "steel", "10 ft")
                .lastWithout("sections", "material")
                .section("C", "B", "steel", "10 ft")
                .appliance("heater", "C", "50000 Btu/h")
                .text());
        assertThat(p.outlet(0).pressureAlone()).isEmpty();
    }

    /** Plastic tubing is made in no size that carries 4,000,000 Btu/h; steel beside it has one for 50,000. */
    @Test
    void aBranchWithoutASizeHidesNoPressureOfTheBranchBesideIt() {
        for (int large = 0; large < 2; large++) {
            Pressures p = pressures(behind("11 in w.c.", "0.5 in w.c.")
                    .section("A", "R", "steel", "10 ft")
                    .section("B", "A", large == 0 ? "pe-tubing" : "steel", "10 ft")
                    .section("C", "A", large == 1 ? "pe-tubing" : "steel", "10 ft")
                    .appliance("one", "B", large == 0 ? "4000000 Btu/h" : "50000 Btu/h")
                    .appliance("other", "C", large == 1 ? "4000000 Btu/h" : "50000 Btu/h")
                    .text());
            assertThat(p.outlet(1 - large).pressureAlone()).isPresent();
            assertThat(p.outlet(large).pressureAlone()).isEmpty();
        }
    }

    /** A table tells a drop whatever pressure is left; where none is, nothing gets through. */
    @Test
    void behindUsedUpPressureTubingLosesNoFigureEither() {
        Pressures p = pressures(behind("11 in w.c.", "0.5 in w.c.")
                .section("A", "R", "steel", "200 ft", "'installedSize':'1/2'")
                .section("B", "A", "csst", "20 ft", "'installedSize':'62'")
                .appliance("heater", "B", "500000 Btu/h", "'kind':'boiler'")
                .text());
        assertThat(p.section(0).end().orElseThrow().inWc()).isZero();
        assertThat(p.section(1).drop()).isEmpty();
        assertThat(p.section(1).end().orElseThrow().inWc()).isZero();
    }
}
