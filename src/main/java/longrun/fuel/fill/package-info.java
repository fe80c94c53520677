/** How long a fill lasts, with what the entries leave in doubt, and which tank would do. */
@NullMarked
package longrun.fuel.fill;

import org.jspecify.annotations.NullMarked;
