/** What was found wrong, doubtful or missing, and what mends it. */
@NullMarked
package longrun.finding;

import org.jspecify.annotations.NullMarked;
