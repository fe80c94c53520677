package longrun.tank;

import java.util.List;
import longrun.origin.Figure;
import longrun.tank.TankReport.CurvePoint;

/**
 * What the tank gives at one gauge reading and one air temperature.
 *
 * @param vapour by the rule, or the supplier's own figure; Btu/h
 * @param at20Psig the same kept at 20 psig in the tank
 * @param own by our own reckoning, also where the supplier's figure overrules it
 * @param curve at that gauge reading, from cold to warm; empty where the tank is not known
 */
public record TankMoment(Figure vapour, Figure at20Psig, Figure own, List<CurvePoint> curve) {

    public TankMoment {
        curve = List.copyOf(curve);
    }
}
