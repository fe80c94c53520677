/** Draws of hot water: one draw, the draws of a day, and the patterns of a household. */
@NullMarked
package longrun.hotwater.draw;

import org.jspecify.annotations.NullMarked;
