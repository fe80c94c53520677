/** The pipe route: a line a section, typed as it is paced, with the drawing beside it. */
@NullMarked
package longrun.ui.house.route;

import org.jspecify.annotations.NullMarked;
