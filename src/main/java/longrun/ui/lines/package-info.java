/** What lines of pipe share wherever they are typed, in a run or in a route. */
@NullMarked
package longrun.ui.lines;

import org.jspecify.annotations.NullMarked;
