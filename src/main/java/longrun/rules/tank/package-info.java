/**
 * How far a tank stands from what it could set alight.
 */
@NullMarked
package longrun.rules.tank;

import org.jspecify.annotations.NullMarked;
