/**
 * The take-off: what the plan shows, as it is bought. Pipe by material and size, the lengths to cut it from, fittings
 * from the legs, what stands at each appliance. What a plan does not show is not invented; what it cannot tell is a line
 * without a count.
 */
@NullMarked
package longrun.parts;

import org.jspecify.annotations.NullMarked;
