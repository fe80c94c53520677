/** The review as JSON, and where each of its numbers comes from. */
@NullMarked
package longrun.review.json;

import org.jspecify.annotations.NullMarked;
