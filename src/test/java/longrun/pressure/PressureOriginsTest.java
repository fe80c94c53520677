package longrun.pressure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import longrun.origin.Origin;
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
}
