package longrun.pressure;

import java.util.Optional;
import java.util.OptionalDouble;
import longrun.quantity.Length;
import longrun.quantity.Pressure;

/**
 * What one section does to the gas with everything firing.
 *
 * @param drop lost between its ends, from the regulator's setting; empty where unknown or where the
 *     pressure cannot push the load through
 * @param end pressure at its end, from the setting; 0 where nothing gets through
 * @param endDrooped the same from the setting less droop
 * @param velocityFtPerS at its end, gas at 60 degF; CSST has no bore and so none
 * @param insideFt3 volume inside its measured length; CSST none
 * @param staticLoss what the gas column loses by rising, in none of the others; negative where the section falls;
 *     empty where a leg's direction is not entered
 * @param counted what its own counted fittings added to the length
 */
public record SectionPressure(
        Optional<Pressure> drop,
        Optional<Pressure> end,
        Optional<Pressure> endDrooped,
        OptionalDouble velocityFtPerS,
        OptionalDouble insideFt3,
        Optional<Pressure> staticLoss,
        Optional<Length> counted) {}
