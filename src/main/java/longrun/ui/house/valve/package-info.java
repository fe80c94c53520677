/** Before the valve: the test of the pipe, the points at which work stops, the gauge's readings. */
@NullMarked
package longrun.ui.house.valve;

import org.jspecify.annotations.NullMarked;
