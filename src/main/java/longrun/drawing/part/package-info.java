/** Drawings of what stands at an appliance or a regulator. */
@NullMarked
package longrun.drawing.part;

import org.jspecify.annotations.NullMarked;
