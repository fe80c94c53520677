/** Pictures as SVG: what is drawn, where it lies, where its words stand, how it is written. No clock, no locale. */
@NullMarked
package longrun.drawing;

import org.jspecify.annotations.NullMarked;
