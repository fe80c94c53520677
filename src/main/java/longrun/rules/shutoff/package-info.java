/**
 * Shutoff valves: at each appliance, within reach, of the right size, and the main one.
 */
@NullMarked
package longrun.rules.shutoff;

import org.jspecify.annotations.NullMarked;
