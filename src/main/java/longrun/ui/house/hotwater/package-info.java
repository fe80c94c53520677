/** The place of hot water: heaters, valves, draws, the evening at the shower, what the storage heater saves. */
@NullMarked
package longrun.ui.house.hotwater;

import org.jspecify.annotations.NullMarked;
