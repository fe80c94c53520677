/**
 * What a place of a house is, and the page it stands on.
 */
@NullMarked
package longrun.ui.place;

import org.jspecify.annotations.NullMarked;
