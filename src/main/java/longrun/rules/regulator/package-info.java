/**
 * Regulators: kind, setting, capacity, inlet, vent, and the pressure they let indoors.
 */
@NullMarked
package longrun.rules.regulator;

import org.jspecify.annotations.NullMarked;
