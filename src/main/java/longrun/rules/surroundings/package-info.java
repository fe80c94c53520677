/** What is round an appliance: its room and the air in it, the end of its vent, its condensate, frost. */
@NullMarked
package longrun.rules.surroundings;

import org.jspecify.annotations.NullMarked;
