/** A plan goes in, a review comes out: the one door for screens, service and papers. */
@NullMarked
package longrun.review;

import org.jspecify.annotations.NullMarked;
