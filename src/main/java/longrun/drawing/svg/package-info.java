/** What every drawing is made of: points, boxes, strokes, pens, text. */
@NullMarked
package longrun.drawing.svg;

import org.jspecify.annotations.NullMarked;
