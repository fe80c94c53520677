package longrun.pressure;

import java.util.OptionalDouble;

/**
 * What one section does to the gas with everything firing.
 *
 * @param dropInWc lost between its ends, in. w.c., from the regulator's setting; empty where unknown or where the
 *     pressure cannot push the load through
 * @param endInWc pressure at its end, in. w.c., from the setting; 0 where nothing gets through
 * @param endDroopedInWc the same from the setting less droop
 * @param velocityFtPerS at its end, gas at 60 degF; CSST has no bore and so none
 * @param insideFt3 volume inside its measured length; CSST none
 * @param staticInWc what the gas column loses by rising, in none of the others; negative where the section falls;
 *     empty where a leg's direction is not entered
 * @param countedFt what its own counted fittings added to the length, feet
 */
public record SectionPressure(
        OptionalDouble dropInWc,
        OptionalDouble endInWc,
        OptionalDouble endDroopedInWc,
        OptionalDouble velocityFtPerS,
        OptionalDouble insideFt3,
        OptionalDouble staticInWc,
        OptionalDouble countedFt) {}
