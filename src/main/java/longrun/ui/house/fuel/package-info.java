/** The place of the year's fuel: climate, uses, tickets, and what follows. */
@NullMarked
package longrun.ui.house.fuel;

import org.jspecify.annotations.NullMarked;
