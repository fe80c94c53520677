/** The points at which work stops, one after another, before the tank valve is opened and the burners are lit. */
@NullMarked
package longrun.holdpoint;

import org.jspecify.annotations.NullMarked;
