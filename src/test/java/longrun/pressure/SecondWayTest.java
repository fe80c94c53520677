package longrun.pressure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import longrun.Samples;
import longrun.capacity.CapacityTables;
import longrun.checked.Ran;
import longrun.checked.SecondWay;
import longrun.piping.Piping;
import longrun.plan.Appliance;
import longrun.plan.Plan;
import longrun.plan.Regulator;
import longrun.sizing.Sizing;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** The program and {@link PressureByHand} agree on seeded random houses, figure by figure. */
class SecondWayTest {

    private static final SecondWay WAY = SecondWay.get("pressure");
    private static final long HOUSES = Ran.count("pressure");
    private static final Offset<Double> FROZEN = within(WAY.within());

    private double worst;

    @Test
    void twoWaysToThePressureAgree() {
        int outlets = 0;
        List<String> statuses = new ArrayList<>();
        for (long seed = WAY.seed(); seed < WAY.seed() + HOUSES; seed++) {
            Plan plan = Samples.plan(new RandomHouses(seed, false, allowance(seed)).json);
            Sizing sizing = Sizing.of(Piping.of(plan), CapacityTables.standard());
            Pressures pressures = Pressures.of(sizing);
            PressureByHand hand = new PressureByHand(sizing);
            boolean known = plan.sections().stream()
                    .allMatch(s -> pressures
                            .section(sizing.piping().findSection(s.id()).orElseThrow())
                            .end()
                            .isPresent());
            for (int a = 0; known && a < plan.appliances().size(); a++) {
                Appliance appliance = plan.appliances().get(a);
                OutletPressure o = pressures.outlet(a);
                String at = "seed " + seed + " " + appliance.id();
                close(at, o.pressure().orElseThrow().inWc(), hand.pressureInWc(appliance));
                close(at, o.pressureDrooped().orElseThrow().inWc(), hand.droopedInWc(appliance));
                close(at, o.connector().drop().inWc(), hand.connectorInWc(appliance));
                close(at, o.pressureAlone().orElseThrow().inWc(), hand.aloneInWc(appliance));
                assertThat(o.status().written()).as(at).isEqualTo(hand.status(appliance));
                statuses.add(o.status().written());
                outlets++;
            }
            for (int r = 1; known && r < plan.regulators().size(); r++) {
                Regulator regulator = plan.regulators().get(r);
                close(
                        "seed " + seed + " " + regulator.id(),
                        pressures.regulator(r).inlet().orElseThrow().inWc(),
                        hand.regulatorInletInWc(regulator));
            }
        }
        assertThat(outlets).isGreaterThan((int) (7 * HOUSES));
        assertThat(statuses).contains("enough", "low", "high", "unknown");
        Ran.told("pressure", HOUSES, WAY.seed(), worst);
    }

    private void close(String at, double ours, double byHand) {
        assertThat(ours).as(at).isCloseTo(byHand, FROZEN);
        worst = Math.max(worst, Math.abs(ours - byHand));
    }

    static String allowance(long seed) {
        return switch ((int) (seed % 3)) {
            case 0 -> "'fittingAllowance':'none'";
            case 1 -> "'fittingAllowance':'20 %'";
            default -> "";
        };
    }
}
