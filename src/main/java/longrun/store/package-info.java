/**
 * Saved houses. Each is a draft: the plan's JSON text exactly as typed, with a version and the steps that can be undone.
 * The text need not make a plan yet; other packages read it.
 */
@NullMarked
package longrun.store;

import org.jspecify.annotations.NullMarked;
