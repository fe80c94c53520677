/** Size a run: one regulator, a few lines, one answer, one printed page. */
@NullMarked
package longrun.ui.run;

import org.jspecify.annotations.NullMarked;
