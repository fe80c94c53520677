/**
 * Fields: one kind of entry each, and lists of them.
 */
@NullMarked
package longrun.ui.field;

import org.jspecify.annotations.NullMarked;
