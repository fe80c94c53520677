/**
 * Pipe sizes by the longest-length method (2018 IFGC 402.4.1, NFPA 54 6.1.1): one length a stage, the equal or next
 * longer row, the smallest available size that carries the load.
 */
@NullMarked
package longrun.sizing;

import org.jspecify.annotations.NullMarked;
