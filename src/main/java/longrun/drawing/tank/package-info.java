/** Drawings of the tank in its yard and of the water side. */
@NullMarked
package longrun.drawing.tank;

import org.jspecify.annotations.NullMarked;
