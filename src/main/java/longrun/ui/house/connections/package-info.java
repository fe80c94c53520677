/**
 * Connections: each appliance’s last parts in flow order, the regulators’ surroundings, the main shutoff.
 */
@NullMarked
package longrun.ui.house.connections;

import org.jspecify.annotations.NullMarked;
