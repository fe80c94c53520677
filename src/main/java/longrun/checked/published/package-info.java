/** Published cases as they are written down: what was given, what the publication answers, how close ours must come and why. */
@NullMarked
package longrun.checked.published;

import org.jspecify.annotations.NullMarked;
