/** The parts at an appliance in a draft, and how they are read for drawing. */
@NullMarked
package longrun.draft.hookup;

import org.jspecify.annotations.NullMarked;
