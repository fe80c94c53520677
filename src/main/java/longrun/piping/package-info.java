/**
 * The plan resolved into pipes: stages from tank to burner, the tree of sections of each, loads, measured lengths and
 * turns. Knows no table.
 */
@NullMarked
package longrun.piping;

import org.jspecify.annotations.NullMarked;
