/** The two doors, and the list of houses behind one of them. */
@NullMarked
package longrun.ui.start;

import org.jspecify.annotations.NullMarked;
