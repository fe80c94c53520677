/** The place of the tank: what stands there, the vapour it gives, what it holds, how far it stands. */
@NullMarked
package longrun.ui.house.tank;

import org.jspecify.annotations.NullMarked;
