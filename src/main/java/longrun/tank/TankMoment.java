package longrun.tank;

import java.util.List;
import longrun.origin.Figure;
import longrun.tank.TankReport.CurvePoint;

/**
 * What the tank gives at one gauge reading and one air temperature.
 *
 * @param vapour the most for a short time, by the rule or the supplier's own figure; Btu/h
 * @param planned the same while the tank keeps the pressure to plan with
 * @param own as worked out from the tank, also where the supplier's figure overrules it
 * @param curve at that gauge reading, from cold to warm; empty where the tank is not known
 */
public record TankMoment(Figure vapour, Figure planned, Figure own, List<CurvePoint> curve) {

    public TankMoment {
        curve = List.copyOf(curve);
    }
}
