/**
 * House: where it stands, its code, regulators and rooms.
 */
@NullMarked
package longrun.ui.house.home;

import org.jspecify.annotations.NullMarked;
