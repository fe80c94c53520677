/** The tank: what it holds, the vapour it gives in the cold, what it is asked for. */
@NullMarked
package longrun.tank;

import org.jspecify.annotations.NullMarked;
