/**
 * Sections of pipe in a draft: lines of the route, legs, makers' tubing tables, pasted lists, and their answers.
 */
@NullMarked
package longrun.draft.sections;

import org.jspecify.annotations.NullMarked;
