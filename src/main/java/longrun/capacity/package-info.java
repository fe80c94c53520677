/**
 * The published capacity tables as the trade prints them, the code's equation behind them, and the equivalent lengths
 * of fittings.
 */
@NullMarked
package longrun.capacity;

import org.jspecify.annotations.NullMarked;
