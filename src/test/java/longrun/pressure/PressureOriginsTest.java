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
            Headroom headroom = Headroom.of(p.sizing());
            List<Origin> all = new ArrayList<>();
            for (int s = 0; s < p.sizing().piping().sectionCount(); s++) {
                all.addAll(List.of(from.drop(s), from.velocity(s), from.insideVolume(s), from.staticHead(s)));
                assertThat(from.drop(s).value().equals("not known"))
                        .isEqualTo(p.section(s).dropInWc().isEmpty());
            }
            for (int a = 0; a < p.outlets().size(); a++) {
                all.addAll(List.of(
                        from.pressure(a),
                        from.pressureDrooped(a),
                        from.pressureAtInlet(a),
                        from.pressureAlone(a),
                        from.pressureIdle(a),
                        from.connector(a),
                        from.headroom(headroom, a)));
            }
            for (int r = 0; r < p.regulators().size(); r++) {
                all.addAll(List.of(from.droop(r), from.window(r)));
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
        Origin o = new PressureOrigins(ChainByHandTest.pressures(ChainByHandTest.HOUSE)).drop(2);
        assertThat(o.value()).isEqualTo("0.26 in. w.c.");
        assertThat(o.how())
                .isEqualTo(
                        "drop by the code's equation in flow form, low pressure (2018 International Fuel Gas Code 402.4)");
        assertThat(o.inputs())
                .extracting(Origin::value)
                .containsExactly("200,000 Btu/h", "40 ft", "0 ft", "0.824 in.", "11 in w.c.");
    }
}
