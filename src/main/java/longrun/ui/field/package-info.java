/**
 * The fields of a place, one class for each kind of entry, and lists of fields.
 */
@NullMarked
package longrun.ui.field;

import org.jspecify.annotations.NullMarked;
