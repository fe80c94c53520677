/** Capacity tables against the code's equation, and against a second reading of the print. */
@NullMarked
package longrun.checked.table;

import org.jspecify.annotations.NullMarked;
