/**
 * What the program was checked against: published cases and our figure of each, capacity tables against the code's
 * equation and their second reading, what is worked out a second way, what is from memory, what is not checked.
 */
@NullMarked
package longrun.checked;

import org.jspecify.annotations.NullMarked;
