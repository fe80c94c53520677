/** Doubts: facts from memory, facts with a single source, and what was not checked. */
@NullMarked
package longrun.checked.doubt;

import org.jspecify.annotations.NullMarked;
