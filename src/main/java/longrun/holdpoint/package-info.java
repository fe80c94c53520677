/** The hold points: where work stops for a check, one after another, before the tank valve is opened and burners are lit. */
@NullMarked
package longrun.holdpoint;

import org.jspecify.annotations.NullMarked;
