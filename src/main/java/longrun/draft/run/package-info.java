/**
 * The draft of Size a run: its lines, pipe, start and allowance, what is pasted or opened from a file, and its answer.
 */
@NullMarked
package longrun.draft.run;

import org.jspecify.annotations.NullMarked;
