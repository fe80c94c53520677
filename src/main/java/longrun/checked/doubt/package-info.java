/** What is from memory, what rests on one source, what is not checked. */
@NullMarked
package longrun.checked.doubt;

import org.jspecify.annotations.NullMarked;
