/**
 * Physical quantities as small immutable values, each held in one canonical unit, and the grammar by which a person
 * writes them. Imports nothing else of the project.
 */
@NullMarked
package longrun.quantity;

import org.jspecify.annotations.NullMarked;
