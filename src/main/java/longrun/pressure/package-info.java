/**
 * The pressure that reaches each burner (2018 IFGC Appendix A.1: enough for the neediest appliance), the settings a
 * regulator may have, and what can be added before a size changes.
 */
@NullMarked
package longrun.pressure;

import org.jspecify.annotations.NullMarked;
