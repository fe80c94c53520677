package longrun.plan;

import java.util.List;
import java.util.Map;
import longrun.plan.choice.Jacket;
import longrun.plan.choice.Joint;
import longrun.plan.choice.Material;
import longrun.plan.choice.PipeFitting;
import longrun.plan.choice.Setting;
import longrun.plan.choice.Tube;
import longrun.plan.choice.Under;
import longrun.quantity.HeatRate;
import longrun.quantity.Length;
import longrun.quantity.WireGauge;

/**
 * A length of pipe that carries one load.
 *
 * @param from the section or regulator it leaves
 * @param rough whether its length is paced rather than measured
 * @param fittings parts beyond the turns the legs show; known and empty means that there are none
 * @param capped whether its end is closed for a future appliance
 * @param reserve the load kept for that appliance
 * @param installedSize the size already in place
 * @param chosenSize a size a person raised it to
 * @param table a tubing table of the person's own, by name
 * @param assumed true where what is entered of it is taken as usual and nobody has looked at it yet
 */
public record Section(
        String id,
        Fact<String> name,
        Fact<String> from,
        Fact<Material> material,
        Fact<Setting> setting,
        Fact<List<Leg>> legs,
        Fact<Boolean> rough,
        Fact<Map<PipeFitting, Integer>> fittings,
        Fact<Boolean> capped,
        Fact<HeatRate> reserve,
        Fact<String> installedSize,
        Fact<String> chosenSize,
        Fact<Tube> tube,
        Fact<String> table,
        Fact<Distance> depth,
        Fact<List<String>> ends,
        Fact<WireGauge> tracerWire,
        Fact<Boolean> coated,
        Fact<Under> under,
        Fact<List<Pass>> passes,
        Fact<WireGauge> bonding,
        Fact<Length> bondingLength,
        Fact<Jacket> jacket,
        Fact<Distance> fromStuds,
        Fact<Boolean> plates,
        Fact<Length> supportEvery,
        Fact<List<Joint>> joints,
        Fact<List<String>> fittingsConcealed,
        Fact<Boolean> assumed) {

    /** Whether nobody has looked at it yet: no rule passes on it, and sizes that rest on it are sizes so far. */
    public boolean isAssumed() {
        return assumed().is(true);
    }

    /** Something the pipe passes through. */
    public record Pass(Fact<String> what, Fact<Boolean> sleeved, Fact<Boolean> sealed, Fact<Boolean> belowGrade) {}
}
