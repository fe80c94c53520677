/**
 * Findings: what is wrong or doubtful, the questions to take along, and the rules told at length.
 */
@NullMarked
package longrun.ui.house.findings;

import org.jspecify.annotations.NullMarked;
