/** How long a fill lasts as typed: tank, gauge, climate, what burns, past fills; what is opened from a file. */
@NullMarked
package longrun.draft.fill;

import org.jspecify.annotations.NullMarked;
