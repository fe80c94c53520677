/** How the program's answer to a published case is worked out: by the same code that works out a house. */
@NullMarked
package longrun.checked.working;

import org.jspecify.annotations.NullMarked;
