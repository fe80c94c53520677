/**
 * Flexible connectors and the union at a rigid pipe.
 */
@NullMarked
package longrun.rules.connector;

import org.jspecify.annotations.NullMarked;
