/** The drawing of the route: laid out, lettered, parted for paper. */
@NullMarked
package longrun.drawing.route;

import org.jspecify.annotations.NullMarked;
