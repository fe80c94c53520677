/**
 * Appliances, each from its rating plate.
 */
@NullMarked
package longrun.ui.house.appliances;

import org.jspecify.annotations.NullMarked;
