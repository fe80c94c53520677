/** The draft of How long does a fill last: tank, gauge, climate, what burns, past fills, its file and its state. */
@NullMarked
package longrun.draft.fill;

import org.jspecify.annotations.NullMarked;
