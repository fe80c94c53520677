/**
 * The code entered and its local amendments.
 */
@NullMarked
package longrun.rules.code;

import org.jspecify.annotations.NullMarked;
