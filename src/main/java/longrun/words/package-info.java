/** How things are said, the same on screen and on paper. */
@NullMarked
package longrun.words;

import org.jspecify.annotations.NullMarked;
