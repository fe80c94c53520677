/** Where a number comes from: its inputs, table cell, equation or rule section, and how sure that is. */
@NullMarked
package longrun.origin;

import org.jspecify.annotations.NullMarked;
