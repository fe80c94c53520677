/** Capacity tables compared with the code's equation and with a second keying of the print. */
@NullMarked
package longrun.checked.table;

import org.jspecify.annotations.NullMarked;
