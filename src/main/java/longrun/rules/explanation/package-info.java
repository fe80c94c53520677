/**
 * Each rule told at length, with a wrong and a right example.
 */
@NullMarked
package longrun.rules.explanation;

import org.jspecify.annotations.NullMarked;
