/** Mutation testing: whether a test notices when one small thing in the program is changed. */
@NullMarked
package longrun.checked.mutant;

import org.jspecify.annotations.NullMarked;
