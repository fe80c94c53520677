/** Plots and gauges as SVG. */
@NullMarked
package longrun.drawing.plot;

import org.jspecify.annotations.NullMarked;
