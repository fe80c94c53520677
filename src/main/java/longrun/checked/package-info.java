/**
 * What the program was checked against: published cases and the program's answer to each, capacity tables against the
 * code's equation and a second keying, what is worked out a second way, what is from memory, and what is not checked.
 */
@NullMarked
package longrun.checked;

import org.jspecify.annotations.NullMarked;
