/** Figures as a place shows them: with their unit, what they lack and where they are from. */
@NullMarked
package longrun.ui.house.figure;

import org.jspecify.annotations.NullMarked;
