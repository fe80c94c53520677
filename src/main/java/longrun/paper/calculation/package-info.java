/** The calculation sheet: every figure of the review with where it is from. */
@NullMarked
package longrun.paper.calculation;

import org.jspecify.annotations.NullMarked;
