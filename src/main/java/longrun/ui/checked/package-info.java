/** The page that tells what the program was checked against. */
@NullMarked
package longrun.ui.checked;

import org.jspecify.annotations.NullMarked;
