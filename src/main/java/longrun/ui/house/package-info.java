/** A whole house on screen: one session a page, and the places one goes to in it. */
@NullMarked
package longrun.ui.house;

import org.jspecify.annotations.NullMarked;
