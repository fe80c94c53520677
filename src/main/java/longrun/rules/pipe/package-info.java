/**
 * What the pipe itself must be, by material and place.
 */
@NullMarked
package longrun.rules.pipe;

import org.jspecify.annotations.NullMarked;
