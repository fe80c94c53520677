/** Reads a plan from JSON and writes it back as it was typed; says everything that is wrong at once. */
@NullMarked
package longrun.plan.json;

import org.jspecify.annotations.NullMarked;
