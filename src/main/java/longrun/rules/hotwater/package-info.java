/** Topic hot water: mixing valve, relief valves, Legionella, preheated inlet, scald, expansion. */
@NullMarked
package longrun.rules.hotwater;

import org.jspecify.annotations.NullMarked;
