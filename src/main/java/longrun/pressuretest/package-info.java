/** The test of the pipe before gas is let in, the purge, and the check with gas: what, how high, how long, with what. */
@NullMarked
package longrun.pressuretest;

import org.jspecify.annotations.NullMarked;
