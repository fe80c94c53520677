package longrun.pressure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import longrun.Samples;
import longrun.capacity.CapacityTables;
import longrun.origin.Confidence;
import longrun.origin.Origin;
import longrun.piping.Piping;
import longrun.plan.PlannedHouse;
import longrun.quantity.Pressure;
import longrun.sizing.Sizing;
import org.junit.jupiter.api.Test;

/** Every figure says where it is from, with its inputs named. */
class PressureOriginsTest {

    @Test
    void everyFigureHasAnOrigin() {
        for (long seed = 1; seed <= 20; seed++) {
            Pressures p = ChainByHandTest.pressures(new RandomHouses(seed, true, SecondWayTest.allowance(seed)).json);
            PressureOrigins from = new PressureOrigins(p);
            SectionOrigins section = new SectionOrigins(p);
            RegulatorOrigins regulator = new RegulatorOrigins(p);
            Headroom headroom = Headroom.of(p.sizing());
            List<Origin> all = new ArrayList<>();
            for (int s = 0; s < p.sizing().piping().sectionCount(); s++) {
                all.addAll(
                        List.of(section.drop(s), section.velocity(s), section.insideVolume(s), section.staticHead(s)));
                assertThat(section.drop(s).value().equals("not known"))
                        .isEqualTo(p.section(s).drop().isEmpty());
            }
            for (int a = 0; a < p.outlets().size(); a++) {
                all.addAll(List.of(
                        from.pressure(a),
                        from.pressureDrooped(a),
                        from.pressureAtInlet(a),
                        from.pressureAlone(a),
                        from.pressureIdle(a),
                        from.connector(a),
                        from.staticTo(a),
                        from.headroom(headroom, a)));
            }
            for (int r = 0; r < p.regulators().size(); r++) {
                all.addAll(List.of(
                        regulator.droop(r),
                        regulator.predictedDroop(r),
                        regulator.window(r),
                        regulator.inlet(r),
                        regulator.lockUp(r),
                        regulator.load(r),
                        regulator.spare(r)));
                assertThat(regulator.setting(r).value()).isNotBlank();
                assertThat(regulator.rating(r).value()).isNotBlank();
            }
            assertThat(all).allSatisfy(o -> {
                assertThat(o.figure()).isNotBlank();
                assertThat(o.value()).isNotBlank().doesNotContain("Optional").doesNotContain("NaN");
                assertThat(o.how()).isNotBlank();
                assertThat(o.confidence()).isPresent();
            });
        }
    }

    @Test
    void aDropNamesEquationBoreLengthAndLoad() {
        Origin o = new SectionOrigins(ChainByHandTest.pressures(ChainByHandTest.HOUSE)).drop(2);
        assertThat(o.value()).isEqualTo("0.26 in. w.c.");
        assertThat(o.how())
                .isEqualTo(
                        "drop by the code's equation in flow form, low pressure (2018 International Fuel Gas Code 402.4)");
        assertThat(o.inputs())
                .extracting(Origin::value)
                .containsExactly("200,000 Btu/h", "40 ft", "0 ft", "0.824 in.", "11 in w.c.");
    }

    @Test
    void theInletOfARegulatorIsWhatTheOneBeforeItLeaves() {
        Origin o = new RegulatorOrigins(ChainByHandTest.pressures(ChainByHandTest.HOUSE)).inlet(1);
        // 10 psi, less 0.4 psi that R1 falls at 200,000 of 1,000,000, less 0.0553 psi in Y: 9.5447 psi
        assertThat(o.value()).startsWith("9.54 psi");
        assertThat(o.inputs())
                .extracting(Origin::value)
                .containsExactly("10 psi (277 in. w.c.)", "11.08 in. w.c.", "1.53 in. w.c.");
    }

    @Test
    void theTanksPressureIsNotTakenForAFigure() {
        Origin o = new RegulatorOrigins(ChainByHandTest.pressures(ChainByHandTest.HOUSE)).inlet(0);
        assertThat(o.value()).isEqualTo("not known");
        assertThat(o.how()).startsWith("the tank's own pressure");
    }

    private static PressureOrigins ofHouse(String json) {
        return new PressureOrigins(ChainByHandTest.pressures(json));
    }

    private static List<String> figures(Origin o) {
        return o.inputs().stream().map(Origin::figure).toList();
    }

