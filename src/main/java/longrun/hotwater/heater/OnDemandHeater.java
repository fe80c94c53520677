package longrun.hotwater.heater;

/**
 * An on-demand heater in numbers.
 *
 * @param setF set point, degF
 * @param fullBtuh heat into the water at full fire, derated for altitude; plus infinity where its input is not known
 * @param leastBtuh heat into the water at least fire
 * @param activationGpm flow under which it does not fire
 * @param efficiency share of the gas's heat that goes into the water, above 0
 */
public record OnDemandHeater(double setF, double fullBtuh, double leastBtuh, double activationGpm, double efficiency) {

    /** No heater lets water out hotter than this: memory. */
    static final double OUTLET_LIMIT_F = 185;

    /** Hottest water that least fire can make of a flow: the reading that decides scald. */
    double atLeastFireF(double inF, double gpm, double k) {
        return Math.max(inF, Math.min(Math.max(setF, OUTLET_LIMIT_F), inF + leastBtuh / (k * gpm)));
    }
}
