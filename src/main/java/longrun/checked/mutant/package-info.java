/** How the tests were tested: the program with one small thing changed, and whether a test noticed. */
@NullMarked
package longrun.checked.mutant;

import org.jspecify.annotations.NullMarked;
