/** What was found wrong, doubtful or missing, with the requirement, its source and the remedy. */
@NullMarked
package longrun.finding;

import org.jspecify.annotations.NullMarked;
