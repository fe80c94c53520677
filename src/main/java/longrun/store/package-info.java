/**
 * Saved houses: each is a draft, the plan's JSON text exactly as typed, with a version and the steps to go back through.
 * The text need not make a plan yet; reading it is another room's work.
 */
@NullMarked
package longrun.store;

import org.jspecify.annotations.NullMarked;
