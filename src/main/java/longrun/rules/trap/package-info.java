/**
 * Sediment traps.
 */
@NullMarked
package longrun.rules.trap;

import org.jspecify.annotations.NullMarked;
