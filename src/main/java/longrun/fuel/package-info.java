/** Fuel through the year: degree days, uses, level, deliveries, calibration by tickets. */
@NullMarked
package longrun.fuel;

import org.jspecify.annotations.NullMarked;
