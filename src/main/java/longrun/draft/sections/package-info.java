/**
 * Sections of pipe as typed: lines of the route, legs, tubing tables, pasted lists, and what is answered of them.
 */
@NullMarked
package longrun.draft.sections;

import org.jspecify.annotations.NullMarked;
