/** Names, figures, units and sentences in the same words on screen and on paper. */
@NullMarked
package longrun.words;

import org.jspecify.annotations.NullMarked;