    @Test
    void aPressureAtAnApplianceNamesItsSettingAndEachSectionOnTheWay() {
        PlannedHouse row = PlannedHouse.behind("11 in w.c.", "0.5 in w.c.").section("S0", "R", "steel", "1 ft");
        for (int s = 1; s < 40; s++) {
            row.section("S" + s, "S" + (s - 1), "steel", "1 ft");
        }
        Origin forty =
                ofHouse(row.appliance("heater", "S39", "50000 Btu/h").text()).pressure(0);
        assertThat(figures(forty)).hasSize(41).startsWith("setting of R", "drop of section S0", "drop of section S1");
        PlannedHouse longer = row.section("S40", "S39", "steel", "1 ft").set("/appliances/0/fedBy", "S40");
        Pressures p = ChainByHandTest.pressures(longer.text());
        Origin summed = new PressureOrigins(p).pressure(0);
        assertThat(figures(summed)).containsExactly("setting of R", "drop of the 41 sections on the way");
        double lost = 11 - p.outlet(0).pressure().orElseThrow().inWc();
        assertThat(summed.inputs().get(1).value()).isEqualTo(Words.number(lost, 2) + " in. w.c.");
    }

    @Test
    void eachFigureAtAnApplianceNamesWhatItIsMadeOf() {
        PressureOrigins from = ofHouse(ChainByHandTest.HOUSE);
        assertThat(from.pressure(0).figure()).isEqualTo("pressure at the pipe's end, heater");
        assertThat(figures(from.pressure(0))).containsExactly("setting of L", "drop of section B");
        assertThat(figures(from.pressureDrooped(0))).containsExactly("pressure at the pipe's end", "droop of L");
        assertThat(figures(from.pressureAtInlet(0)))
                .containsExactly("drooped pressure at the pipe's end", "connector of heater");
        assertThat(from.connector(0).how()).contains("(input / capacity)^1.85");
        assertThat(figures(from.pressureAlone(0))).containsExactly("setting of L", "input");
        assertThat(figures(from.pressureIdle(0))).containsExactly("setting of L");
        assertThat(from.pressureIdle(0).how()).isEqualTo("setting times the lock-up share entered");
        assertThat(from.pressureIdle(0).confidence()).contains(Confidence.COMPUTED);
    }

    @Test
    void aRegulatorEnteredFirstIsNamedLikeAnyOther() {
        PressureOrigins from = ofHouse(PlannedHouse.behind("11 in w.c.", "0.5 in w.c.")
                .section("A", "R", "steel", "10 ft")
                .appliance("heater", "A", "50000 Btu/h")
                .text());
        assertThat(figures(from.pressure(0))).containsExactly("setting of R", "drop of section A");
        assertThat(figures(from.pressureDrooped(0))).contains("droop of R");
        assertThat(figures(from.pressureAlone(0))).contains("setting of R");
        assertThat(figures(from.pressureIdle(0))).contains("setting of R");
        // its lock-up is not entered: a default from memory
        assertThat(from.pressureIdle(0).how()).isEqualTo("setting times 120 %, the default");
        assertThat(from.pressureIdle(0).confidence()).contains(Confidence.MEMORY);
        assertThat(from.connector(0).how()).startsWith("the whole rated drop");
        PressureOrigins entered = ofHouse(PlannedHouse.empty()
                .regulator("R", "second-stage", "tank", "11 in w.c.", "0.5 in w.c.", "'lockUp':'115 %'")
                .section("A", "R", "steel", "10 ft")
                .appliance("heater", "A", "50000 Btu/h")
                .text());
        assertThat(entered.pressureIdle(0).how()).isEqualTo("setting times the lock-up share entered");
    }

    @Test
    void whatHangsOnNothingHasNoSettingToName() {
        PressureOrigins from = ofHouse(PlannedHouse.empty()
                .appliance("heater", "A", "50000 Btu/h")
                .lastWithout("appliances", "fedBy")
                .text());
        assertThat(figures(from.pressure(0))).isEmpty();
        assertThat(from.pressure(0).value()).isEqualTo("not known");
        assertThat(figures(from.pressureDrooped(0))).containsExactly("pressure at the pipe's end");
        assertThat(figures(from.pressureAlone(0))).containsExactly("input");
        assertThat(figures(from.pressureIdle(0))).isEmpty();
    }

