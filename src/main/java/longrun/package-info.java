/** The program's starting point. */
@NullMarked
package longrun;

import org.jspecify.annotations.NullMarked;
