/** Pictures as SVG text: the same plan always gives the same bytes, on screen, on paper and as a file. */
@NullMarked
package longrun.drawing;

import org.jspecify.annotations.NullMarked;
