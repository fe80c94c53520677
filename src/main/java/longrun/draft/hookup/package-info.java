/** The parts at an appliance as a draft holds them, and what of them can be drawn. */
@NullMarked
package longrun.draft.hookup;

import org.jspecify.annotations.NullMarked;
