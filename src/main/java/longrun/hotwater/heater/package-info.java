/** Heaters and what one draw does in them: the storage tank in nodes, the heat pump, the on-demand heater, and the chain they make. */
@NullMarked
package longrun.hotwater.heater;

import org.jspecify.annotations.NullMarked;
