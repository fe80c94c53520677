package longrun.pressure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import longrun.Samples;
import longrun.capacity.CapacityTables;
import longrun.piping.Piping;
import longrun.plan.Plan;
import longrun.quantity.Pressure;
import longrun.sizing.Sizing;
import org.junit.jupiter.api.Test;

/** Which burner has the least to spare, on the plan that documents the format and on the demo house. */
class TightestInletTest {

    private static Pressures of(Plan plan) {
        return Pressures.of(Sizing.of(Piping.of(plan), CapacityTables.standard()));
    }

    @Test
    void anApplianceWithoutALabelIsNotTheTightestWhereAnotherHasOne() {
        // the plan that documents the format: the heater's label asks for 8 in. w.c., the range has none entered
        Pressures pressures = of(Samples.sample());
        TightestInlet tightest = TightestInlet.of(pressures).orElseThrow();
        assertThat(tightest.appliance()).isZero();
        assertThat(tightest.unknown()).isEqualTo(1);
        assertThat(tightest.spare().inWc())
                .isCloseTo(pressures.outlet(0).pressureAtInlet().orElseThrow().inWc() - 8, within(1e-9));
    }

    @Test
    void theHigherLabelMayBeTheTighterAtAHigherPressure() {
        Plan demo = Samples.plan(Samples.text("data/demo/orchard-house.json"));
        Pressures pressures = of(demo);
        TightestInlet tightest = TightestInlet.of(pressures).orElseThrow();
        double heater = pressures.outlet(0).pressureAtInlet().orElseThrow().inWc() - 8;
        double furnace = pressures.outlet(2).pressureAtInlet().orElseThrow().inWc() - 9;
        assertThat(furnace).isLessThan(heater);
        assertThat(tightest.appliance()).isEqualTo(2);
        assertThat(tightest.least()).contains(Pressure.ofInWc(9));
    }

    @Test
    void withoutAnyLabelItIsTheOneThatGetsTheLeast() {
        Plan unlabelled = Samples.plan(
                Samples.text("data/demo/orchard-house.json").replaceAll("\"minInlet\": *\"[^\"]*\",?", ""));
        Pressures pressures = of(unlabelled);
        TightestInlet tightest = TightestInlet.of(pressures).orElseThrow();
        double least = pressures.outlets().stream()
                .mapToDouble(o -> o.pressureAtInlet().orElseThrow().inWc())
                .min()
                .orElseThrow();
        assertThat(tightest.least()).isEmpty();
        assertThat(tightest.atInlet().inWc()).isEqualTo(least);
    }

    @Test
    void withoutALineNoPressureIsKnown() {
        assertThat(TightestInlet.of(of(Samples.plan("{\"format\":\"longrun-plan/1\"}"))))
                .isEmpty();
    }
}
