/** Hot water: cold water through the year, the heat to warm it, altitude. */
@NullMarked
package longrun.hotwater;

import org.jspecify.annotations.NullMarked;
