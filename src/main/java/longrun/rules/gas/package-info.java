/**
 * That an appliance is made or converted for propane.
 */
@NullMarked
package longrun.rules.gas;

import org.jspecify.annotations.NullMarked;
