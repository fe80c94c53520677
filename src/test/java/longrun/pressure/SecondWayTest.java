package longrun.pressure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import longrun.Samples;
import longrun.capacity.CapacityTables;
import longrun.piping.Piping;
import longrun.plan.Appliance;
import longrun.plan.Plan;
import longrun.plan.Regulator;
import longrun.sizing.Sizing;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** The program and {@link PressureByHand} agree on seeded random houses, figure by figure. */
class SecondWayTest {

    private static final Offset<Double> FROZEN = within(1e-6);

    @Test
    void twoWaysToThePressureAgree() {
        int outlets = 0;
        List<String> statuses = new ArrayList<>();
        for (long seed = 1; seed <= 400; seed++) {
            Plan plan = Samples.plan(new RandomHouses(seed, false, allowance(seed)).json);
            Sizing sizing = Sizing.of(Piping.of(plan), CapacityTables.standard());
            Pressures pressures = Pressures.of(sizing);
            PressureByHand hand = new PressureByHand(sizing);
            boolean known = plan.sections().stream()
                    .allMatch(s -> pressures
                            .section(sizing.piping().findSection(s.id()).orElseThrow())
                            .endInWc()
                            .isPresent());
            for (int a = 0; known && a < plan.appliances().size(); a++) {
                Appliance appliance = plan.appliances().get(a);
                OutletPressure o = pressures.outlet(a);
                String at = "seed " + seed + " " + appliance.id();
                assertThat(o.pressureInWc().orElseThrow()).as(at).isCloseTo(hand.pressureInWc(appliance), FROZEN);
                assertThat(o.pressureDroopedInWc().orElseThrow()).as(at).isCloseTo(hand.droopedInWc(appliance), FROZEN);
                assertThat(o.connector().inWc()).as(at).isCloseTo(hand.connectorInWc(appliance), FROZEN);
                assertThat(o.pressureAloneInWc().orElseThrow()).as(at).isCloseTo(hand.aloneInWc(appliance), FROZEN);
                assertThat(o.status().written()).as(at).isEqualTo(hand.status(appliance));
                statuses.add(o.status().written());
                outlets++;
            }
            for (int r = 1; known && r < plan.regulators().size(); r++) {
                Regulator regulator = plan.regulators().get(r);
                assertThat(pressures.regulator(r).inletInWc().orElseThrow())
                        .as("seed " + seed + " " + regulator.id())
                        .isCloseTo(hand.regulatorInletInWc(regulator), FROZEN);
            }
        }
        assertThat(outlets).isGreaterThan(3000);
        assertThat(statuses).contains("enough", "low", "high", "unknown");
    }

    static String allowance(long seed) {
        return switch ((int) (seed % 3)) {
            case 0 -> "\"fittingAllowance\":\"none\",";
            case 1 -> "\"fittingAllowance\":\"20 %\",";
            default -> "";
        };
    }
}