    @Test
    void tubingWithoutABoreTakesItsDropFromItsTable() {
        SectionOrigins sample =
                new SectionOrigins(Pressures.of(Sizing.of(Piping.of(Samples.sample()), CapacityTables.standard())));
        // C: 65,000 in EHD 19 between 66,000 at 50 ft and 60,000 at 60 ft: 50 x 1.2^(ln(66/65) / ln(66/60)) ft
        Origin c = sample.drop(3);
        assertThat(c.how()).startsWith("drop of its table times the section's length");
        assertThat(c.inputs().get(3).figure()).isEqualTo("length at which EHD 19 carries this load");
        assertThat(c.inputs().get(3).value()).isEqualTo("51.48 ft");
    }

    @Test
    void aSectionWithoutASizeSaysThatItHasNoDrop() {
        Origin o = new SectionOrigins(
                        ChainByHandTest.pressures(ChainByHandTest.HOUSE.replace("\"input\":\"200000 Btu/h\",", "")))
                .drop(2);
        assertThat(o.how()).isEqualTo("no size, so no drop");
        assertThat(o.value()).isEqualTo("not known");
    }

    @Test
    void fromOneAndAHalfPoundsTheEquationIsTheHighOne() {
        for (String pressure : List.of("10 psi", "2 psi", "1.5 psi")) {
            Pressures p = ChainByHandTest.pressures(PlannedHouse.behind(pressure, "1 psi")
                    .section("A", "R", "steel", "10 ft")
                    .appliance("heater", "A", "50000 Btu/h")
                    .text());
            assertThat(new SectionOrigins(p).drop(0).how()).as(pressure).contains("high pressure");
        }
        assertThat(Words.inWc(Pressure.ofPsi(1.5))).isEqualTo("1.5 psi (41.55 in. w.c.)");
        assertThat(Words.inWc(Pressure.ofInWc(41.5))).isEqualTo("41.5 in. w.c.");
    }

    @Test
    void aRegulatorsFiguresNameWhatWasEnteredAndWhatIsADefault() {
        RegulatorOrigins from = new RegulatorOrigins(ChainByHandTest.pressures(ChainByHandTest.HOUSE.replace(
                "\"capacity\":\"400000 Btu/h\",", "\"capacity\":\"400000 Btu/h\",\"capacityAtInlet\":\"1.5 psi\",")));
        assertThat(from.rating(2).value()).isEqualTo("400000 Btu/h at an inlet of 1.5 psi");
        assertThat(from.rating(1).value()).isEqualTo("500000 Btu/h, at an inlet that is not entered");
        assertThat(from.spare(2).value()).isEqualTo("200,000 Btu/h");
        assertThat(from.lockUp(2).how()).isEqualTo("the share entered, of the setting");
        assertThat(from.lockUp(2).confidence()).contains(Confidence.COMPUTED);
        assertThat(from.lockUp(1).how()).isEqualTo("120 % of the setting, the default");
        assertThat(from.lockUp(1).confidence()).contains(Confidence.MEMORY);
        assertThat(from.droop(2).confidence()).contains(Confidence.COMPUTED);
        assertThat(from.droop(1).confidence()).contains(Confidence.MEMORY);
        // 11 in. less half of its 1 in. at half its capacity
        assertThat(from.predictedDroop(2).value()).isEqualTo("10.5 in. w.c.");
        assertThat(figures(from.window(2))).containsExactly("lowest, asked by heater", "highest, asked by heater");
        assertThat(figures(from.window(1))).containsExactly("lowest, asked by L");
    }

    @Test
    void whatFeedsARegulatorIsTheTankOnlyWhereThatIsEntered() {
        String loose = ChainByHandTest.HOUSE.replace("\"fedBy\":\"tank\",", "");
        assertThat(new RegulatorOrigins(ChainByHandTest.pressures(loose))
                        .inlet(0)
                        .how())
                .isEqualTo("what feeds it is not entered");
    }

    @Test
    void withoutASettingNeitherFallNorOutletIsKnown() {
        RegulatorOrigins from = new RegulatorOrigins(
                ChainByHandTest.pressures(ChainByHandTest.HOUSE.replace("\"outlet\":\"11 in w.c.\",", "")));
        for (Origin o : List.of(from.droop(2), from.predictedDroop(2))) {
            assertThat(o.value()).isEqualTo("not known");
            assertThat(o.how()).isEqualTo("no setting is entered");
        }
        assertThat(from.window(2).value()).isEqualTo("not known");
    }
}
