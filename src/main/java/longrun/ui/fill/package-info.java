/** How long a fill lasts: one page, printable. */
@NullMarked
package longrun.ui.fill;

import org.jspecify.annotations.NullMarked;
