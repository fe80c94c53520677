package longrun.holdpoint;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longrun.plan.Appliance;
import longrun.plan.Plan;
import longrun.plan.choice.ReadingKind;
import longrun.pressure.Pressures;
import longrun.pressure.RegulatorPressure;
import longrun.quantity.Pressure;

/**
 * A pressure to be measured with a gauge, and what the plan predicts for it.
 *
 * @param at id of the regulator or appliance
 * @param called its name in a sentence
 * @param kind with nothing firing, or with everything firing
 * @param predicted what the plan predicts; empty where an entry is missing
 * @param measured the reading entered last; empty where none is entered
 */
public record PredictedPressure(
        String at, String called, ReadingKind kind, Optional<Pressure> predicted, Optional<Pressure> measured) {

    /** Lock-up and flowing pressure of every regulator, then the pressure at every burner with everything firing. */
    public static List<PredictedPressure> of(Pressures pressures) {
        Plan plan = pressures.sizing().piping().plan();
        List<PredictedPressure> out = new ArrayList<>();
        for (RegulatorPressure r : pressures.regulators()) {
            String id = r.regulator().id();
            String called = "regulator " + id;
            out.add(of(plan, id, called, ReadingKind.LOCK_UP, r.lockUp()));
            out.add(of(plan, id, called, ReadingKind.FLOWING_ALL, r.drooped().map(Pressure::orNone)));
        }
        for (int i = 0; i < plan.appliances().size(); i++) {
            Appliance a = plan.appliances().get(i);
            out.add(of(
                    plan,
                    a.id(),
                    pressures.sizing().piping().names().called(a),
                    ReadingKind.FLOWING_ALL,
                    pressures.outlet(i).pressureAtInlet()));
        }
        return List.copyOf(out);
    }

    private static PredictedPressure of(
            Plan plan, String id, String called, ReadingKind kind, Optional<Pressure> predicted) {
        Optional<Pressure> read = Optional.empty();
        for (Plan.Reading r : plan.readings()) {
            if (r.at().is(id) && r.what().is(kind) && r.pressure().isKnown()) {
                read = r.pressure().findValue();
            }
        }
        return new PredictedPressure(id, called, kind, predicted, read);
    }
}
