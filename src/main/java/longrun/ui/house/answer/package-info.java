/**
 * The answer so far, beside every place.
 */
@NullMarked
package longrun.ui.house.answer;

import org.jspecify.annotations.NullMarked;
